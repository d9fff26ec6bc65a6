/** Hands of this machine: threads of this process, each with the program's own file. */
import { availableParallelism } from "node:os";
import { isMainThread, parentPort, Worker, workerData } from "node:worker_threads";
import type { Answer, Hands } from "./hands.ts";

/** More than these would need more memory than a small machine has. */
const MOST = 8;

/** A setting that says how many threads build at once; without it, or with something else than a number, one a processor. */
const SETTING = "PLAINWORK_THREADS";

function countOf(setting = ""): number {
  const asked = /^[1-9]\d?$/.test(setting) ? Number(setting) : availableParallelism();
  return Math.min(MOST, asked);
}

/** @param program the file that a thread runs; it comes to `workAsHand` */
export function threads(program: string, process: NodeJS.Process): Hands {
  return {
    count: countOf(process.env[SETTING]),
    start(task, answered) {
      const worker = new Worker(program, { workerData: { hand: task }, stdout: false, stderr: false });
      worker.on("message", answered);
      worker.on("error", (error) =>
        answered({ fault: { name: "Error", message: error.message } } satisfies Answer<never>),
      );
      return { give: (job) => worker.postMessage(job), end: () => worker.terminate() };
    },
    onStop(stop) {
      process.once("SIGINT", stop);
      process.once("SIGTERM", stop);
      return () => {
        process.off("SIGINT", stop);
        process.off("SIGTERM", stop);
      };
    },
  };
}

/**
 * In a thread that `threads` started: answers every job. False elsewhere.
 *
 * @param make of what all jobs share, what does one
 */
export function workAsHand(make: (task: unknown) => (job: unknown) => Answer<unknown>): boolean {
  const data = workerData as { hand?: unknown } | null;
  const port = parentPort;
  if (isMainThread || !port || !data || !("hand" in data)) return false;
  const work = make(data.hand);
  port.on("message", (job) => port.postMessage(work(job)));
  return true;
}
