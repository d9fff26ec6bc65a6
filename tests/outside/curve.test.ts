/** Row 24: the curve of the balance on published data that other curves overshoot. */
import { describe, expect, it } from "vitest";
import { compare, fraction, plain } from "../../src/quantity/quantity.ts";
import { monotone } from "../../src/solve/monotone.ts";

// RPN15A, in F. N. Fritsch and R. E. Carlson, SIAM J. Numer. Anal. 17 (1980); status: seen.
const AT = ["7.99", "8.09", "8.19", "8.7", "9.2", "10", "12", "15", "20"];
const HEIGHTS = [
  "0",
  "0.0000276429",
  "0.0000437498",
  "0.169183",
  "0.469428",
  "0.943740",
  "0.998636",
  "0.999919",
  "0.999994",
];
const points = AT.map((at, i) => ({
  at: plain(fraction(at)),
  height: plain(fraction(HEIGHTS[i] as string)),
}));

describe("row 24: monotone data RPN15A [Fritsch & Carlson, SIAM J. Numer. Anal. 17 (1980); seen]", () => {
  it("goes through every point", () => {
    for (const { at, height } of points) expect(monotone(points)(at)).toEqual(height);
  });
  it("at 11 stays at or below 1, where natural and not-a-knot splines exceed it", () => {
    const height = monotone(points)(plain(11n)).value;
    expect(height.compare(1)).toBeLessThan(0);
    expect(height.compare("0.943740")).toBeGreaterThan(0);
    expect(height.compare("0.998636")).toBeLessThan(0);
  });
  it("rises all the way, and never leaves its two neighbours", () => {
    for (let i = 1; i < points.length; i += 1) {
      const [p, q] = [points[i - 1], points[i]] as [(typeof points)[0], (typeof points)[0]];
      let before = p.height;
      for (let part = 1n; part <= 24n; part += 1n) {
        const at = p.at.value.add(q.at.value.sub(p.at.value).mul(part).div(24n));
        const height = monotone(points)(plain(at));
        expect(compare(height, before)).toBeGreaterThanOrEqual(0);
        expect(compare(height, q.height)).toBeLessThanOrEqual(0);
        before = height;
      }
    }
  });
});

/** The natural cubic spline through the same points, in floats: what the data is published to trip up. */
function natural(at: number): number {
  const x = AT.map(Number);
  const y = HEIGHTS.map(Number);
  const n = x.length;
  const step = (i: number): number => (x[i + 1] as number) - (x[i] as number);
  const slope = (i: number): number => ((y[i + 1] as number) - (y[i] as number)) / step(i);
  // Second derivatives by elimination, nothing at both ends.
  const upper = [0];
  const right = [0];
  for (let i = 1; i < n - 1; i += 1) {
    const pivot = 2 * (step(i - 1) + step(i)) - step(i - 1) * (upper[i - 1] as number);
    upper.push(step(i) / pivot);
    right.push((6 * (slope(i) - slope(i - 1)) - step(i - 1) * (right[i - 1] as number)) / pivot);
  }
  const bend = new Array<number>(n).fill(0);
  for (let i = n - 2; i > 0; i -= 1)
    bend[i] = (right[i] as number) - (upper[i] as number) * (bend[i + 1] as number);
  const i = x.findLastIndex((place) => place <= at);
  const [h, from, to] = [step(i), at - (x[i] as number), (x[i + 1] as number) - at];
  const [b, c] = [bend[i] as number, bend[i + 1] as number];
  const line = ((y[i] as number) * to + (y[i + 1] as number) * from) / h;
  return line + (b * to ** 3 + c * from ** 3) / (6 * h) - (h * (b * to + c * from)) / 6;
}

it("row 24: a natural spline through these points does exceed 1 at 11, so that the data can tell the two apart", () => {
  expect(natural(10)).toBeCloseTo(0.94374, 9);
  expect(natural(11)).toBeGreaterThan(1);
});

describe("by hand", () => {
  it("equal steps, rises 1 and 3: the slope between is 2 x 1 x 3 / 4 = 3/2, midway 1/2 - 3/16 and 5/2 + 3/16", () => {
    const three = [0n, 1n, 4n].map((height, i) => ({ at: plain(i), height: plain(height) }));
    expect(monotone(three)(plain("1/2")).value.toFraction()).toBe("5/16");
    expect(monotone(three)(plain("3/2")).value.toFraction()).toBe("43/16");
  });
  it("steps 1 and 2, rises 2 and 4 (slopes 2 and 2): the slope between is 2 and the curve stays exact", () => {
    const three = [
      { at: plain(0n), height: plain(0n) },
      { at: plain(1n), height: plain(2n) },
      { at: plain(3n), height: plain(6n) },
    ];
    // Half-way along the first: 2 x 1/2 + 2 x (1/8 - 1/4) = 3/4.
    expect(monotone(three)(plain("1/2")).value.toFraction()).toBe("3/4");
    // Steps 1 and 2, slopes 1 and 4: share (1 + 4) / 9, slope 4 / (5/9 x 4 + 4/9) = 3/2; 1/2 - 3/16 = 5/16.
    const uneven = [three[0], { at: plain(1n), height: plain(1n) }, { at: plain(3n), height: plain(9n) }];
    expect(monotone(uneven as typeof three)(plain("1/2")).value.toFraction()).toBe("5/16");
  });
});
