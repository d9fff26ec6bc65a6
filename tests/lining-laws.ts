/** Laws of linings and of seams that meet on the pattern, from first principles: no solver's code. */
import type Fraction from "fraction.js";
import type { planJson } from "../src/solve/json.ts";
import type { Plan } from "../src/solve/plan.ts";
import { F, inches, type Laws, whole } from "./law.ts";

/** Where seams meet on the pattern, a line that runs into a seam runs on out of it, and a dominant one stands at centre front. */
export function matchLaws({ plan, value, has, law, same, notLess }: Laws): void {
  const { repeat } = plan.recipe.cloth;
  const down = plan.recipe.skirt.run === "down";
  law(has("seam.lost") === (down && repeat?.match === true), "seams take more only to meet the pattern");
  if (!down || !repeat?.match || !repeat.across) return;
  const across = inches(repeat.across);
  const usable = value("cloth.width").sub(value("cloth.selvedge").mul(2));
  const [left, right] = [value("seam.left"), value("seam.right")];
  // The line at a place x inside the left selvedge of one breadth stands at x - left; the next breadth begins where this ends.
  const between = usable.sub(left).sub(right);
  law(whole(between.div(across)), "whole repeats stand between two seams");
  same(between, value("breadths.finished"), "a breadth between its seams");
  notLess(left, value("skirt.seam"), "a left edge has its seam allowance");
  notLess(right, value("skirt.seam"), "a right edge has its seam allowance");
  if (repeat.linesLost) {
    const asked = F(repeat.linesLost.value.toFraction()).mul(across);
    notLess(left.add(right), asked, "so many repeats are lost in a seam");
  }
  if (!repeat.dominant) return;
  const line = inches(repeat.dominant);
  const seamInFront = plan.seams.some(({ alongTop, kind }) => kind !== "slit" && alongTop.value.n === 0n);
  const centre = seamInFront ? left : left.add(between.div(2));
  law(whole(centre.sub(line).div(across)), "a dominant line stands at centre front");

  // Of all the places the line can be taken to, the nearest the middle of the seam; of two as near the smaller left edge.
  const [seam, lost] = [value("skirt.seam"), left.add(right)];
  const off = (edge: Fraction): Fraction => edge.mul(2).sub(lost).abs();
  for (const other of [left.sub(across), left.add(across)]) {
    if (other.compare(seam) < 0 || lost.sub(other).compare(seam) < 0) continue;
    const nearer = off(other).compare(off(left));
    law(nearer > 0 || (nearer === 0 && left.compare(other) < 0), "the dominant line's seam is evenly shared");
  }
  // One repeat more between the seams would not do: no edge of it, in steps of a repeat, would leave both allowances.
  for (
    let more = value("repeat.between").add(1);
    more.compare(value("repeat.most")) <= 0;
    more = more.add(1)
  ) {
    const taken = usable.sub(more.mul(across));
    const from = seamInFront ? line : line.sub(more.mul(across).div(2));
    const least = from.sub(from.sub(seam).div(across).floor().mul(across));
    law(taken.sub(least).compare(seam) < 0, "no more repeats can stand between the seams");
  }
}

