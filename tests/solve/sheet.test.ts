/** What stands on the sheet beside a value: how it is printed, its exact text and unit, where it is from (sheet.json, by hand). */
import { describe, expect, it } from "vitest";
import { inches, sub } from "../../src/quantity/quantity.ts";
import { planJson } from "../../src/solve/json.ts";
import { placeName } from "../../src/solve/place-name.ts";
import { meaningOf } from "../../src/solve/sheet.ts";
import { stateOf } from "../../src/solve/state.ts";
import { recordedPlan } from "../booklet/recorded.ts";
import { type Keys, planOf } from "../recipes.ts";
import rows from "./sheet.json" with { type: "json" };

const plan = planOf({
  cloth: { weight: "120 g/m2", shrinkage: "3 %" },
  fullness: { "back-share": "55 %", stay: { thickness: "0.1 mm" } },
  attach: { "other-waists": "[{waist: 27 in}]" },
  work: { price: { cloth: "7.20 per yd", hour: "36.00", notions: "12", currency: "GBP" } },
});
const json = planJson(plan, "0");

describe("a value on the sheet", () => {
  it.each(rows)("$name: $shown, $exact $unit", ({ name, shown, exact, unit, how, numbers }) => {
    expect(json.values[name]).toEqual({ exact, unit, shown, how });
    if (numbers) expect(plan.values.get(name)?.inNumbers).toBe(numbers);
  });
  it("is said to mean what its key means, with the block it stands in where blocks are nested", () => {
    expect(meaningOf("cloth.width")).toBe("whole width, selvedge to selvedge");
    expect(meaningOf("skirt.hem.depth")).toMatch(/^[^:]+: [^:]+/);
    expect(meaningOf("attach.other-waists.0.waist")).toBe(meaningOf("attach.other-waists.7.waist"));
    expect(meaningOf("no.such.key")).toBe("no.such.key");
  });
});

describe("how far a garment has come, by its recipe alone", () => {
  const triedTo = (closesTo: string): string =>
    stateOf(planOf({ fullness: { trial: `{cloth: "21 5/8 in", pleats: "24", closes-to: "${closesTo}"}` } }));
  it("a trial that closes to all it has to reach, 25 1/2 / 8 in, is proved; above it, it is not", () => {
    expect(triedTo("3 3/16 in")).toBe("trial proved");
    expect(triedTo("3 1/4 in")).toBe("planned");
    expect(stateOf(plan)).toBe("planned");
  });
});

describe("how far it has come, by its record", () => {
  const made = recordedPlan();
  const { asMade } = made.recipe.recorded ?? {};
  if (!asMade) throw new Error("nothing is recorded");
  const recorded = (entries: number) => ({
    ...made,
    recipe: {
      ...made.recipe,
      recorded: { ...made.recipe.recorded, asMade: { ...asMade, entries: asMade.entries.slice(0, entries) } },
    },
  });
  it("planned with no entry, in work with one, made once an entry says when it was finished", () => {
    expect([0, 1, 2].map((entries) => stateOf(recorded(entries)))).toEqual(["planned", "in work", "made"]);
  });
});

describe("the name of a place on the waist seam of 25 1/2 in", () => {
  const slit: Keys = { attach: { opening: { at: "front-left", "from-centre": "3 in" } } };
  const opened = planOf(slit);
  const waist = inches("51/2");
  const named = (at: string): string => placeName(inches(at), waist, opened);
  it.each([
    ["0", "centre front"],
    ["51/2", "centre front"],
    ["51/8", "left side"],
    ["51/4", "centre back"],
    ["153/8", "right side"],
    ["3", "the opening"],
    ["45/2", "3 in"],
    ["51/16", "3 3/16 in"],
    ["5", "5 in"],
    ["20", "5 1/2 in"],
  ])("%s in from centre front by the left: %s", (at, name) => {
    expect(named(at)).toBe(name);
  });
  it("from the right side it is counted the nearer way", () => {
    expect(placeName(sub(waist, inches("5")), waist, opened)).toBe("5 in");
  });
});
