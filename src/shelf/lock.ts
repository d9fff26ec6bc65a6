/** One run at a time: a file that is there while one works. */
import type { World } from "./world.ts";

/** Another run holds the place, or one that was stopped on another machine left its mark. */
export class LockedError extends Error {}

/** Waits this long in all, in steps, in milliseconds. */
const STEP = 25;
const STEPS = 400;

/** A mark without its maker's name for so many steps was left by a run stopped between the two. */
const NAMELESS = 40;

/** Does something while no other run does the same; waits for one that does, and clears away what a stopped one left. */
export function locked<T>(world: World, path: string, work: () => T): T {
  for (let waited = 0; !world.writeNew(path, world.unique); waited += 1) {
    const owner = ownerOf(world, path);
    if (owner !== undefined && (owner === "" ? waited >= NAMELESS : world.isGone(owner)))
      clear(world, path, owner);
    else if (waited >= STEPS)
      throw new LockedError(`another run is writing here; if none is, remove "${path}" and try again`);
    else world.pause(STEP);
  }
  try {
    return work();
  } finally {
    world.remove(path);
  }
}

/** Takes a dead mark away; one that a live run has put there since goes back. */
function clear(world: World, path: string, owner: string): void {
  const aside = `${path}.${world.unique}`;
  try {
    world.rename(path, aside);
  } catch {
    return;
  }
  if (ownerOf(world, aside) === owner) world.remove(aside);
  else world.rename(aside, path);
}

function ownerOf(world: World, path: string): string | undefined {
  try {
    return new TextDecoder().decode(world.read(path));
  } catch {
    return undefined;
  }
}
