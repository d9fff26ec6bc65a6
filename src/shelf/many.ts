/** Many garments, one after another or by several hands at once; told in their order, whoever is done first. */
import { type Project, UsageError } from "./find.ts";
import { type Asked, Garments } from "./garment.ts";
import { type Answer, type Fault, faultOf, type Hand, type Hands } from "./hands.ts";
import { LockedError } from "./lock.ts";
import { clearUnfinished, NotOursError } from "./place.ts";
import type { Report } from "./report.ts";
import type { World } from "./world.ts";

/** The user stopped the run; so many garments were done by then. */
export class StoppedError extends Error {}

/** Fewer garments are done sooner by one than a second hand takes to come. */
const WORTH_HANDS = 6;

/** Errors that are told otherwise than a fault of the machine. */
const KINDS: readonly (readonly [name: string, kind: new (message: string) => Error])[] = [
  ["usage", UsageError],
  ["not-ours", NotOursError],
  ["locked", LockedError],
];

/**
 * Does every garment.
 *
 * @param told is given each report in the order of the projects, and how many are done
 * @throws what the first that fails throws; StoppedError when the user stops a run of several hands
 */
export async function doAll(
  world: World,
  projects: readonly Project[],
  asked: Asked,
  told: (report: Report, done: number) => void,
): Promise<void> {
  const count = Math.min(world.hands?.count ?? 1, projects.length);
  if (world.hands && count > 1 && projects.length >= WORTH_HANDS)
    return byHands(world, world.hands, count, projects, asked, told);
  const garments = new Garments(world, asked);
  for (const [i, project] of projects.entries()) told(garments.do(project), i + 1);
}

/** What a hand does with each job. */
export function garmentTask(world: World, asked: Asked): (job: unknown) => Answer<Report> {
  const garments = new Garments(world, asked);
  return (job) => {
    try {
      return { done: garments.do(job as Project) };
    } catch (error) {
      const kind = KINDS.find(([, one]) => error instanceof one)?.[0];
      return { fault: { ...faultOf(error), ...(kind ? { name: kind } : {}) } };
    }
  };
}

/** Each hand takes the next garment when it is done with one. */
function byHands(
  world: World,
  { start, onStop }: Hands,
  count: number,
  projects: readonly Project[],
  asked: Asked,
  told: (report: Report, done: number) => void,
): Promise<void> {
  return new Promise((resolve, reject) => {
    const reports: (Report | undefined)[] = [];
    const hands: Hand[] = [];
    let [given, next] = [0, 0];
    let isOver = false;
    const end = (how: () => void): void => {
      if (isOver) return;
      isOver = true;
      forget();
      void Promise.all(hands.map((hand) => hand.end())).then(() => {
        if (asked.command === "build") clearUnfinished(world, world.resolve(asked.out));
        how();
      }, reject);
    };
    const stopped = (): void =>
      end(() => reject(new StoppedError(`${next} of ${projects.length} garments are done`)));
    const forget = onStop(stopped);
    const tellInOrder = (): void => {
      for (let report = reports[next]; report; report = reports[next]) {
        reports[next] = undefined;
        next += 1;
        told(report, next);
      }
    };
    for (let i = 0; i < count; i += 1) {
      let at = -1;
      const giveNext = (): void => {
        if (given === projects.length) return;
        at = given;
        given += 1;
        hand.give(projects[at]);
      };
      const hand = start(asked, (answer) => {
        if (isOver) return;
        if ("fault" in answer) {
          end(() => reject(errorOf(answer.fault)));
          return;
        }
        reports[at] = answer.done as Report;
        tellInOrder();
        if (next === projects.length) end(resolve);
        else giveNext();
      });
      hands.push(hand);
      giveNext();
    }
  });
}

function errorOf({ name, message, code, path, dest }: Fault): Error {
  const kind = KINDS.find(([known]) => known === name)?.[1];
  return kind ? new kind(message) : Object.assign(new Error(message), { code, path, dest });
}