/** Linings: enough layers and no more in a pleat's wall, a round that fits, every breadth covered, pieces that lie on their cloth. */
export function liningLaws({
  json,
  plan,
  value,
  has,
  law,
  same,
  notLess,
}: Laws & { readonly json: ReturnType<typeof planJson> }): void {
  const { recipe } = plan;
  const { lining, interlining } = recipe;
  const wanted = [...(lining ? ["lining"] : []), ...(interlining ? ["interlining"] : [])];
  law(json.linings.map(({ which }) => which).join() === wanted.join(), "a layout for each lining");
  if (has("gauging.wall")) {
    const layers = (to: string | undefined): number => (to === "turned" ? 2 : to === "fold" ? 1 : 0);
    const wall = value("cloth.thickness")
      .mul(2)
      .add(lining ? value("lining.thickness").mul(layers(lining.to)) : 0)
      .add(interlining ? value("interlining.thickness").mul(layers(interlining.to)) : 0)
      .add(recipe.fullness.stay ? value("fullness.stay.thickness") : 0);
    same(value("gauging.wall"), wall, "what the needle meets in a wall");
    if (!recipe.fullness.trial) same(value("gauging.packed"), wall.mul(2), "packed pleats are two walls");
  }
  for (const { which, width, length, pieces } of json.linings) {
    const boxes = pieces.map((piece) => ({
      x: F(piece.x),
      y: F(piece.y),
      r: F(piece.x).add(F(piece.width)),
      b: F(piece.y).add(F(piece.length)),
    }));
    boxes.forEach((a, i) => {
      const inside = a.r.compare(F(width)) <= 0 && a.b.compare(F(length)) <= 0;
      law(inside, `piece ${i + 1} of the ${which} lies on its cloth`);
      for (const b of boxes.slice(i + 1))
        law(
          a.r.compare(b.x) <= 0 || b.r.compare(a.x) <= 0 || a.b.compare(b.y) <= 0 || b.b.compare(a.y) <= 0,
          `pieces of the ${which} do not overlap`,
        );
    });
    same(F(width), value(`${which}.width`), `width of the ${which}`);
    law(
      pieces.every((piece) => F(piece.length).equals(value(`${which}.cut`))),
      `every piece of the ${which} has its cut length`,
    );
    notLess(
      value(`${which}.buy`).mul(F(1).sub(value(`${which}.shrinkage`))),
      value(`${which}.length`),
      `${which} to buy after shrinking`,
    );
    const selvedge = value(`${which}.selvedge`);
    const gives = pieces.map((piece) => {
      const across = F(piece.width);
      if (across.equals(F(width))) return across.sub(selvedge.mul(2));
      return which === "lining" && lining?.kind === "hung" ? across.sub(selvedge) : across;
    });
    const total = gives.reduce((a, b) => a.add(b), F(0));
    const widths = pieces.map((piece) => F(piece.width).toFraction()).sort();
    const wanted = widthsOf(which, plan, value).map((across) => across.toFraction());
    const cutting = pieces
      .flatMap(({ name, width: across }) => {
        const number = /^(?:narrow strip|piece) (\d+)$/.exec(name)?.[1];
        return number ? [{ number: Number(number), across: F(across) }] : [];
      })
      .sort((a, b) => a.number - b.number);
    law(
      cutting.every(
        ({ across }, i) => i === 0 || across.compare((cutting[i - 1] as { across: Fraction }).across) <= 0,
      ),
      `the wider strips of the ${which} are cut first`,
    );
    law(widths.join() === wanted.sort().join(), `each piece of the ${which} is as wide as it has to be`);
    const seam = value("skirt.seam");
    const round = value("skirt.round");
    if (which === "lining" && lining?.kind === "hung") {
      notLess(total.sub(seam.mul(2 * pieces.length)), round, "the lining goes round");
      const most = total.sub(seam.mul(2 * pieces.length)).sub(round);
      law(most.compare(value("lining.finished")) < 0, "a breadth of lining less would not");
    } else {
      const covered = plan.breadths.map((breadth) => coveredOf(which, breadth, plan, value));
      const target = covered.reduce((a, b) => a.add(b), F(0));
      const joins = pieces.length - plan.breadths.length;
      law(joins >= 0, `a piece of the ${which} for every breadth`);
      notLess(total.sub(seam.mul((which === "lining" ? 2 : 1) * joins)), target, `the ${which} covers`);
    }
    if (has(`${which}.weighs`)) {
      const area = pieces.map((p) => F(p.width).mul(F(p.length))).reduce((a, b) => a.add(b), F(0));
      same(value(`${which}.weighs`), area.mul(value(`${which}.weight`)), `weight of the ${which}`);
    }
  }
  // Long enough at its longest place: from the hem's fold to the fold at the waist, or to below the rows.
  const longest = json.balance
    .map(({ finished }) => F(finished))
    .reduce((a, b) => (a.compare(b) < 0 ? b : a));
  if (lining) {
    const up = value("lining.cut").sub(value("lining.foot"));
    const shorter = lining.to === "separate" ? value("lining.shorter") : F(0);
    notLess(up, longest.sub(shorter), "the lining reaches the waist");
    if (lining.kind === "flat")
      notLess(
        value("breadths.cut"),
        value("lining.cut").sub(value("tape")),
        "a flat lining is no longer than its breadth",
      );
  }
  if (interlining && interlining.to !== "short")
    notLess(value("interlining.cut"), longest, "the interlining reaches the fold");
  if (has("skirt.weightInAll")) {
    const all = [value("skirt.weight"), ...wanted.map((which) => value(`${which}.weighs`))];
    same(
      value("skirt.weightInAll"),
      all.reduce((a, b) => a.add(b)),
      "weight in all",
    );
  }
}

/** What of one breadth is covered: an interlining lies between the seams; a flat lining lies in them, as wide as the cloth. */
function coveredOf(
  which: "lining" | "interlining",
  { whole: isWhole, from, to }: Plan["breadths"][number],
  { recipe }: Plan,
  value: Laws["value"],
): Fraction {
  const between = inches(to).sub(inches(from));
  if (which === "interlining") return between;
  // A length along the body is cut with its two allowances; a breadth goes from selvedge to selvedge.
  if (recipe.skirt.run === "along") return between.add(value("skirt.seam").mul(2));
  return value("breadths.usable").div(isWhole ? 1 : 2);
}

/** How wide each piece is cut: whole widths, and what is left up to a mark. */
function widthsOf(which: "lining" | "interlining", plan: Plan, value: Laws["value"]): Fraction[] {
  const upToMark = (across: Fraction): Fraction => across.div(value("tape")).ceil().mul(value("tape"));
  const [width, selvedge, seam] = [value(`${which}.width`), value(`${which}.selvedge`), value("skirt.seam")];
  const usable = width.sub(selvedge.mul(2));
  if (which === "lining" && plan.recipe.lining?.kind === "hung") {
    // The round in breadths of its own; the last has one selvedge at most.
    let left = value("skirt.round");
    const between = usable.sub(seam.mul(2));
    const widths: Fraction[] = [];
    for (; left.compare(between) >= 0; left = left.sub(between)) widths.push(width);
    if (left.n === 0n) return widths;
    const last = upToMark(left.add(seam.mul(2)).add(selvedge));
    return [...widths, last.compare(width) < 0 ? last : width];
  }
  // A flat lining is sewn into the seams and seamed itself; an interlining lies between them and is lapped.
  const lap = which === "lining" ? seam.mul(2) : seam;
  return plan.breadths.flatMap((breadth) => {
    let left = coveredOf(which, breadth, plan, value);
    const widths: Fraction[] = [];
    for (; left.compare(usable) >= 0; left = left.sub(usable).add(lap)) {
      widths.push(width);
      if (left.equals(usable)) return widths;
    }
    return [...widths, upToMark(left)];
  });
}
