/**
 * Row 26: the cutting-stock problem. It is not a skirt's layout: rolls are cut across only, hundreds of each width. What
 * it shows is that the integer programs the layout is held against (tests/solve/layouts.json) find what is known to be
 * the best, where laying piece after piece does not.
 */
import loadHighs from "highs";
import { describe, expect, it } from "vitest";

// GAMS model library, cutting stock; data seen, optimum computed.
const ROLL = 100;
const WIDTHS = [14, 31, 36, 45] as const;
const DEMANDS = [211, 395, 610, 97] as const;

/** Every way to cut one roll: how many of each width. */
function ways(left: number, from = 0): number[][] {
  const width = WIDTHS[from];
  if (width === undefined) return [[]];
  return Array.from({ length: Math.floor(left / width) + 1 }, (_, n) => n).flatMap((n) =>
    ways(left - n * width, from + 1).map((rest) => [n, ...rest]),
  );
}

/** Piece after piece, the widest first, each from the first roll that still has room. */
function firstFit(): number {
  const rolls: number[] = [];
  for (const i of [3, 2, 1, 0]) {
    const width = WIDTHS[i] as number;
    for (let n = 0; n < (DEMANDS[i] as number); n += 1) {
      const roll = rolls.findIndex((left) => left >= width);
      if (roll < 0) rolls.push(ROLL - width);
      else rolls[roll] = (rolls[roll] as number) - width;
    }
  }
  return rolls.length;
}

describe("row 26: stock 100, widths 14 31 36 45, demands 211 395 610 97 [GAMS model library; data seen, optimum computed]", () => {
  it("the integer program finds 453 rolls", async () => {
    const highs = await loadHighs();
    const cuts = ways(ROLL);
    const program = [
      "Minimize",
      ` rolls: ${cuts.map((_, i) => `p${i}`).join(" + ")}`,
      "Subject To",
      ...DEMANDS.map((demand, k) => {
        const terms = cuts.flatMap((cut, i) => (cut[k] ? [`${cut[k]} p${i}`] : []));
        return ` w${WIDTHS[k]}: ${terms.join(" + ")} >= ${demand}`;
      }),
      "General",
      ` ${cuts.map((_, i) => `p${i}`).join(" ")}`,
      "End",
    ].join("\n");
    const solution = highs.solve(program, { mip_rel_gap: 0 });
    expect(solution.Status).toBe("Optimal");
    expect(solution.ObjectiveValue).toBeCloseTo(453, 6);
  });
  it("a greedy first fit needs 485", () => {
    expect(firstFit()).toBe(485);
  });
});
