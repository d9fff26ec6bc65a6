/** Cost and clock time, by hand. */
import { describe, expect, it } from "vitest";
import { readFormula } from "../../src/quantity/formula.ts";
import { planJson } from "../../src/solve/json.ts";
import { type Keys, planOf } from "../recipes.ts";

const PRICE: Keys = { cloth: "9.50 per yd", notions: "12.00", hour: "22.00", currency: "GBP" };
const shownOf = (keys: Keys) => {
  const { values } = planOf(keys);
  return (name: string): string | undefined => values.get(name)?.shown;
};

describe("cost", () => {
  const keys = { work: { price: PRICE } };
  const shown = shownOf(keys);
  it("of 5 1/2 yd at 9.50 a yard is 52.25", () => {
    expect(shown("cloth.buy")).toBe("5 1/2 yd");
    expect(shown("cost.cloth")).toBe("52.25 GBP");
    expect(shown("work.price.cloth")).toBe("9.50 GBP a yard");
    expect(shown("work.price.hour")).toBe("22.00 GBP an hour");
  });
  it("adds up as printed, cent by cent", () => {
    const cents = (name: string): bigint => BigInt((shown(name) ?? "").replace(/\D/g, ""));
    expect(shown("cost.notions")).toBe("12.00 GBP");
    expect(cents("cost.low")).toBe(5225n + 1200n + cents("cost.workLow"));
    expect(cents("cost.high")).toBe(5225n + 1200n + cents("cost.workHigh"));
    expect(cents("cost.workHigh")).toBeGreaterThan(cents("cost.workLow"));
  });
  it("in plan.json money is decimal text", () => {
    const { values } = planJson(planOf(keys), "0");
    expect(values["cost.cloth"]).toMatchObject({ exact: "52.25", unit: "money", shown: "52.25 GBP" });
    expect(values["work.price.notions"]).toMatchObject({ exact: "12.00" });
  });
  it("of work: 600 seconds of whipping at a rate of one a second and 36.00 an hour", () => {
    const plan = planOf({
      work: {
        price: { hour: "36.00" },
        rates: { running: "60 per min", marking: "60 per min", gauging: "60 per min", whip: "60 per min" },
      },
    });
    const seconds = plan.values.get("work.low")?.quantity.value;
    const cents = plan.values.get("cost.low")?.quantity.value.mul(100n);
    // A second costs a cent, and one rate is both ends.
    expect(
      cents
        ?.sub(seconds ?? 0n)
        .abs()
        .compare("1/2"),
    ).toBeLessThanOrEqual(0);
    expect(plan.values.get("cost.low")?.shown).toMatch(/^\d+\.\d\d$/);
    expect(plan.values.get("cost.high")?.shown).toBe(plan.values.get("cost.low")?.shown);
  });
  it("by the metre: 5 1/2 yd is 5.0292 m, at 10.00 a metre 50.29", () => {
    expect(shownOf({ work: { price: { cloth: "10.00 per m" } } })("cost.cloth")).toBe("50.29");
  });
  it("counts only what is priced, and guesses nothing", () => {
    const only = planOf({ work: { price: { notions: "3" } } });
    expect([...only.values.keys()].filter((name) => name.startsWith("cost."))).toEqual([
      "cost.cent",
      "cost.notions",
      "cost.low",
      "cost.high",
    ]);
    expect(only.values.get("cost.high")?.shown).toBe("3.00");
    expect([...planOf().values.keys()].filter((name) => name.startsWith("cost."))).toEqual([]);
    expect(
      [...planOf({ work: { price: { currency: "GBP" } } }).values.keys()].filter((name) =>
        name.startsWith("cost."),
      ),
    ).toEqual([]);
  });
});

it("the clock adds five minutes to the quicker hour of work and ten to the slower", () => {
  const { values } = planOf();
  const seconds = (name: string) => values.get(name)?.quantity.value ?? values.size;
  expect(values.get("work.clockLow")?.quantity.value.div(seconds("work.low")).toFraction()).toBe("13/12");
  expect(values.get("work.clockHigh")?.quantity.value.div(seconds("work.high")).toFraction()).toBe("7/6");
});

describe("the hours' counts and rates, stage by stage (trade: time; running 23 to 30 published in row 17, the rest ours)", () => {
  const plan = planOf();
  const count = (name: string): string | undefined => plan.values.get(name)?.quantity.value.toFraction();
  it("seams x cut x 8, twice the round x 6, marks once for all rows, bites in every row", () => {
    expect(count("stitches.seams")).toBe("1344");
    expect(count("stitches.hem")).toBe("2076");
    const pleats = plan.gauged.reduce((sum, section) => sum + section.pleats, 0);
    expect(count("gauging.marks")).toBe(`${2 * pleats}`);
    expect(count("gauging.bites")).toBe(`${4 * pleats}`);
  });
  it("over 30 and 23 stitches a minute: 1344 take 2688 seconds and 3506 2/23", () => {
    expect(plan.stages[0]?.low.value.toFraction()).toBe("2688");
    expect(plan.stages[0]?.high.value.toFraction()).toBe("80640/23");
  });
});

it("every name in a formula of cost or time is a value that can be looked up", () => {
  const { values } = planOf({ work: { price: PRICE } });
  for (const { name, how, source } of values.values()) {
    if (source !== "formula" || !/^(cost|work)\./.test(name)) continue;
    for (const used of readFormula(how).names) expect(values.has(used), `${used} in ${name}`).toBe(true);
  }
});
