/** The pocket: which seam it goes into, where its slit lies from the cut top, and its pieces (practice: pocket). */
import { abs, div, fraction, less, min, plain, type Quantity, sub } from "../quantity/quantity.ts";
import type { Work } from "./context.ts";
import type { Wanted } from "./layout.ts";
import type { Opening } from "./opening.ts";
import type { PocketPlace } from "./plan.ts";
import type { Ring } from "./ring.ts";
import { topOf } from "./trims.ts";
import { asPlanned, type SolvedZone, waistOfTop } from "./zones.ts";

/** How far from a side, as a share of the waist seam, a pocket still serves. This project's own choice. */
const NEAR_SIDE = plain(fraction(1n, 8n));
const SIDES = [
  { side: "right", share: plain(fraction(3n, 4n)) },
  { side: "left", share: plain(fraction(1n, 4n)) },
] as const;

/** The shorter way round between two places of a ring. */
function apart(a: Quantity, b: Quantity, ring: Quantity): Quantity {
  const straight = abs(sub(a, b));
  return min(straight, sub(ring, straight));
}

/**
 * The pocket's seam: the one nearest the wearer's right side within an eighth of the waist seam, not the opening's and
 * at least a bag's width from it; else the same on the left; of two equally near the one nearer the front. No such
 * seam is an error. It is sewn before the edge is made, and so goes by the waist as planned.
 *
 * @param turnDown the turn-down at a share of the waist seam
 */
export function solvePocket(
  work: Work,
  ring: Ring,
  zones: readonly SolvedZone[],
  opening: Opening,
  turnDown: (share: Quantity) => Quantity,
): PocketPlace | undefined {
  const { recipe, sheet, say } = work;
  if (!recipe.skirt.pocket) return undefined;
  const round = sheet.get("skirt.round");
  const planned = sheet.get("waist.planned");
  const plannedZones = asPlanned(zones);
  const width = sheet.get("skirt.pocketWidth");
  const free = ring.seams
    .filter((alongTop) => !less(apart(alongTop, opening.alongTop, round), width))
    .map((alongTop) => {
      return { alongTop, share: div(waistOfTop(plannedZones, alongTop), planned) };
    });
  for (const { side, share } of SIDES) {
    const gap = (seam: (typeof free)[number]): Quantity => abs(sub(seam.share, share));
    const forward = (seam: (typeof free)[number]): Quantity => abs(sub(seam.share, plain(fraction(1n, 2n))));
    const [nearest] = free
      .filter((seam) => !less(NEAR_SIDE, gap(seam)))
      .sort((a, b) => gap(a).value.compare(gap(b).value) || forward(b).value.compare(forward(a).value));
    if (!nearest) continue;
    const exact = gap(nearest).value.n === 0n;
    sheet.choose(
      "pocket.fromFront",
      min(nearest.alongTop, sub(round, nearest.alongTop)),
      `the free seam nearest the wearer's ${side} side`,
    );
    sheet.choose("turnDown.pocket", turnDown(nearest.share), "the turn-down curve at the pocket");
    solveSizes(work);
    const waist = waistOfTop(zones, nearest.alongTop);
    const station = exact ? `the ${side} side` : `the seam nearest the ${side} side`;
    return {
      side,
      station,
      waist,
      share: div(waist, sheet.get("waist.seam")),
      alongTop: nearest.alongTop,
    };
  }
  say({
    code: "no-pocket-seam",
    level: "error",
    path: "skirt.pocket",
    text: `no free seam stands within an eighth of the waist seam of either side (${sheet.shown("skirt.pocketWidth")} from the opening at least) for the pocket to go into`,
    hint: "take another number of breadths, or the other centre-front, so that a seam stands at a side; or write pocket: false and hang a pocket beneath on a tape of its own",
  });
  return undefined;
}

function solveSizes({ recipe, sheet, say }: Work): void {
  sheet.set("pocket.from", "turnDown.pocket + skirt.pocketBelow");
  sheet.set("pocket.to", "pocket.from + skirt.pocketSlit");
  sheet.set("pocket.foot", `${topOf(recipe)} - pocket.to`);
  sheet.set("pocket.bagTop", "pocket.from - skirt.pocketFacing / 2");
  sheet.set("pocket.bagLength", "skirt.pocketLength + 2 * skirt.seam");
  sheet.set("pocket.bagWidth", "skirt.pocketWidth + 2 * skirt.seam");
  sheet.set("pocket.facingLength", "skirt.pocketSlit + skirt.pocketFacing");
  sheet.set("pocket.facingWidth", "skirt.pocketFacing + 2 * skirt.seam");
  sheet.set("pocket.strapRun", "pocket.bagTop + skirt.seam - turnDown.pocket");
  sheet.set("pocket.strap", "pocket.strapRun + 2 * skirt.seam");
  sheet.set("stitches.pocket", "4 * (pocket.bagLength + pocket.facingLength) * 8 / (1 in)");
  const hangs = sheet.evaluate(`${topOf(recipe)} - pocket.bagTop - pocket.bagLength`);
  if (hangs.value.compare(0) < 0) {
    say({
      code: "pocket-too-long",
      level: "error",
      path: "skirt.pocket",
      text: `the ${recipe.garment} is too short for a pocket: its bag would hang below the hem`,
      hint: "write pocket: false",
    });
  }
  if (recipe.skirt.tucks && less(sheet.evaluate("pocket.foot - skirt.tucks.clear"), sheet.get("tucks.top"))) {
    say({
      code: "tucks-over-pocket",
      level: "error",
      path: "skirt.tucks",
      text: `the highest tuck would be sewn ${sheet.shown("tucks.top")} above the hem, and the pocket's slit comes down to ${sheet.shown("pocket.foot")}: it must stay ${sheet.shown("skirt.tucks.clear")} clear, since a tuck would sew the slit up`,
      hint: "take fewer or shallower tucks, or write pocket: false",
    });
  }
  if (
    recipe.skirt.flounces &&
    less(sheet.evaluate("pocket.foot - skirt.flounces.clear"), sheet.get("flounces.top"))
  ) {
    say({
      code: "flounces-over-pocket",
      level: "warning",
      path: "skirt.flounces",
      text: `the highest flounce is sewn ${sheet.shown("flounces.top")} above the hem, and the pocket's slit comes down to ${sheet.shown("pocket.foot")}: it should stay ${sheet.shown("skirt.flounces.clear")} clear`,
      hint: "take fewer or shallower flounces; or leave a heading that passes over the slit unsewn there, so that the hand can pass",
    });
  }
}

/** Bag and facings as they lie on the cloth, their length along it. */
export function pocketPieces({ sheet }: Pick<Work, "sheet">): Wanted[] {
  if (!sheet.has("pocket.bagLength")) return [];
  const two = (name: string, size: string): Wanted[] =>
    [1, 2].map((n) => ({
      name: `${name} ${n}`,
      width: sheet.get(`pocket.${size}Width`),
      length: sheet.get(`pocket.${size}Length`),
    }));
  return [...two("pocket bag", "bag"), ...two("pocket facing", "facing")];
}
