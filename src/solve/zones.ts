/**
 * Zones: how fullness is set to the waist, one half from centre front to centre back, mirrored on the other (trade:
 * zones). Sums are exact: over a half the zones' waists make half the waist seam and their cloths half the round.
 */

import { printExactly } from "../quantity/print.ts";
import {
  add,
  compare,
  div,
  isNegative,
  isWhole,
  isZero,
  less,
  mul,
  plain,
  type Quantity,
  sub,
} from "../quantity/quantity.ts";
import { nearestWhole } from "../quantity/tape.ts";
import type { Zone } from "../recipe/recipe.ts";
import type { Work } from "./context.ts";
import { clothOf, isPleatSet, meetingDepth, type PleatSet, TAKE_UP, type ZoneSet } from "./pleat.ts";

export { topOfWaist, waistOfTop } from "./along.ts";

export interface SolvedZone {
  readonly set: ZoneSet;
  readonly waist: Quantity;
  /** The waist before the edge was made. */
  readonly planned: Quantity;
  readonly cloth: Quantity;
  readonly pleats?: {
    readonly count: Quantity;
    readonly face: Quantity;
    readonly depth: Quantity;
    readonly towards: "front" | "back";
  };
}

/** A zone as asked for: a recipe's own, or one that a method stands for. `even` takes cloth in proportion to its waist. */
interface Asked extends Zone {
  readonly path: string;
  readonly even?: boolean;
}

function askedZones({ recipe, sheet }: Work): readonly Asked[] {
  const { zones, method } = recipe.fullness;
  if (zones) return zones.map((zone, i) => ({ ...zone, path: `fullness.zones.${i}` }));
  const path = "fullness.method";
  switch (method) {
    case "pleated":
      return [{ set: "knife", towards: "back", path }];
    case "flat-front-gauged":
      return [
        { set: "flat", waist: sheet.evaluate("fullness.flatFront / 2"), path: "fullness.flat-front" },
        { set: "gauged", path },
      ];
    case "pleated-gauged-back":
      return [
        { set: "knife", towards: "back", even: true, path },
        { set: "gauged", waist: sheet.evaluate("fullness.gaugedBack / 2"), path: "fullness.gauged-back" },
      ];
    default:
      return [{ set: "gauged", path }];
  }
}

/** Works the zones out. Undefined, with errors said, when they do not add up. */
export function solveZones(work: Work): readonly SolvedZone[] | undefined {
  const { recipe, sheet } = work;
  const asked = askedZones(work);
  const planned = waistsOf(work, asked, sheet.evaluate("waist.planned / 2"), false);
  if (!planned) return undefined;
  const zones = clothsOf(work, asked, planned, planned);
  if (!zones || !recipe.attach.made) return zones;
  const made = waistsOf(work, asked, sheet.evaluate("waist.seam / 2"), true);
  return made && remade(zones, made, () => clothsOf(work, asked, made, planned));
}

/** The zones on the made edge: cloth stays where it is, faces and depths follow. A flat part that changed moves the cloth. */
function remade(
  zones: readonly SolvedZone[],
  made: readonly Quantity[],
  anew: () => readonly SolvedZone[] | undefined,
): readonly SolvedZone[] | undefined {
  const moved = zones.some(
    ({ set, waist }, i) => set === "flat" && compare(waist, made[i] as Quantity) !== 0,
  );
  if (moved) return anew();
  return zones.map((zone, i): SolvedZone => {
    const waist = made[i] as Quantity;
    if (!zone.pleats || !isPleatSet(zone.set)) return { ...zone, waist };
    const { count, towards } = zone.pleats;
    const depth = div(sub(zone.cloth, waist), mul(count, plain(TAKE_UP[zone.set])));
    return { ...zone, waist, pleats: { count, towards, face: div(waist, count), depth } };
  });
}

const shownIn =
  ({ sheet }: Work) =>
  (q: Quantity): string =>
    printExactly(q, sheet.showing.show);

