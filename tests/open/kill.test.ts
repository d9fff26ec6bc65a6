/** Killing the program at any moment loses nothing that was typed more than a second before, and never leaves half a recipe. */
import { writeFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { checksumOf } from "../../src/open/recipe-file.ts";
import { ALL_DEMOS } from "../long.ts";
import { type Copy, copyOf, put, start } from "./opened.ts";

const TIMES = ALL_DEMOS ? 200 : 10;
const wait = (milliseconds: number): Promise<void> => new Promise((done) => setTimeout(done, milliseconds));

/** Saves one text after the other until the program is gone; gives each with the moment it was sent. */
async function typeUntilKilled(copy: Copy, after: number, round: number) {
  const running = await start(copy, "--port", "0");
  const sent = [{ text: copy.read(), at: 0, isSaved: true }];
  let isKilled = false;
  const killed = wait(after).then(async () => {
    const at = performance.now();
    await running.kill();
    isKilled = true;
    return at;
  });
  for (let n = 0; !isKilled; n += 1) {
    const text = `${sent[0]?.text}\nRound ${round}, text ${n}. ${"A long sentence of the maker’s. ".repeat(2000)}\n`;
    const last = { text, at: performance.now(), isSaved: false };
    const before = sent.at(-1)?.text ?? "";
    sent.push(last);
    const answer = await put(running.address, { base: checksumOf(before), text }).catch(() => undefined);
    if (!answer) break;
    last.isSaved = answer.ok;
  }
  return { sent, killedAt: await killed };
}

describe("killed at any moment", () => {
  it(`leaves a whole recipe, never older than a second, ${TIMES} times`, { timeout: 300_000 }, async () => {
    const copy = copyOf("mill-house-cotton");
    const original = copy.read();
    try {
      let round = 0;
      await fc.assert(
        fc.asyncProperty(fc.integer({ min: 0, max: 120 }), async (after) => {
          round += 1;
          const { sent, killedAt } = await typeUntilKilled(copy, after, round);
          const found = sent.findIndex(({ text }) => text === copy.read());
          expect(found, "the file is one of the versions, whole").toBeGreaterThanOrEqual(0);
          const lost = sent.slice(found + 1);
          expect(lost.filter(({ isSaved }) => isSaved)).toEqual([]);
          expect(lost.filter(({ at }) => at < killedAt - 1000)).toEqual([]);
          writeFileSync(copy.recipe, original);
        }),
        { numRuns: TIMES, endOnFailure: true },
      );
    } finally {
      copy.remove();
    }
  });
});
