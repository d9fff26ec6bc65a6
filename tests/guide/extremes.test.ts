/** Garments at the edge of what a page holds: the guides leave out what does not fit, and what is there stays on the sheet. */
import { describe, expect, it } from "vitest";
import { makeBooklet } from "../../src/booklet/booklet.ts";
import { facingEnd } from "../../src/guide/facing-end.ts";
import { guidesOf } from "../../src/guide/index.ts";
import { SHEET } from "../../src/guide/paper.ts";
import { type Keys, planOf } from "../recipes.ts";
import { lowest } from "./lowest.ts";

const CASES: readonly (readonly [string, Keys, RegExp | undefined, RegExp | undefined])[] = [
  [
    "a band as deep as the page is not drawn",
    { attach: { band: { depth: "10 in" } } },
    /marking strip/i,
    /ends of the band/i,
  ],
  [
    "a deep band's ends stand alone",
    { attach: { band: { depth: "3 in", turning: "3/4 in" } } },
    /ends of the band/i,
    undefined,
  ],
  [
    "a lap longer than the page leaves the upper end",
    { attach: { band: { lap: "8 in" } } },
    /ends of the band/i,
    undefined,
  ],
  ["no lap", { attach: { band: { lap: "0 in" } } }, /ends of the band/i, undefined],
  [
    "rows far down the turn-down",
    { fullness: { rows: "4", "first-row": "1 in", "between-rows": "2 in" }, skirt: { "turn-down": "8 in" } },
    /hook strip/i,
    /marking strip|gauging card/i,
  ],
  [
    "hooks all along a long placket",
    { skirt: { placket: "20 in" }, attach: { "placket-hooks": "all-along" } },
    /hook strip/i,
    undefined,
  ],
  [
    "a face wider than the page",
    { fullness: { zones: "[{set: box, face: 12 in}]" } },
    /pleat strip/i,
    undefined,
  ],
  [
    "bites of the deepest pitch",
    { fullness: { "deepest-pitch": "9 in", "pleats-per-inch": "1" }, cloth: { thickness: "4 mm" } },
    /marking strip/i,
    undefined,
  ],
];

describe("at the edge of the page", () => {
  it.each(CASES)("%s", (_, keys, has, hasNot) => {
    const plan = planOf(keys);
    const guides = guidesOf(plan);
    const titles = guides.map(({ title }) => title).join("; ");
    if (has) expect(titles).toMatch(has);
    if (hasNot) expect(titles).not.toMatch(hasNot);
    for (const guide of guides)
      expect(lowest(JSON.stringify(guide.draw()))).toBeLessThanOrEqual(SHEET.height);
    expect(makeBooklet(plan).get("booklet.md")).toContain("Guides to print at true size");
  });
});

describe("the facing's end", () => {
  it("is as deep as the facing is cut, and not there for a turned hem", () => {
    const [cut, ...others] = facingEnd(planOf());
    expect(others).toEqual([]);
    // 4 in and two seams of 1/2 in: 5 in, 127 mm.
    expect(cut?.words).toContain("cut 5 in deep");
    const outline = String((cut?.draw(0) ?? []).find(({ tagName }) => tagName === "path")?.properties.d);
    const [from, to] = [/^M60 ([\d.]+)/, /V([\d.]+)/].map((part) => Number(part.exec(outline)?.[1]));
    expect((to as number) - (from as number)).toBeCloseTo(127, 2);
    expect(facingEnd(planOf({ skirt: { hem: { kind: "turned", depth: "3 in" } } }))).toEqual([]);
  });
});