/** Every zone's waist: one may leave it out and takes the rest. `scaled`: the made edge is shared in proportion when none does. */
function waistsOf(
  work: Work,
  asked: readonly Asked[],
  half: Quantity,
  scaled: boolean,
): Quantity[] | undefined {
  const { say } = work;
  const print = shownIn(work);
  const open = asked.filter(({ waist }) => !waist);
  if (open.length > 1) {
    for (const zone of open.slice(1)) {
      say({
        code: "waist-twice-open",
        level: "error",
        path: zone.path,
        text: "a second zone leaves its waist out: only one can take the rest",
        hint: "give waist to all zones but one",
      });
    }
    return undefined;
  }
  const given = asked.flatMap(({ waist }) => (waist ? [waist] : []));
  const sum = given.reduce(add, sub(half, half));
  const rest = sub(half, sum);
  if (open.length === 1) {
    if (isNegative(rest) || isZero(rest)) {
      say({
        code: "zones-too-long",
        level: "error",
        path: open[0]?.path ?? "fullness",
        text: `the other zones take ${print(sum)} of the half waist seam of ${print(half)}, and leave nothing for this one`,
        hint: "make a zone shorter: the zones are those of one half",
      });
      return undefined;
    }
    return asked.map(({ waist }) => waist ?? rest);
  }
  if (isZero(rest)) return given;
  if (scaled) return given.map((waist) => mul(waist, div(half, sum)));
  say({
    code: "zones-do-not-add-up",
    level: "error",
    path: "fullness.zones",
    text: `the zones of one half make ${print(sum)}, and half the waist seam is ${print(half)}`,
    hint: `${isNegative(rest) ? "take away" : "add"} ${print(plainAbs(rest))}, or leave one zone's waist out to take the rest`,
  });
  return undefined;
}

const plainAbs = (q: Quantity): Quantity => (isNegative(q) ? mul(q, plain(-1n)) : q);

interface Counted {
  readonly zone: Asked & { set: PleatSet };
  readonly waist: Quantity;
  readonly count: Quantity;
  readonly face: Quantity;
}

/** n = waist / wished face, nearest whole, at least 1; v = waist / n exactly. A given count is obeyed. */
function countPleatsOf(
  work: Work,
  zone: Asked & { set: PleatSet },
  waist: Quantity,
  planned: Quantity,
): Counted {
  const wished = zone.face ?? work.sheet.get("fullness.wishedFace");
  const nearest = plain(nearestWhole(div(planned, wished).value));
  const count = zone.count ?? (compare(nearest, plain(1n)) < 0 ? plain(1n) : nearest);
  return { zone, waist, count, face: div(waist, count) };
}

