/** A garment's plan as the sheet of one who measures the garment when it survives: every number exact. */
import fc from "fast-check";
import { printExactly } from "../../src/quantity/print.ts";
import { type Quantity, sub } from "../../src/quantity/quantity.ts";
import type { Plan } from "../../src/solve/plan.ts";
import { recipeText } from "../recipes.ts";

const eighths = (least: number, most: number): fc.Arbitrary<string> =>
  fc.integer({ min: least * 8, max: most * 8 }).map((n) => `${n}/8 in`);
const millimetresOf = (least: number, most: number): fc.Arbitrary<string> =>
  fc.integer({ min: least, max: most }).map((n) => `${n} mm`);

/** Recipes of what the sheet asks for, in inches and in centimetres. */
export const measurableRecipe: fc.Arbitrary<string> = fc.constantFrom("in", "cm").chain((show) => {
  const length = (least: number, most: number): fc.Arbitrary<string> =>
    show === "in" ? eighths(least, most) : millimetresOf(Math.round(least * 25), Math.round(most * 25));
  return fc
    .record({
      waist: length(20, 38),
      front: length(36, 42),
      left: length(36, 44),
      right: length(36, 44),
      back: length(36, 46),
      width: length(22, 60),
      selvedge: fc.constantFrom("0 in", "1/8 in", "4 mm"),
      thickness: fc.integer({ min: 5, max: 30 }).map((n) => `${n}/100 mm`),
      halves: fc.integer({ min: 4, max: 14 }),
      seam: fc.constantFrom("3/8 in", "1/2 in", "1.2 cm"),
      off: length(1, 5),
      kind: fc.constantFrom("faced", "turned"),
      depth: length(2, 6),
      rows: fc.constantFrom("2", "3"),
      method: fc.constantFrom(
        "gauged",
        "gauged",
        "gauged",
        "flat-front-gauged",
        "pleated-gauged-back",
        "pleated",
      ),
      wish: fc.option(fc.integer({ min: 4, max: 12 }).map(String), { nil: null }),
      at: fc.constantFrom("centre-back", "centre-front", "side-left", "side-right"),
      to: fc.constantFrom("waistband", "bodice-edge"),
      braid: fc.constantFrom("true", "false"),
    })
    .map((x) =>
      recipeText({
        show,
        wearer: {
          waist: x.waist,
          "waist-to-floor": { side: null, front: x.front, left: x.left, right: x.right, back: x.back },
        },
        cloth: { width: x.width, selvedge: x.selvedge, thickness: x.thickness },
        skirt: {
          breadths: x.halves % 2 ? `${(x.halves - 1) / 2} 1/2` : `${x.halves / 2}`,
          seam: x.seam,
          "off-floor": x.off,
          hem: { kind: x.kind, depth: x.depth },
          braid: x.braid,
        },
        fullness: { method: x.method, rows: x.rows, "pleats-per-inch": x.wish },
        attach: { to: x.to, opening: { at: x.at } },
      }),
    );
});

/** May this garment be measured by the sheet? What the sheet does not ask for is left out of it. */
export function isMeasurable({ recipe, gauged }: Plan): boolean {
  const { cloth, fullness, attach, skirt, lining, interlining } = recipe;
  const plain = !fullness.zones && !fullness.backShare && !fullness.followRepeat && !fullness.trial;
  const [first] = gauged;
  const even = gauged.every(
    ({ pleats, waist }) =>
      first !== undefined && waist.value.mul(first.pleats).equals(first.waist.value.mul(pleats)),
  );
  return (
    plain &&
    even &&
    !cloth.repeat?.match &&
    !attach.made &&
    !attach.waistEdge &&
    !skirt.tucks &&
    !skirt.flounces &&
    !lining &&
    !interlining
  );
}

/** original.yaml of a plan. @param without keys to leave out */
export function sheetOf(plan: Plan, without: readonly string[] = []): string {
  const { recipe } = plan;
  const { attach, cloth, fullness, skirt } = recipe;
  const inch = (q: Quantity): string => printExactly(q, "in");
  const value = (name: string): string => inch(plan.values.get(name)?.quantity as Quantity);
  const four = (of: string): string =>
    `{front: ${value(`${of}.front`)}, left: ${value(`${of}.left`)}, right: ${value(`${of}.right`)}, back: ${value(`${of}.back`)}}`;
  const method = fullness.method ?? "gauged";
  const lines: Record<string, string | undefined> = {
    original: "1",
    title: "A measured garment (invented)",
    year: "1846",
    garment: recipe.garment,
    show: recipe.show,
    tape: inch(recipe.tape),
    cloth: `{width: ${inch(cloth.width)}, selvedge: ${inch(cloth.selvedge)}${cloth.thickness ? `, thickness: ${inch(cloth.thickness)}` : ""}}`,
    breadths: `[${plan.breadths.map(({ from, to }) => `{width: ${inch(sub(to, from))}}`).join(", ")}]`,
    seam: inch(skirt.seam),
    "hem-round": value("skirt.round"),
    set: method,
    "flat-front": method === "flat-front-gauged" ? inch(fullness.flatFront) : undefined,
    "gauged-back": method === "pleated-gauged-back" ? inch(fullness.gaugedBack) : undefined,
    "pleats-in-all": plan.gauged.length > 0 ? plan.values.get("gauging.pleats")?.shown : undefined,
    rows: String(fullness.rows),
    "first-row": inch(fullness.firstRow),
    "between-rows": inch(fullness.betweenRows),
    waist: value("waist.seam"),
    lengths: four("finished"),
    fold: four("turnDown"),
    hem: `{kind: ${skirt.hem.kind}, depth: ${inch(skirt.hem.depth)}, facing: ${skirt.hem.cloth}, braid: ${skirt.braid}}`,
    edge: `{to: ${attach.to}, depth: ${inch(attach.band.depth)}, opening: ${attach.opening.at}, placket: ${inch(skirt.placket)}${attach.opening.fromCentre ? `, from-centre: ${inch(attach.opening.fromCentre)}` : ""}}`,
    "off-floor": inch(skirt.offFloor),
  };
  return Object.entries(lines)
    .filter(([key, text]) => text !== undefined && !without.includes(key))
    .map(([key, text]) => `${key}: ${text}\n`)
    .join("");
}
