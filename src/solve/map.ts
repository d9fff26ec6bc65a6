/**
 * The maker's map: every place she needs, on the waist seam and along the flat cut top, with what is turned down there and
 * what stays unsewn (practice: the waist-to-cloth map). It is gathered from what the other solvers found; only the
 * turn-down at seams and ends of parts is worked out here, by the same curve.
 */
import { add, compare, div, equal, isZero, mul, plain, type Quantity, sub } from "../quantity/quantity.ts";
import { roundTo } from "../quantity/tape.ts";
import type { Work } from "./context.ts";
import type { Opening } from "./opening.ts";
import type { MapKind, MapPlace, Plan, PocketPlace, Section } from "./plan.ts";
import type { Ring } from "./ring.ts";
import { asPlanned, type SolvedZone, waistOfTop } from "./zones.ts";

/** What the map is drawn from. */
export interface Mapped {
  readonly ring: Ring;
  readonly zones: readonly SolvedZone[];
  readonly opening: Opening;
  readonly pocket: PocketPlace | undefined;
  readonly balance: Plan["balance"];
  readonly sections: readonly Section[];
  /** The turn-down at a share of the waist seam. */
  readonly turnDown: (share: Quantity) => Quantity;
}

type Found = Omit<MapPlace, "place" | "kinds"> & { readonly name: string; readonly kind: MapKind };

/** Every place, from centre front round by the wearer's left. What stands at one place is one entry, with all its names. */
export function solveMap(work: Work, mapped: Mapped): readonly MapPlace[] {
  const places: (Omit<MapPlace, "place"> & { names: string[]; kinds: MapKind[] })[] = [];
  for (const { name, kind, ...found } of placesOf(work, mapped)) {
    const known = places.find(
      ({ alongTop, turnDown }) => equal(alongTop, found.alongTop) && equal(turnDown, found.turnDown),
    );
    if (!known) places.push({ ...found, names: [name], kinds: [kind] });
    else {
      known.names.push(name);
      known.kinds.push(kind);
      if (found.unsewn) Object.assign(known, { unsewn: found.unsewn });
    }
  }
  return places
    .sort((a, b) => compare(a.alongTop, b.alongTop))
    .map(({ names, ...place }) => ({ place: names.join(": "), ...place }));
}

/** The places one by one; where two are one, the first of these gives its measures. */
function placesOf({ sheet }: Work, mapped: Mapped): Found[] {
  const { ring, zones, opening, pocket, balance, sections } = mapped;
  const waistSeam = sheet.get("waist.seam");
  const planned = sheet.get("waist.planned");
  const plannedZones = asPlanned(zones);
  /** A place that is fixed in the cloth: its turn-down goes by the waist as planned, as the opening's and the pocket's do. */
  const inCloth = (name: string, kind: MapKind, alongTop: Quantity): Found => {
    const turnDown = mapped.turnDown(div(waistOfTop(plannedZones, alongTop), planned));
    const turnDownMark = roundTo(turnDown, sheet.showing.tape);
    return { name, kind, waist: waistOfTop(zones, alongTop), alongTop, turnDown, turnDownMark };
  };
  const open: Found = {
    ...inCloth(
      opening.kind === "slit" ? "opening, a slit" : "opening, in the seam",
      "opening",
      opening.alongTop,
    ),
    waist: opening.waist,
    unsewn: { from: mul(planned, plain(0n)), to: sheet.get("placket.unsewn") },
  };
  const bag: Found[] = pocket
    ? [
        {
          ...inCloth("pocket, in the seam", "pocket", pocket.alongTop),
          unsewn: { from: sheet.get("pocket.from"), to: sheet.get("pocket.to") },
        },
      ]
    : [];
  const seams = ring.seams
    .filter((seam) => !(opening.kind === "seam" && equal(seam, opening.alongTop)))
    .filter((seam) => !(pocket && equal(seam, pocket.alongTop)))
    .map((seam) => inCloth(seamName(ring, seam, sheet.get("skirt.round")), "seam", seam));
  const stations = balance.map(
    ({ station, share, alongTop, turnDown, turnDownMark }): Found => ({
      name: station,
      kind: "station",
      waist: mul(waistSeam, share),
      alongTop,
      turnDown,
      turnDownMark,
    }),
  );
  const taken = (top: Quantity): boolean =>
    isZero(top) || [open, ...stations].some(({ alongTop }) => equal(alongTop, top));
  const ends = sections.flatMap((section, i): Found[] => {
    const before = sections.at(i - 1) as Section;
    const bothGauged = before.set === "gauged" && section.set === "gauged";
    if (before.half !== section.half || (bothGauged && taken(section.clothFrom))) return [];
    return [inCloth(`end of ${before.name}, start of ${section.name}`, "end", section.clothFrom)];
  });
  return [...stations, open, ...bag, ...seams, ...ends];
}

/** A seam by the two pieces it joins: "seam of breadth 1 and breadth 2". */
function seamName({ breadths }: Ring, seam: Quantity, round: Quantity): string {
  const at = (place: Quantity): boolean => equal(place, seam) || equal(place, add(seam, round));
  const from = breadths.find((breadth) => at(breadth.from) || equal(add(breadth.from, round), seam));
  const to = breadths.find((breadth) => at(breadth.to) || equal(sub(breadth.to, round), seam));
  if (breadths.length === 1) return `seam of the one ${breadths[0]?.name.replace(/ \d+$/, "") ?? "piece"}`;
  return `seam of ${to?.name ?? "the last breadth"} and ${from?.name ?? "the first"}`;
}
