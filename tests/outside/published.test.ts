/** Numbers that others published, held against whole plans. The data is in published.json, one row a case. */
import { describe, expect, it } from "vitest";
import { add, fraction, type Quantity, sub, toInches } from "../../src/quantity/quantity.ts";
import { readLength } from "../../src/quantity/read.ts";
import type { Plan } from "../../src/solve/plan.ts";
import { type Keys, planOf } from "../recipes.ts";
import rows from "./published.json" with { type: "json" };

interface Row {
  readonly row: number;
  readonly what: string;
  readonly source: string;
  readonly status: string;
  readonly recipe: Keys;
  readonly expected?: Record<string, string>;
  readonly near?: Record<string, readonly [string, string]>;
  readonly atLeast?: Record<string, string>;
  /** Marks of one section: one more than its bites. */
  readonly marks?: string;
  /** Cloth less waist over one half of the skirt. */
  readonly takenUp?: string;
  /** Where the last whole breadth ends on the cloth. */
  readonly cutting?: { breadths: number; end: string };
  readonly ratio?: { of: string; to: string; is: string; within: string };
}

const quantityOf = (plan: Plan, name: string): Quantity => {
  const value = plan.values.get(name);
  if (!value) throw new Error(`no value ${name}`);
  return value.quantity;
};

/** "27/4" in inches (or plain), or a length with its unit. */
function expectedInches(text: string): ReturnType<typeof fraction> {
  const reading = readLength(text);
  return reading.ok ? toInches(reading.value) : fraction(text);
}

describe("published numbers", () => {
  it.each(
    (rows as unknown as Row[]).map(
      (row) => [`row ${row.row}: ${row.what} [${row.source}; ${row.status}]`, row] as const,
    ),
  )("%s", (_, row) => {
    const plan = planOf(row.recipe);
    for (const [name, wanted] of Object.entries(row.expected ?? {})) {
      expect(`${name} ${toInches(quantityOf(plan, name)).toFraction()}`).toBe(
        `${name} ${expectedInches(wanted).toFraction()}`,
      );
    }
    for (const [name, [wanted, within]] of Object.entries(row.near ?? {})) {
      const off = toInches(quantityOf(plan, name)).sub(fraction(wanted)).abs();
      expect(
        off.compare(fraction(within)),
        `${name} is ${toInches(quantityOf(plan, name)).toString(4)}`,
      ).toBeLessThanOrEqual(0);
    }
    for (const [name, least] of Object.entries(row.atLeast ?? {})) {
      expect(toInches(quantityOf(plan, name)).compare(fraction(least))).toBeGreaterThanOrEqual(0);
    }
    if (row.marks) {
      expect(plan.gauged.map(({ marks }) => String(marks.length))).toContain(row.marks);
      for (const { marks, bites } of plan.gauged) expect(marks.length).toBe(bites.length + 1);
    }
    if (row.takenUp) {
      const left = plan.gauged.filter(({ half }) => half === "left");
      const up = left.map(({ cloth, waist }) => toInches(sub(cloth, waist))).reduce((a, b) => a.add(b));
      expect(up.toFraction()).toBe(fraction(row.takenUp).toFraction());
    }
    if (row.cutting) {
      const ends = plan.layout.pieces
        .filter(({ name }) => name.startsWith("breadth"))
        .map(({ y, length }) => toInches(add(y, length)));
      expect(ends.length).toBe(row.cutting.breadths);
      expect(ends.at(-1)?.toFraction()).toBe(expectedInches(row.cutting.end).toFraction());
    }
    if (row.ratio) {
      const ratio = expectedInches(row.ratio.of).div(toInches(quantityOf(plan, row.ratio.to)));
      expect(ratio.sub(fraction(row.ratio.is)).abs().compare(fraction(row.ratio.within))).toBeLessThanOrEqual(
        0,
      );
    }
  });
});