function clothsOf(
  work: Work,
  asked: readonly Asked[],
  waists: readonly Quantity[],
  planned: readonly Quantity[],
): readonly SolvedZone[] | undefined {
  const { sheet, say } = work;
  const print = shownIn(work);
  const half = sheet.evaluate("skirt.round / 2");
  const fullness = sheet.evaluate("skirt.round / waist.seam");
  const zero = sub(half, half);
  const takers = asked.filter(({ set, cloth }) => set === "gauged" && !cloth);
  let failed = false;
  const refuse = (code: string, path: string, text: string, hint: string): void => {
    failed = true;
    say({ code, level: "error", path, text, hint });
  };
  for (const zone of takers.slice(1)) {
    refuse(
      "cloth-twice-open",
      zone.path,
      "a second gauged zone leaves its cloth out: only one can take the cloth that is left",
      "give cloth to all gauged zones but one",
    );
  }
  for (const zone of asked) {
    const loose = (["face", "depth", "count"] as const).filter((key) => zone[key] && !isPleatSet(zone.set));
    if (loose.length > 0)
      refuse(
        "not-of-this-zone",
        zone.path,
        `${loose.join(" and ")} mean nothing in a ${zone.set} zone`,
        "leave them out, or set the zone in pleats",
      );
    if (zone.cloth && zone.set !== "gauged")
      refuse(
        "not-of-this-zone",
        zone.path,
        `cloth cannot be given for a ${zone.set} zone`,
        zone.set === "flat" ? "a flat zone takes as much cloth as waist" : "give its depth instead",
      );
    if (zone.count && !isWhole(zone.count) && zone !== asked[0] && zone !== asked.at(-1))
      refuse(
        "half-pleat-in-between",
        zone.path,
        "a half pleat can only stand astride a centre line",
        "give a whole count, or put the zone first or last",
      );
    if (zone.count && !isWhole(mul(zone.count, plain(2n))))
      refuse(
        "count-not-whole",
        zone.path,
        "pleats come whole, or with one half astride the centre",
        "write a whole count, or n 1/2",
      );
    if (zone.count && compare(zone.count, plain(0n)) <= 0)
      refuse(
        "count-not-whole",
        zone.path,
        "a pleated zone has at least half a pleat",
        "write count: 1 or more",
      );
  }
  if (failed) return undefined;

  const counted = asked.map((zone, i) =>
    isPleatSet(zone.set)
      ? countPleatsOf(work, zone as Asked & { set: PleatSet }, waists[i] as Quantity, planned[i] as Quantity)
      : undefined,
  );
  const depths = counted.map((pleats): Quantity | undefined => {
    if (!pleats) return undefined;
    const { zone, face } = pleats;
    if (zone.depth) return zone.depth;
    if (zone.even) return div(mul(face, sub(fullness, plain(1n))), plain(TAKE_UP[zone.set]));
    return takers.length > 0 ? meetingDepth(zone.set, face) : undefined;
  });
  const fixed = asked.map((zone, i): Quantity | undefined => {
    const pleats = counted[i];
    const depth = depths[i];
    if (pleats) return depth && clothOf(pleats.zone.set, pleats.waist, pleats.count, depth);
    return zone.set === "flat" ? (waists[i] as Quantity) : zone.cloth;
  });
  const used = fixed.reduce<Quantity>((sum, cloth) => (cloth ? add(sum, cloth) : sum), zero);
  const left = sub(half, used);

  // No gauged zone takes the rest: one depth, from the cloth, for the pleats that give none.
  const open = counted.flatMap((pleats, i) => (pleats && !depths[i] ? [pleats] : []));
  let common: Quantity | undefined;
  if (open.length > 0) {
    const hidden = open.reduce((rest, { waist }) => sub(rest, waist), left);
    const folds = open.map(({ zone, count }) => mul(count, plain(TAKE_UP[zone.set]))).reduce(add);
    common = div(hidden, folds);
    if (compare(common, zero) <= 0) {
      refuse(
        "no-cloth-for-pleats",
        open[0]?.zone.path ?? "fullness",
        `the other zones leave ${print(left)} of the half round, not more than the waist of the pleats`,
        "take more breadths, or less depth elsewhere",
      );
      return undefined;
    }
  } else if (takers.length === 0 && !isZero(left)) {
    refuse(
      "cloth-does-not-add-up",
      "fullness.zones",
      `the zones of one half use ${print(used)} of cloth, and half the round is ${print(half)}`,
      `${isNegative(left) ? "take" : "put"} ${print(plainAbs(left))} ${isNegative(left) ? "out of" : "into"} the pleats' depths, or leave one depth out to be worked out`,
    );
    return undefined;
  }

  const solved = asked.map((zone, i): SolvedZone => {
    const waist = waists[i] as Quantity;
    const base = { set: zone.set, waist, planned: planned[i] as Quantity };
    const pleats = counted[i];
    if (!pleats) return { ...base, cloth: fixed[i] ?? left };
    const depth = depths[i] ?? (common as Quantity);
    return {
      ...base,
      cloth: clothOf(pleats.zone.set, waist, pleats.count, depth),
      pleats: { count: pleats.count, face: pleats.face, depth, towards: zone.towards ?? "back" },
    };
  });
  solved.forEach((zone, i) => {
    if (zone.set !== "gauged" || !less(zone.cloth, zone.waist)) return;
    refuse(
      "gauged-too-little",
      asked[i]?.path ?? "fullness",
      `the gauged zone gets ${print(zone.cloth)} of cloth for ${print(zone.waist)} of waist`,
      "take more breadths, or shallower or fewer pleats in the other zones",
    );
  });
  return failed ? undefined : solved;
}
