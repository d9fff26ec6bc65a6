/** Runs the solvers in the order of their needs: Recipe -> Plan. Pure: same recipe, same plan. */
import { add, mul, plain, type Quantity, sub } from "../quantity/quantity.ts";
import type { Message } from "../recipe/message.ts";
import type { Recipe } from "../recipe/recipe.ts";
import { solveAttach } from "./attach.ts";
import { curveOnce, finishedBy, solveBalance } from "./balance.ts";
import { useSpareBorder } from "./border.ts";
import { solveBreadths, solveWaist } from "./breadths.ts";
import { solveClass } from "./class.ts";
import { solveCloth } from "./cloth.ts";
import type { Work } from "./context.ts";
import { solveCost } from "./cost.ts";
import { solveEvidence } from "./evidence.ts";
import { solveHem, solvePlacket, solveThread, solveWhip } from "./finish.ts";
import { solveFlounces } from "./flounces.ts";
import { solveSections } from "./gauge.ts";
import { solveHookSets } from "./hook-sets.ts";
import { solveLengths } from "./lengths.ts";
import { limitBreadths, limitHem, limitPlacket, limitRows } from "./limits.ts";
import { solveLining } from "./lining.ts";
import { solveLiningCloth } from "./lining-cloth.ts";
import { solveMap } from "./map.ts";
import { type Opening, solveOpening } from "./opening.ts";
import type { Plan, SeamPlace } from "./plan.ts";
import { solvePocket } from "./pocket.ts";
import { otherWaists } from "./range.ts";
import { solveRedo } from "./redo.ts";
import { layRing, type Ring } from "./ring.ts";
import { sensitivityOf } from "./sensitivity.ts";
import { solveShade } from "./shaded.ts";
import { type Reading, Sheet } from "./sheet.ts";
import { solveNeedles, solveSewingThread, solveWhipThread } from "./thread.ts";
import { flounceList, solveCrossing, topOf, tuckList } from "./trims.ts";
import { underFold } from "./under-fold.ts";
import { solveShoulder } from "./waist-edge.ts";
import { warnOfSkirt } from "./warnings.ts";
import { solveWeight } from "./weight.ts";
import { solveWork } from "./work.ts";
import { type SolvedZone, solveZones, waistOfTop } from "./zones.ts";

export interface Solved {
  /** Absent when there was an error. */
  readonly plan?: Plan;
  /** Errors, warnings and notes, in the order of the work; places are filled in where the recipe has the key. */
  readonly messages: readonly Message[];
}

/**
 * Works a garment out. Every error that can be found is found, not only the first.
 *
 * @param reading units to print in instead of the recipe's; what is worked out stays the same
 */
