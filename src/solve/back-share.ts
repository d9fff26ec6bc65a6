/**
 * Fullness thrown to the back as one number: the gauged zone that the side falls into is parted there, and its cloth shared
 * so that the wished share of it lies behind the sides. The bites stay the same all round and stand closer behind (ours),
 * so that nothing steps at the side.
 */

import { decimal } from "../quantity/print.ts";
import { div, isNegative, isZero, less, mul, plain, type Quantity, sub } from "../quantity/quantity.ts";
import { roundTo } from "../quantity/tape.ts";
import type { Code } from "../recipe/messages/code.ts";
import type { Work } from "./context.ts";
import type { SolvedZone } from "./zone.ts";
import { shownIn } from "./zone-waists.ts";

const PATH = "fullness.back-share";
const ONE = plain(1n);

/** The zones with the gauged one parted at the side. Undefined, with an error said, where it cannot be. Goes by the waist as planned. */
export function throwBack(work: Work, zones: readonly SolvedZone[]): readonly SolvedZone[] | undefined {
  const { recipe, sheet, say } = work;
  const share = recipe.fullness.backShare;
  if (!share) return zones;
  const refuse = (code: Code, text: string, hint: string): undefined => {
    say({ code, level: "error", path: PATH, text, hint });
    return undefined;
  };
  const gauged = zones.filter(({ set }) => set === "gauged");
  if (gauged.length === 0)
    return refuse(
      "back-share-ungauged",
      "back-share is given, and nothing is gauged: it shares out gauged cloth",
      "gauge a part of the waist, or throw the fullness back by deeper pleats in a zone behind",
    );
  const quarter = sheet.evaluate("waist.planned / 4");
  let start = sub(quarter, quarter);
  for (const [i, zone] of zones.entries()) {
    const front = sub(quarter, start);
    if (zone.set === "gauged" && less(start, quarter) && less(front, zone.planned)) {
      if (gauged.length > 1 || recipe.fullness.zones?.some(({ cloth }) => cloth)) break;
      const parts = part(work, zone, front, share);
      return parts && [...zones.slice(0, i), ...parts, ...zones.slice(i + 1)];
    }
    start = sub(start, mul(zone.planned, plain(-1n)));
  }
  return refuse(
    "back-share-one-zone",
    gauged.length > 1 || recipe.fullness.zones?.some(({ cloth }) => cloth)
      ? "back-share is given, and gauged zones share their cloth already"
      : "back-share is given, and the gauged part does not reach past the side both ways: nothing is there to be shared",
    "give back-share with one gauged zone that runs past the side; or leave it out, and give the zones their own cloth",
  );
}

/** The gauged zone parted `front` from its beginning, in waist as planned. */
function part(
  work: Work,
  zone: SolvedZone,
  front: Quantity,
  share: Quantity,
): readonly [SolvedZone, SolvedZone] | undefined {
  const { sheet, say } = work;
  const waistShare = div(front, zone.planned);
  const even = sub(ONE, waistShare);
  sheet.choose("backShare.even", even, "the share of the gauged waist that lies behind the sides");
  if (less(share, even)) {
    const atLeast = `${decimal(roundTo(even, plain("1/1000"), "up").value.mul(100), 1)} %`;
    say({
      code: "back-share-less",
      level: "error",
      path: PATH,
      text: `${sheet.shown("backShare.even")} of the gauged waist lies behind the sides, and back-share would put less cloth there, ${sheet.shown("fullness.backShare")}: that throws fullness to the front`,
      hint: `write ${atLeast} or more, or leave back-share out for an even fullness`,
    });
    return undefined;
  }
  sheet.choose("backShare.cloth", zone.cloth, "the gauged cloth of one half");
  sheet.choose("backShare.waist", zone.planned, "the gauged waist of one half, as planned");
  const behind = sheet.set("backShare.behind", "fullness.backShare * backShare.cloth");
  const before = sheet.set("backShare.before", "backShare.cloth - backShare.behind");
  const parts = [
    { ...zone, parted: "before", waist: mul(zone.waist, waistShare), planned: front, cloth: before },
    {
      ...zone,
      parted: "behind",
      waist: mul(zone.waist, even),
      planned: sub(zone.planned, front),
      cloth: behind,
    },
  ] as const;
  const [short] = parts;
  const left = sub(short.cloth, short.waist);
  if (isNegative(left) || isZero(left)) {
    say({
      code: "gauged-too-little",
      level: "error",
      path: PATH,
      text: `back-share leaves ${sheet.shown("backShare.before")} of cloth before the side for ${shownIn(work)(short.waist)} of waist: nothing is gauged there`,
      hint: "write a smaller back-share, or take more breadths",
    });
    return undefined;
  }
  return parts;
}
