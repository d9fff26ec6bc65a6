/** Runs in a process of its own: so many inputs of every kind by their shares; says each kind's faults, slowest input and memory. */
import { writeFileSync } from "node:fs";
import fc from "fast-check";
import { KINDS } from "./fuzz.ts";
import { workedSince } from "./worked.ts";

export interface Tried {
  readonly kind: string;
  readonly runs: number;
  readonly slowest: number;
  readonly worked: number;
  readonly fault?: string;
  readonly held: number;
}

const [, , all = "1000", seed = "1", last = ""] = process.argv;

for (const [kind, { share, texts, held }] of Object.entries(KINDS)) {
  const runs = Math.ceil((Number(all) * share) / 100);
  const before = process.cpuUsage();
  let slowest = 0;
  let done = 0;
  const found = fc.check(
    fc.property(texts, (text) => {
      // So that an input which never ends, or ends the process, is known.
      writeFileSync(last, text);
      const start = process.cpuUsage();
      held(text);
      slowest = Math.max(slowest, workedSince(start));
      done += 1;
      if (done % 50 === 0) process.stdout.write("\n");
    }),
    { numRuns: runs, seed: Number(seed) },
  );
  const tried: Tried = {
    kind,
    runs: done,
    slowest,
    worked: workedSince(before),
    ...(found.failed ? { fault: `${JSON.stringify(found.counterexample)}: ${found.errorInstance}` } : {}),
    held: process.resourceUsage().maxRSS / 1024,
  };
  process.stdout.write(`${JSON.stringify(tried)}\n`);
}
