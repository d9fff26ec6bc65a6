/** How far long work has come. */
import { describe, expect, it } from "vitest";
import { Progress } from "../../src/shelf/progress.ts";

function told(
  terminal: boolean,
  steps: readonly (readonly [done: number, at: number])[],
  total = 100,
): string[] {
  let now = 0;
  const lines: string[] = [];
  const progress = new Progress({ write: (text) => void lines.push(text), terminal, now: () => now }, total);
  for (const [done, at] of steps) {
    now = at;
    progress.done(done, `skirt-${done}`);
  }
  progress.clear();
  return lines;
}

describe("progress", () => {
  it("is a bar on a terminal, drawn anew now and then, and taken away", () => {
    expect(
      told(true, [
        [1, 50],
        [2, 60],
        [25, 1000],
        [26, 1010],
      ]),
    ).toEqual([
      "\r\x1b[K[                        ] 1 of 100, about 5 seconds left: skirt-1",
      "\r\x1b[K[======                  ] 25 of 100, a few seconds left: skirt-25",
      "\r\x1b[K",
    ]);
  });

  it("is a line now and then elsewhere", () => {
    expect(
      told(false, [
        [1, 9_000],
        [10, 10_000],
        [11, 19_000],
        [50, 20_000],
        [60, 600_000],
      ]),
    ).toEqual([
      "10 of 100, about 2 minutes left\n",
      "50 of 100, about 20 seconds left\n",
      "60 of 100, about 7 minutes left\n",
    ]);
  });

  it("says nothing of short work, and nothing at the end", () => {
    expect(
      told(
        false,
        [
          [1, 300],
          [2, 60_000],
        ],
        2,
      ),
    ).toEqual([]);
  });
});
