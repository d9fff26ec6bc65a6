/** A recipe without its wearer: which measures are asked for, and what of the recipe stays. */
import { describe, expect, it } from "vitest";
import { patternOf } from "../../src/recipe/sizes/own-measures.ts";
import { changed, type Data, treeOf } from "../../src/recipe/written.ts";

const HOOP = { round: "110 in", height: "9 in", shape: "1" };
const rows: readonly [about: string, written: Data, asks: string, left: Data][] = [
  [
    "lengths alike on both sides",
    {
      title: "a",
      wearer: {
        name: "W",
        waist: "27 in",
        "waist-to-floor": { front: "40 in", side: "41 in", back: "42 in" },
      },
    },
    "waist waist-to-floor.front waist-to-floor.side waist-to-floor.back",
    { title: "a" },
  ],
  [
    "unlike sides, and an ease that is the garment's",
    {
      wearer: {
        ease: "1 in",
        "waist-to-floor": { front: "40 in", left: "41 in", right: "42 in", back: "42 in" },
      },
    },
    "waist waist-to-floor.front waist-to-floor.left waist-to-floor.right waist-to-floor.back",
    { wearer: { ease: "1 in" } },
  ],
  [
    "over a hoop, which is hers but for its shape",
    {
      wearer: { waist: "27 in", "waist-height": "41 in", hoop: HOOP },
      sizes: [{ name: "A" }],
      publish: { class: "true" },
      class: { pupils: "8" },
      commission: { deposit: "60.00" },
    },
    "waist waist-height hoop.round hoop.height",
    { wearer: { hoop: { shape: "1" } } },
  ],
  [
    "no wearer at all, and a text where a block must stand",
    { title: "a", fullness: "gauged", wearer: "me" },
    "waist waist-to-floor.front waist-to-floor.side waist-to-floor.back",
    { title: "a", fullness: "gauged", wearer: "me" },
  ],
];

describe("a pattern", () => {
  it.each(rows)("%s", (_, written, asks, left) => {
    const pattern = patternOf(treeOf(written).root as never);
    expect(pattern.asks).toEqual(asks.split(" ").map((path) => `wearer.${path}`));
    expect(JSON.parse(JSON.stringify(pattern.written))).toEqual(left);
  });
});

describe("a tree without a file", () => {
  it.each([
    [
      "a text in a list's entry",
      { zones: [{ set: "flat" }, { set: "gauged" }] },
      { "zones.1.waist": "9 in" },
      { zones: [{ set: "flat" }, { set: "gauged", waist: "9 in" }] },
    ],
    [
      "an entry that is emptied stays an entry",
      { zones: [{ set: "flat" }] },
      { "zones.0.set": null },
      { zones: [{}] },
    ],
    ["all taken out leaves an empty block", { title: "a" }, { title: null }, {}],
  ] as const)("%s", (_, data, changes, wanted) => {
    expect(changed(data as Data, changes)).toEqual(wanted);
  });

  it("has a place for all that is written", () => {
    const { places } = treeOf({ zones: [{ set: "flat" }] });
    expect([...places.keys()]).toEqual(["zones", "zones.0", "zones.0.set"]);
  });
});
