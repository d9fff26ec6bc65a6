/** Notices files that change: told by the system where it tells, and looked for every second all the same. */
import { type FSWatcher, readdirSync, statSync, watch } from "node:fs";
import { dirname, join } from "node:path";

/** How a file stands on the disk, as a text to compare; "" where it is not there. */
function stateOf(path: string): string {
  try {
    const { ino, size, mtimeMs } = statSync(path);
    return `${ino} ${size} ${mtimeMs}`;
  } catch {
    return "";
  }
}

function stateOfFolder(folder: string): string {
  try {
    return readdirSync(folder)
      .sort()
      .map((name) => `${name} ${stateOf(join(folder, name))}`)
      .join("\n");
  } catch {
    return "";
  }
}

export interface Watched {
  /** The recipe's file may have changed. */
  recipe(): void;
  /** Something that stands beside it has. */
  beside(): void;
}

const EVERY = 1000;

/** Watches until the function it gives is called. */
export function watchProject(recipe: string, on: Watched): () => void {
  const folder = dirname(recipe);
  const folders = ["templates", "photos"].map((name) => join(folder, name));
  const states = () => ({
    recipe: stateOf(recipe),
    beside: [
      ...["evidence.csv", "as-made.yaml"].map((name) => stateOf(join(folder, name))),
      ...folders.map(stateOfFolder),
    ].join("\n\n"),
  });
  let before = states();
  const look = (): void => {
    const now = states();
    const last = before;
    before = now;
    if (now.recipe !== last.recipe) on.recipe();
    if (now.beside !== last.beside) on.beside();
  };
  let soon: NodeJS.Timeout | undefined;
  const told = (): void => {
    clearTimeout(soon);
    soon = setTimeout(look, 30);
  };
  const watchers: FSWatcher[] = [];
  for (const one of [folder, ...folders]) {
    try {
      const watcher = watch(one, { persistent: false }, told);
      watcher.on("error", () => watcher.close());
      watchers.push(watcher);
    } catch {
      // The folder is not there, or the system tells nothing: it is looked for every second.
    }
  }
  const timer = setInterval(look, EVERY);
  return () => {
    clearInterval(timer);
    clearTimeout(soon);
    for (const watcher of watchers) watcher.close();
  };
}
