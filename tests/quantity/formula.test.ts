import fc from "fast-check";
import { all, create } from "mathjs";
import { describe, expect, it } from "vitest";
import { FormulaError, type Result, readFormula } from "../../src/quantity/formula.ts";
import {
  AREA,
  AREAL,
  dim,
  fraction,
  inches,
  kindName,
  MASS,
  plain,
  type Quantity,
  quantity,
  toInches,
} from "../../src/quantity/quantity.ts";
import cases from "./formulas.json" with { type: "json" };

const values: Record<string, Quantity> = {
  "waist.seam": inches("53/2"),
  "skirt.round": inches("173"),
  n: plain(4n),
  area: quantity(fraction("6451.6"), AREA),
};
const lookup = (name: string): Quantity | undefined =>
  Object.hasOwn(values, name) ? values[name] : undefined;

function text(result: Result): string {
  if (typeof result === "boolean") return result ? "yes" : "no";
  const inInches = toInches(result).toFraction();
  return result.dim.length === 1 ? `${inInches} in` : inInches;
}

describe("formulas", () => {
  it.each(cases.results as [string, string][])("%s = %s", (formula, wanted) => {
    expect(text(readFormula(formula).evaluate(lookup))).toBe(wanted);
  });

  it.each(cases.refused as [string, string, number][])("%j is refused: %s", (formula, why, at) => {
    let error: unknown;
    try {
      readFormula(formula).evaluate(lookup);
    } catch (caught) {
      error = caught;
    }
    expect(error).toBeInstanceOf(FormulaError);
    expect((error as FormulaError).message).toContain(why);
    expect((error as FormulaError).at).toBe(at);
  });

  it("names come out in the order they are first used", () => {
    expect(readFormula("n * waist.seam + n + skirt.round").names).toEqual(["n", "waist.seam", "skirt.round"]);
  });

  it("refuses what is too long, too deep or too large", () => {
    expect(() => readFormula("1+".repeat(300))).toThrow("at most 500");
    expect(() => readFormula(`${"(".repeat(60)}1${")".repeat(60)}`)).toThrow("nest deeper");
    const big = Array.from({ length: 100 }, () => "9999").join("*");
    expect(text(readFormula(big).evaluate(lookup)).length).toBeGreaterThan(300);
    let lines = plain("999999999999");
    const square = readFormula("a * a");
    expect(() => {
      for (let i = 0; i < 20; i += 1) lines = square.evaluate(() => lines) as Quantity;
    }).toThrow("too many digits");
  });

  it("reading never throws anything but a FormulaError", () => {
    fc.assert(
      fc.property(
        fc.string({ unit: fc.constantFrom(..."0123 /.,-+*()nabinm<>=!?:;[]{}'\"^%_½") }),
        (formula) => {
          try {
            readFormula(formula).evaluate(lookup);
          } catch (error) {
            expect(error).toBeInstanceOf(FormulaError);
          }
        },
      ),
      { numRuns: 3000 },
    );
  });

  it("agrees with full mathjs in fractions on random sums", () => {
    const math = create(all ?? {}, { number: "Fraction" });
    const leaf = fc.oneof(
      fc.integer({ min: 0, max: 99 }).map(String),
      fc.tuple(fc.integer({ min: 0, max: 99 }), fc.integer({ min: 0, max: 99 })).map(([a, b]) => `${a}.${b}`),
    );
    const sum = fc.letrec<{ e: string }>((tie) => ({
      e: fc.oneof(
        { maxDepth: 5 },
        leaf,
        fc
          .tuple(tie("e"), fc.constantFrom("+", "-", "*", " / "), tie("e"))
          .map(([a, op, b]) => `(${a} ${op} ${b})`),
        tie("e").map((a) => `abs(${a})`),
        fc.tuple(tie("e"), tie("e")).map(([a, b]) => `min(${a}, ${b})`),
        tie("e").map((a) => `floor(${a})`),
      ),
    })).e;
    fc.assert(
      fc.property(
        sum.filter((s) => s.length < 400),
        (formula) => {
          let ours: string | undefined;
          try {
            ours = text(readFormula(formula).evaluate(lookup));
          } catch (error) {
            if (!(error as Error).message.includes("divide by nothing")) throw error;
          }
          let theirs: string | undefined;
          try {
            const result = math.evaluate(formula) as { toFraction(): string };
            theirs = result.toFraction();
          } catch {
            theirs = undefined;
          }
          expect(ours).toBe(theirs);
        },
      ),
      { numRuns: 1000 },
    );
  });
});

describe("kinds", () => {
  it("are named in a maker's words", () => {
    expect(kindName(MASS)).toBe("a weight");
    expect(kindName(AREAL)).toBe("a weight of cloth (g/m2)");
    expect(kindName(dim(2, 1))).toBe("a quantity of length^2 x mass");
  });
});
