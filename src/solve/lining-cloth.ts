/**
 * What lining and interlining take of their own cloth. A hung lining is as wide round as the garment, in the fewest
 * breadths of its own width, the last cut narrower. What is mounted covers every breadth, joined where it is narrower.
 */
import {
  add,
  compare,
  equal,
  isZero,
  less,
  plain,
  type Quantity,
  sub,
  toCount,
} from "../quantity/quantity.ts";
import type { Work } from "./context.ts";
import { layOnCloth, type Wanted } from "./layout.ts";
import { BACKINGS, type Backing } from "./lining.ts";
import { seamLoss } from "./match.ts";
import type { Breadth, Layout, LiningLayout } from "./plan.ts";
import { isAlong } from "./run.ts";

/** Lays each out on its own cloth. Undefined, with an error said, where one is too narrow to be used. */
export function solveLiningCloth(
  work: Work,
  breadths: readonly Breadth[],
): readonly LiningLayout[] | undefined {
  const { recipe, sheet } = work;
  const laid: LiningLayout[] = [];
  for (const which of BACKINGS) {
    const backing = recipe[which];
    if (!backing) continue;
    const hung = "kind" in backing && backing.kind === "hung";
    const pieces = hung ? hungPieces(work) : mountedPieces(work, which, breadths);
    if (!pieces) return undefined;
    sheet.choose(`${which}.pieces`, plain(pieces.length), "counted: pieces to cut of it");
    const layout = layOnCloth(sheet.get(`${which}.width`), pieces) as Layout;
    sheet.choose(`${which}.length`, layout.length, "the shortest layout found that overlaps nothing");
    sheet.set(`${which}.buy`, `ceil(${which}.length / (1 - ${which}.shrinkage), cloth.boughtBy)`);
    if (backing.weight) {
      const area = pieces.map(({ width, length }) => sheet.evaluate("w * l", { w: width, l: length }));
      sheet.choose(`${which}.area`, area.reduce(add), "the sum of width x length over its pieces");
      sheet.set(`${which}.weighs`, `${which}.weight * ${which}.area`);
    }
    const seams = hung
      ? `${which}.pieces * ${which}.cut * 8 / (1 in)${sheet.has("lining.hem") ? " + skirt.round * 6 / (1 in)" : ""}`
      : `(${which}.pieces - breadths.pieces) * ${which}.cut * 8 / (1 in) + 2 * breadths.pieces * ${which}.cut * 2 / (1 in)`;
    sheet.set(`stitches.${which}`, seams);
    laid.push({ which, layout });
  }
  return laid;
}

/** Whole breadths of the lining, and a last one cut to what is left of the round. */
function hungPieces({ sheet, say }: Work): Wanted[] | undefined {
  sheet.set("lining.finished", "lining.usable - 2 * skirt.seam");
  if (sheet.get("lining.finished").value.compare(0) <= 0) {
    tooNarrow({ sheet, say }, "lining");
    return undefined;
  }
  sheet.set("lining.breadths", "ceil(skirt.round / lining.finished)");
  sheet.set("lining.last", "skirt.round - (lining.breadths - 1) * lining.finished");
  const whole = sheet.get("lining.width");
  const cut = sheet.evaluate("ceil(lining.last + 2 * skirt.seam + lining.selvedge, tape)");
  const count = toCount(sheet.get("lining.breadths"));
  const last = less(sheet.get("lining.last"), sheet.get("lining.finished")) && less(cut, whole) ? cut : whole;
  const length = sheet.get("lining.cut");
  return Array.from({ length: count }, (_, i) =>
    i < count - 1 || last === whole
      ? { name: `breadth ${i + 1}`, width: whole, length }
      : { name: "narrower breadth", width: last, length },
  );
}

/** For every breadth of the cloth one piece, or several joined; a half breadth half as wide. */
function mountedPieces(work: Work, which: Backing, breadths: readonly Breadth[]): Wanted[] | undefined {
  const { recipe, sheet, say } = work;
  // A flat lining lies in the seams; an interlining is caught down beside them, and lapped where it is joined.
  const [each, join] = which === "lining" ? ["usable", "2 * skirt.seam"] : ["finished", "skirt.seam"];
  const usable = sheet.get(`${which}.usable`);
  const perJoin = sheet.evaluate(join as string);
  sheet.set(
    `${which}.each`,
    isAlong(recipe) && which === "lining" ? "breadths.finished + 2 * skirt.seam" : `breadths.${each}`,
  );
  if (!less(perJoin, usable)) {
    tooNarrow({ sheet, say }, which);
    return undefined;
  }
  sheet.set(`${which}.perBreadth`, `max(1, ceil((${which}.each - ${join}) / (${which}.usable - ${join})))`);
  const length = sheet.get(`${which}.cut`);
  const half = which === "lining" ? "breadths.usable / 2" : `breadths.usable / 2 - ${seamLoss(work.recipe)}`;
  const parts = breadths.flatMap((breadth) => {
    const target = breadth.whole ? sheet.get(`${which}.each`) : sheet.evaluate(half);
    return cover(target, usable, perJoin);
  });
  const most = sheet.get(`${which}.perBreadth`);
  const piece = isAlong(recipe) ? "length" : "breadth";
  if (less(plain(1n), most))
    say({
      code: `${which}-joined`,
      level: "note",
      path: `${which}.width`,
      text: `the ${which} is ${sheet.shown(`${which}.usable`)} wide inside its selvedges, and ${sheet.shown(`${which}.each`)} of every ${piece} is to be covered: it is joined from ${sheet.shown(`${which}.perBreadth`)} pieces a ${piece}`,
      hint: "wider cloth would spare the joins",
    });
  const whole = parts.filter((part) => part === usable);
  const rest = parts.filter((part) => part !== usable).toSorted((a, b) => compare(b, a));
  const name = whole.length > 0 ? "narrow strip" : "piece";
  return [
    ...whole.map((_, i) => ({
      name: `whole width ${i + 1}`,
      width: sheet.get(`${which}.width`),
      length,
    })),
    ...rest.map((part, i) => ({
      name: `${name} ${i + 1}`,
      width: sheet.evaluate("ceil(part, tape)", { part }),
      length,
    })),
  ];
}

/** Widths that, joined, cover `target`: whole ones and a rest; a rest as wide as a whole one is one. */
function cover(target: Quantity, usable: Quantity, join: Quantity): Quantity[] {
  const widths: Quantity[] = [];
  let rest = target;
  while (less(usable, rest)) {
    widths.push(usable);
    rest = add(sub(rest, usable), join);
  }
  if (isZero(rest)) return widths;
  return [...widths, equal(rest, usable) ? usable : rest];
}

function tooNarrow({ sheet, say }: Pick<Work, "sheet" | "say">, which: Backing): void {
  say({
    code: "no-width",
    level: "error",
    path: `${which}.width`,
    text: `a ${which} ${sheet.shown(`${which}.width`)} wide has no width left between its seams`,
    hint: "check its width and selvedge, and the seam allowance",
  });
}
