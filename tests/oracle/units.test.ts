/**
 * Every unit a maker may write, against the factor that law or an old arithmetic gives it, exactly; and against GNU units,
 * which calculates in floats, where that program is on the machine (`UNITS` may name it, with its options).
 */
import { spawnSync } from "node:child_process";
import { describe, expect, it } from "vitest";
import { UNITS } from "../../src/quantity/units.ts";
import { floatOf, fromText, textOf } from "./rational.ts";
import table from "./units.json" with { type: "json" };

const [program = "units", ...options] = (process.env.UNITS ?? "units").split(" ");
const ask = (from: string, to: string): string =>
  spawnSync(program, [...options, "-t", "-o", "%.17g", from, to], { encoding: "utf8" }).stdout?.trim() ?? "";
const there = Math.abs(Number(ask("1 yard", "mm")) - 914.4) < 1e-9;

describe("units", () => {
  it.each(table)("1 $unit is $is $of [$source; $status]", ({ unit, is }) => {
    expect(UNITS.get(unit)?.size.toFraction()).toBe(textOf(fromText(is)));
  });
  it("the table has a row for every unit there is", () => {
    const sizes = table.map(({ unit }) => UNITS.get(unit));
    for (const [form, unit] of UNITS) expect(sizes, form).toContain(unit);
  });
  it("GNU units gives the same factors, to twelve figures", (context) => {
    if (!there)
      context.skip(
        "GNU units is not on this machine (Debian: apt-get install units): only the factors of law above were checked",
      );
    for (const { unit, units, of, is } of table) {
      const ratio = Number(ask(units, of)) / floatOf(fromText(is));
      expect(Math.abs(ratio - 1), unit).toBeLessThan(1e-12);
    }
  });
});
