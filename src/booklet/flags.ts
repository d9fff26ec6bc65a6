/** What a chapter may ask with {{#if is.…}}. */

import { bandEnds } from "../guide/band-ends.ts";
import { stripKinds } from "../guide/marking-strip.ts";
import {
  compare,
  div,
  fraction,
  isNegative,
  isWhole,
  isZero,
  mul,
  plain,
  type Quantity,
} from "../quantity/quantity.ts";
import type { Code } from "../recipe/messages/code.ts";
import type { Plan } from "../solve/plan.ts";
import { madeOf, otherMeasures } from "./as-made.ts";
import { isEstimated } from "./estimates.ts";
import { evidenceFlags } from "./evidence.ts";
import { gaugedToOpening, hasLonger, isFinest } from "./gauging-flags.ts";
import { liningFlags } from "./lining.ts";
import { paceWords } from "./made-hours.ts";
import { openingOnFace, seamsInPleats } from "./pleat-words.ts";
import { runFlags } from "./run.ts";
import { sheetFlags } from "./sheet-context.ts";
import { trimFlags } from "./trims.ts";

/** 4 lb in grams: under it a skirt is light enough for any band (common practice). */
const LIGHT = fraction("453.59237").mul(4);

/** Every flag, true or false, for this plan. */
export function flagsOf(plan: Plan) {
  const { recipe, gauged: sections, opening, balance } = plan;
  const { wearer, cloth, skirt, fullness, attach } = recipe;
  const quantity = (name: string): Quantity | undefined => plan.values.get(name)?.quantity;
  const first = sections[0];
  const equalSections = sections.every(
    (section) =>
      first !== undefined &&
      section.pleats === first.pleats &&
      compare(section.cloth, first.cloth) === 0 &&
      compare(section.waist, first.waist) === 0,
  );
  const longAndShort = sections.filter(({ style }) => style === "long-and-short").length;
  const weight = quantity("skirt.weight");
  const inAll = quantity("skirt.weightInAll") ?? weight;
  const sets = new Set(plan.sections.map(({ set }) => set));
  const record = madeOf(plan);
  const said = (code: Code): boolean => plan.messages.some((message) => message.code === code);
  const pleated = plan.sections.some(({ set }) => set !== "flat" && set !== "gauged");
  return {
    gauged: sections.length > 0,
    allGauged: sets.size === 1 && sets.has("gauged"),
    pleated,
    flat: sets.has("flat"),
    pleatsOnly: sections.length === 0,
    mixed: sections.length > 0 && sets.size > 1,
    quartered: sets.size === 1 && sections.length === 4 && equalSections,
    knife: sets.has("knife"),
    boxed: sets.has("box") || sets.has("double-box"),
    gaugedToOpening: gaugedToOpening(plan),
    slitInGauging: opening.kind === "slit" && gaugedToOpening(plan),
    backShare: fullness.backShare !== undefined,
    backShareStep: said("back-share-step"),
    finest: isFinest(plan),
    longerBites: plan.trialTable.some((row) => row.verdict === "keep-tight" && hasLonger(row, plan)),
    locked: sections.some(({ lines }) => lines !== undefined),
    bandTemplates: bandEnds(plan).length > 0,
    printedStrip: stripKinds(plan).length > 0,
    stacked: said("pleats-stack"),
    flatAndPleated: pleated && sets.has("flat"),
    oneLayer: plan.flatParts === "seam",
    tooThick: said("thick-at-seam"),
    pleatsOneLayer: plan.flatParts === "seam" && sections.length === 0,
    openingOnFace: openingOnFace(plan),
    seamsInPleats: seamsInPleats(plan).length > 0,
    centreSeamOnFace: seamsInPleats(plan).some(({ centred }) => centred),
    seamsOnFaces: seamsInPleats(plan).some(({ shows }) => shows),
    faced: skirt.hem.kind === "faced",
    turned: skirt.hem.kind === "turned",
    ownFacing: skirt.hem.kind === "faced" && skirt.hem.cloth === "own",
    facingPieced: exceeds(quantity("facing.pieces"), quantity("facing.strips")),
    braid: skirt.braid,
    stay: fullness.stay !== undefined && sections.length > 0,
    slit: opening.kind === "slit",
    seamOpening: opening.kind === "seam",
    longAndShort: longAndShort > 0,
    even: longAndShort < sections.length,
    mixedStyles: longAndShort > 0 && longAndShort < sections.length,
    trialSewn: fullness.trial !== undefined,
    estimatedOnly: fullness.trial === undefined,
    trialKept: plan.values.get("section.pleats")?.how.includes("trial.pitch") ?? false,
    unlikeSides: wearer.unlikeSides,
    hookSets: plan.hookSets.length > 0,
    longTails: plan.values.has("gauging.tail"),
    made: attach.made !== undefined,
    recorded: record !== undefined,
    recordedHem: record !== undefined && Object.keys({ ...record.offFloor, ...record.hung }).length > 0,
    recordedHours: (record?.hours.size ?? 0) > 0,
    recordedTrials: (record?.trials.length ?? 0) > 0,
    recordedSections: plan.sections.some(({ name }) => record?.sections.has(name)),
    recordedMeasures: record !== undefined && otherMeasures(plan, record).length > 0,
    recordedWords:
      recipe.recorded?.asMade?.entries.some(
        ({ changed, lessons, notes }) => changed || lessons || Object.keys(notes).length > 0,
      ) ?? false,
    photographed: (record?.photographs.length ?? 0) > 0,
    ownPace: paceWords(plan) !== undefined,
    wholeBreadth: exceeds(quantity("breadths.whole"), plain(0n)),
    severalBreadths: exceeds(quantity("breadths.whole"), plain(1n)),
    halfBreadth: !isWhole(quantity("breadths.count") as Quantity),
    metric: recipe.show === "cm",
    drawnAlong: fullness.thread === "drawn-along",
    fullLength: fullness.thread === "full-length",
    cotton: cloth.fibre === "cotton",
    linen: cloth.fibre === "linen",
    wool: cloth.fibre === "wool",
    silk: cloth.fibre === "silk",
    sheer: cloth.sheer,
    hoop: wearer.hoop !== undefined,
    weight: weight !== undefined,
    light: inAll !== undefined && inAll.value.compare(LIGHT) <= 0,
    heavy: plan.messages.some(({ code }) => code === "heavy"),
    year: recipe.year !== undefined,
    wearer: wearer.name !== undefined,
    over: wearer.over !== undefined,
    fibre: cloth.fibre !== undefined,
    shrinks: !isZero(cloth.shrinkage),
    ...runFlags(plan),
    onePiece: attach.band.from === "one-piece",
    facedBand: attach.band.from === "faced",
    waistband: attach.to === "waistband",
    bodiceEdge: attach.to === "bodice-edge",
    partBand: attach.to === "part-band",
    pointed: attach.waistEdge?.set === "edge",
    pointOver: attach.waistEdge?.set === "straight",
    banded: attach.to !== "bodice-edge",
    piped: attach.piping !== undefined,
    pipingJoined: plan.values.get("piping.strips")?.shown !== "1",
    everyOther: attach.whip === "every-other",
    hooksAllAlong: attach.placketHooks === "all-along",
    equalSections,
    doubledThread: compare(fullness.strands, plain(2n)) === 0,
    threeRows: fullness.rows >= 3,
    warnings: plan.messages.some(({ level }) => level === "warning"),
    remarks: plan.messages.some(({ level }) => level === "note"),
    thickness: cloth.thickness !== undefined,
    ease: !isZero(wearer.ease),
    negativeEase: isNegative(wearer.ease),
    petticoat: recipe.garment === "petticoat",
    ...trimFlags(plan),
    ...liningFlags(plan),
    oneWay: cloth.oneWay,
    dominant: cloth.repeat?.match === true && cloth.repeat.dominant !== undefined,
    dominantAtBack: isWhole(half(quantity("repeat.between"), quantity("breadths.count"))),
    cfSeam: plan.seams.some(({ station }) => isZero(station)),
    cbSeam: plan.seams.some(({ station, kind }) => kind !== "slit" && compare(station, plain("1/2")) === 0),
    estimatedLengths: isEstimated(plan),
    cost: plan.values.has("cost.low"),
    costCloth: plan.values.has("cost.cloth"),
    costNotions: plan.values.has("cost.notions"),
    costWork: plan.values.has("cost.workLow"),
    ...evidenceFlags(plan),
    ...sheetFlags(plan),
    remainder: sections.some(({ remainder }) => !isZero(remainder)),
    evenTurnDown: balance.every(
      ({ turnDown }) => balance[0] !== undefined && compare(turnDown, balance[0].turnDown) === 0,
    ),
  };
}

/** Half of all the repeats of the round: whole where centre back is a whole number of them away from centre front. */
const half = (between: Quantity | undefined, count: Quantity | undefined): Quantity =>
  between && count ? div(mul(between, count), plain(2n)) : plain(fraction(1n, 2n));

const exceeds = (a: Quantity | undefined, b: Quantity | undefined): boolean =>
  a !== undefined && b !== undefined && compare(a, b) > 0;
