/**
 * What one pleat is (pleats.json, by hand): knives meet at a depth of their face, boxes at half of it; a face lies on two layers
 * for every fold behind it, a double box on twice as many. Four pleats of 3/4 in take 3 in of waist, and of cloth 2, 4 or 8 depths more each.
 */
import { describe, expect, it } from "vitest";
import { inches, plain, type Quantity, toInches } from "../../src/quantity/quantity.ts";
import { clothOf, layersOf, layPleats, meetingDepth, type PleatSet, stacks } from "../../src/solve/pleat.ts";
import { planOf } from "../recipes.ts";
import rows from "./pleats.json" with { type: "json" };

const text = (q: Quantity): string => toInches(q).toFraction();

describe("a pleat", () => {
  it.each(rows)("$set of $face and $depth: $layers layers", (row) => {
    const [set, face, depth] = [row.set as PleatSet, inches(row.face), inches(row.depth)];
    expect(text(meetingDepth(set, face))).toBe(row.meets);
    expect(layersOf(set, face, depth)).toBe(row.layers);
    expect(stacks(set, face, depth)).toBe(row.stacks);
    expect(text(clothOf(set, inches("3"), plain(4n), depth))).toBe(row.cloth);
  });
});

describe("pleats on tape marks", () => {
  const laid = (waist: string, count: string, at: "front" | "back") =>
    layPleats("knife", inches(waist), inches("9"), plain(count), inches("1/16"), at).faces.map(text);
  it("3 in in four, in three and a half: half a face of 3 / 7 up to 7/16, the rest in three", () => {
    expect(laid("3", "4", "front")).toEqual(["3/4", "3/4", "3/4", "3/4"]);
    expect(laid("3", "7/2", "front")).toEqual(["7/16", "7/8", "7/8", "13/16"]);
    expect(laid("3", "7/2", "back")).toEqual(["7/8", "7/8", "13/16", "7/16"]);
  });
  it("half a pleat alone takes all", () => {
    expect(laid("3", "1/2", "front")).toEqual(["3"]);
  });
});

describe("what the opening is called: seams on the waist at 0, 6 3/8, 12 3/4 and 19 1/8 in", () => {
  const station = (at: string, from?: string): string =>
    planOf({ attach: { opening: { at, ...(from ? { "from-centre": from } : {}) } } }).opening.station;
  it.each([
    ["front-left", "5 3/8 in", "the first seam to the left of centre front"],
    ["front-left", "12 in", "the second seam to the left of centre front"],
    ["front-right", "5 3/8 in", "the first seam to the right of centre front"],
    ["front-right", "12 in", "the second seam to the right of centre front"],
    ["front-left", "3 in", "3 in to the left of centre front"],
    ["front-right", "6 3/8 in", "6 3/8 in to the right of centre front"],
    ["side-left", undefined, "the left side"],
    ["centre-front", undefined, "centre front"],
  ])("%s, %s: %s", (at, from, words) => {
    expect(station(at, from)).toBe(words);
  });
});
