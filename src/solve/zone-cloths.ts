/** How much of the half round each zone takes, and its pleats. */

import { vulgar } from "../quantity/print.ts";
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
import { MOST_LAID } from "../recipe/limits.ts";
import type { Code } from "../recipe/messages/code.ts";
import type { Work } from "./context.ts";
import { clothOf, isPleatSet, meetingDepth, type PleatSet, TAKE_UP } from "./pleat.ts";
import type { Asked, SolvedZone } from "./zone.ts";
import { shownIn, size } from "./zone-waists.ts";

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

/** Gives every zone its cloth. Undefined, with errors said, when the cloth does not come out. */
export function clothsOf(
  work: Work,
  asked: readonly Asked[],
  waists: readonly Quantity[],
  planned: readonly Quantity[],
): readonly SolvedZone[] | undefined {
  const { sheet, say } = work;
  const print = shownIn(work);
  const half = sheet.evaluate("skirt.round / 2");
  // As planned: an edge that is made moves no cloth, and so no bite.
  const fullness = sheet.evaluate("skirt.round / waist.planned");
  const zero = sub(half, half);
  const takers = asked.filter(({ set, cloth }) => set === "gauged" && !cloth);
  let failed = false;
  const refuse = (code: Code, path: string, text: string, hint: string): void => {
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
  }
  if (failed) return undefined;

  const counted = asked.map((zone, i) =>
    isPleatSet(zone.set)
      ? countPleatsOf(work, zone as Asked & { set: PleatSet }, waists[i] as Quantity, planned[i] as Quantity)
      : undefined,
  );
  for (const pleats of counted) {
    if (!pleats || compare(pleats.count, plain(MOST_LAID)) <= 0) continue;
    refuse(
      "too-many-pleats",
      pleats.zone.path,
      `${vulgar(pleats.count.value)} pleats would be laid in this zone; at most ${MOST_LAID}`,
      "take a wider face, or fewer pleats",
    );
  }
  if (failed) return undefined;
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
      `${isNegative(left) ? "take" : "put"} ${print(size(left))} ${isNegative(left) ? "out of" : "into"} the pleats' depths, or leave one depth out to be worked out`,
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
