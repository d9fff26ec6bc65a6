/** The laws of thread, needles and pins, and of what faults cost: from first principles, as laws.ts. */
import Fraction from "fraction.js";
import type { planJson } from "../src/solve/json.ts";
import type { Plan } from "../src/solve/plan.ts";

interface Checks {
  readonly json: ReturnType<typeof planJson>;
  readonly plan: Plan;
  law(holds: boolean, words: string): void;
  same(a: Fraction, b: Fraction, words: string): void;
  value(name: string): Fraction;
  has(name: string): boolean;
}

/** Sews stitch by stitch from one needleful after another: 5/8 in a stitch, and 6 in of each stay in the hand. */
function needlefulsFor(stitches: Fraction): number {
  const stitch = new Fraction(5n, 8n);
  const used = stitches.mul(stitch);
  let sewn = new Fraction(0n);
  let needlefuls = 0;
  while (sewn.compare(used) < 0) {
    sewn = sewn.add(18n - 6n);
    needlefuls += 1;
  }
  return needlefuls;
}

export function threadLaws({ json, plan, law, same, value, has }: Checks): void {
  const gauged = json.sections.filter(({ set }) => set === "gauged");
  const pleats = gauged.reduce((sum, section) => sum + ("pleats" in section ? Number(section.pleats) : 0), 0);
  const laid = has("pleating.count") ? value("pleating.count") : new Fraction(0n);
  for (const of of ["whip", "setting"]) {
    law(has(`${of}.thread`) === has(`${of}.stitches`), `thread where there are stitches: ${of}`);
    if (!has(`${of}.thread`)) continue;
    const needlefuls = new Fraction(BigInt(needlefulsFor(value(`${of}.stitches`))));
    same(value(`${of}.needlefuls`), needlefuls, `needlefuls, ${of}`);
    same(value(`${of}.thread`), needlefuls.mul(18n), `thread, ${of}`);
  }
  const plain = json.sections.filter(({ set }) => set !== "gauged");
  law(has("setting.waist") === plain.length > 0, "setting thread where something is not gauged");
  if (plain.length > 0) {
    const waist = plain.map((section) => new Fraction(section.waist)).reduce((a, b) => a.add(b));
    same(value("setting.waist"), waist, "waist set flat or in pleats");
    same(value("setting.stitches"), waist.mul(8n).add(laid.mul(2n)), "stitches there");
  }
  law(
    value("thread.seams").compare(value("breadths.cut").mul(plan.breadths.length)) > 0,
    "thread for the seams",
  );
  law(value("thread.hem").compare(value("skirt.round")) > 0, "thread for the hem");
  const parts = ["seams", "hem", "edge", "trims"].map((name) => `thread.${name}`).filter(has);
  same(
    value("thread.sewing"),
    parts.map(value).reduce((a, b) => a.add(b)),
    "sewing thread in all",
  );

  const rows = pleats > 0 ? plan.recipe.fullness.rows : 1;
  same(
    value("needles.count"),
    new Fraction(BigInt(rows + 3)),
    "needles: one a row, one to spare, two betweens",
  );
  const quarters = pleats > 0 ? gauged.length : 4;
  same(value("pins.count"), laid.mul(2n).add(BigInt(4 + 8 * quarters + 8)), "pins");

  same(value("placket.passes").sub(value("waist.seam")).div(2n), value("skirt.placket"), "what passes");
  const out = value("skirt.round").sub(value("redo.roundLess"));
  if (plan.recipe.skirt.run === "down")
    same(out.mul(2n), value("breadths.finished"), "half a breadth taken out");
  else law(out.mul(8n).compare(value("skirt.round")) <= 0, "an eighth of the round taken out at most");
  if (has("redo.moved")) {
    const moved = value("redo.moved").mul(40n);
    law(moved.compare(pleats) >= 0 && moved.sub(40n).compare(pleats) < 0, "pleats let pass behind the sides");
  }
}