export function solve(recipe: Recipe, reading?: Reading): Solved {
  const messages: Message[] = [];
  const sheet = new Sheet(recipe, reading);
  const work: Work = { recipe, sheet, say: (message) => void messages.push(placed(message, recipe)) };
  const failed = (): boolean => messages.some((message) => message.level === "error");

  solveWaist(work);
  solveBreadths(work);
  if (sheet.has("breadths.count")) limitBreadths(work);
  solveLengths(work);
  if (sheet.has("finished.front")) limitHem(work);
  solveLining(work);
  limitRows(work);
  if (failed()) return { messages };

  solveShade(work);
  const ring = layRing(work);
  const zones = solveZones(work);
  if (!zones) return { messages };
  const opening = underFold(work, zones, solveOpening(work, ring, zones));
  const plannedShare = plain(opening.planned.value.div(sheet.get("waist.planned").value));
  const turnDown = turnDownBy(work);
  sheet.choose("turnDown.opening", turnDown(plannedShare), "the turn-down curve at the opening");
  solveShoulder(work, zones, turnDown);
  solveCrossing(work);
  solvePlacket(work);
  limitPlacket(work);
  const pocket = solvePocket(work, ring, zones, opening, turnDown);
  const balance = solveBalance(work, zones);
  const curve = curveOnce(work, zones);
  warnOfSkirt(work);

  const sections = solveSections(work, zones, opening);
  solveHem(work);
  solveFlounces(work);
  useSpareBorder(work);
  solveAttach(work, opening);
  const hookSets = solveHookSets(work);
  const others = sections && sections.gauged.length > 0 ? otherWaists(work) : [];
  const layout = solveCloth(work, ring.breadths);
  const linings = solveLiningCloth(work, ring.breadths);
  if (!sections || !layout || !linings || failed()) return { messages };
  if (sections.gauged.length > 0) {
    solveThread(work);
    solveWhip(work);
    solveWhipThread(work);
  }
  solveWeight(work);
  const stages = solveWork(work);
  solveSewingThread(work);
  solveNeedles(work);
  solveRedo(work);
  solveCost(work);
  const sampler = solveClass(work, sections.sections);
  solveEvidence(work);
  if (failed()) return { messages };

  const plan: Plan = {
    recipe: reading ? { ...recipe, ...reading } : recipe,
    values: sheet.values,
    balance,
    get curve() {
      return curve();
    },
    ...sections,
    rows: sections.gauged.length > 0 ? rowsOf(work) : [],
    sensitivity: sections.gauged.length > 0 ? sensitivityOf(work, sections.gauged) : [],
    breadths: ring.breadths,
    seams: seamPlaces(work, ring, zones, opening),
    opening: {
      share: shareOf(work, opening.waist),
      alongTop: opening.alongTop,
      station: opening.station,
      kind: opening.kind,
      ...(opening.under ? { under: opening.under } : {}),
    },
    tucks: tuckList(work),
    flounces: flounceList(work),
    ...(pocket ? { pocket } : {}),
    map: solveMap(work, {
      ring,
      zones,
      opening,
      pocket,
      balance,
      sections: sections.sections,
      turnDown,
    }),
    otherWaists: others,
    hookSets,
    layout,
    linings,
    stages,
    ...(sampler ? { sampler } : {}),
    messages,
  };
  return { plan, messages };
}

const shareOf = ({ sheet }: Work, waist: Quantity): Quantity =>
  plain(waist.value.div(sheet.get("waist.seam").value));

/** The turn-down at any share of the waist seam. Needs the lengths. */
function turnDownBy(work: Work): (share: Quantity) => Quantity {
  const finishedAt = finishedBy(work);
  const top = work.sheet.get(topOf(work.recipe));
  return (share) => sub(top, finishedAt(share));
}

function rowsOf({ recipe, sheet }: Work): Quantity[] {
  const first = sheet.get("fullness.firstRow");
  const between = sheet.get("fullness.betweenRows");
  return Array.from({ length: recipe.fullness.rows }, (_, i) => add(first, mul(between, plain(i))));
}

function seamPlaces(work: Work, ring: Ring, zones: readonly SolvedZone[], opening: Opening): SeamPlace[] {
  const seams = ring.seams.map((alongTop): SeamPlace => {
    const waist = waistOfTop(zones, alongTop);
    const isOpening = opening.kind === "seam" && alongTop.value.equals(opening.alongTop.value);
    return { station: shareOf(work, waist), alongTop, kind: isOpening ? "placket" : "seam" };
  });
  if (opening.kind === "slit") {
    seams.push({ station: shareOf(work, opening.waist), alongTop: opening.alongTop, kind: "slit" });
  }
  return seams.sort((a, b) => a.alongTop.value.compare(b.alongTop.value));
}

/** Fills in the place of a message from the recipe's key it is about, or the nearest block above it. */
function placed(message: Message, recipe: Recipe): Message {
  if (message.place) return message;
  for (
    let path = message.path;
    path;
    path = path.includes(".") ? path.slice(0, path.lastIndexOf(".")) : undefined
  ) {
    const place = recipe.places.get(path);
    if (place) return { ...message, place };
  }
  const title = recipe.places.get("title");
  return title ? { ...message, place: title } : message;
}
