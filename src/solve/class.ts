/**
 * A class: for every pupil a sampler by this garment's own pleats, and what so many samplers take. What a teacher hands out
 * beside the cloth (edge strips, pins, wax) is common practice.
 */
import { less, plain, toCount } from "../quantity/quantity.ts";
import { type BiteRules, layBites } from "./bites.ts";
import type { Work } from "./context.ts";
import { fixed } from "./fixed.ts";
import type { PleatedSection, Sampler, Section, Stage } from "./plan.ts";

/** How often a pleat of each kind takes the depth of its fold. */
const FOLDS: Record<PleatedSection["set"], number> = { knife: 2, box: 4, "double-box": 8 };

/**
 * Works a class's sampler out: the gauged section nearest centre back in small, or, where nothing is gauged, the laid pleats
 * nearest centre back. Undefined where none is asked for, or, with an error said, where none can be cut.
 */
export function solveClass(work: Work, sections: readonly Section[]): Sampler | undefined {
  const { recipe, sheet, say } = work;
  if (!recipe.lesson) return undefined;
  const laid = sections.findLast(
    (section): section is PleatedSection =>
      section.half === "left" && section.set !== "flat" && section.set !== "gauged",
  );
  const isGauged = sheet.has("section.pleats");
  if (!isGauged && !laid) {
    say({
      code: "class-nothing",
      level: "error",
      path: "class",
      text: "nothing of this waist is gauged or laid in pleats: there is no sampler to sew",
      hint: "take the class out, or gauge or pleat a part of the waist",
    });
    return undefined;
  }
  if (!isGauged) takeFolds(work, laid as PleatedSection);
  const gaugedPitch = recipe.fullness.followRepeat ? "section.pitch" : "section.cloth / section.pleats";
  const pitch = isGauged ? gaugedPitch : "class.face + class.folds * class.fold";
  const face = isGauged ? "section.waist / section.pleats" : "class.face";
  sheet.set("class.wished", `max(2, round(class.sampler / (${face})))`);
  sheet.set("class.most", `floor((breadths.usable - 2 * class.ends) / (${pitch}))`);
  if (less(sheet.get("class.most"), plain(2))) return void sayTooWide(work);
  sheet.set("class.pleats", "min(class.wished, class.most)");
  sheet.set("class.finished", `class.pleats * (${face})`);
  if (isGauged) gaugedSampler(work);
  else pleatedSampler(work);
  sheet.set("class.width", "class.top + 2 * class.ends");
  sheet.set("class.across", "floor(breadths.usable / class.width)");
  if (less(sheet.get("class.pleats"), sheet.get("class.wished"))) sayNarrower(work);
  solveAmounts(work, isGauged);
  return {
    ...bitesOf(work, isGauged),
    ...(isGauged ? {} : { laid: laid as PleatedSection }),
    ...times(work),
  };
}

/** Cloth, marks, thread and stitches of a sampler gauged as the section nearest centre back is. */
function gaugedSampler({ recipe, sheet }: Work): void {
  const { followRepeat } = recipe.fullness;
  const top = followRepeat ? "class.pleats * section.pitch" : "class.pleats * section.cloth / section.pleats";
  // Down to a mark, so that it stays within one width of the cloth.
  sheet.set("class.top", followRepeat ? top : `floor(${top}, tape)`);
  sheet.set("class.bite", "class.top / (2 * class.pleats)");
  sheet.set("class.depth", "ceil(3 * balance.least, tape)");
  sheet.set("class.marks", "2 * class.pleats");
  sheet.set("class.bites", "class.marks * fullness.rows");
  const each = recipe.fullness.thread === "drawn-along" ? "class.finished" : "class.top";
  sheet.set("class.threadEach", `fullness.strands * (${each} + fullness.threadEnds)`);
  sheet.set("class.thread", "class.pupils * fullness.rows * class.threadEach");
  const pleats = recipe.attach.whip === "every-other" ? "ceil(class.pleats / 2)" : "class.pleats";
  sheet.set("class.stitches", `${pleats} + floor(${pleats} / 4)`);
}

/** The faces and folds that laid pleats have nearest centre back. */
function takeFolds({ sheet }: Work, { face, depth, set }: PleatedSection): void {
  sheet.choose("class.face", face, "the mean face of the pleats nearest centre back");
  sheet.choose("class.fold", depth, "the mean depth of the folds behind them");
  sheet.choose("class.folds", plain(FOLDS[set]), "folds of that depth in one pleat of this kind");
}

/** Cloth, marks and stitches of laid pleats. */
function pleatedSampler({ recipe, sheet }: Work): void {
  sheet.set("class.top", "class.pleats * (class.face + class.folds * class.fold)");
  // Deep enough to hang: eight inches, as the scrap trial is.
  sheet.set("class.depth", `2 * (${fixed(recipe, "4 in")})`);
  sheet.set("class.marks", "2 * class.pleats");
  sheet.set("class.stitches", "class.finished * 8 / (1 in) + 2 * class.pleats");
}

/** Cloth, thread and small things for all the pupils. */
function solveAmounts({ recipe, sheet }: Work, isGauged: boolean): void {
  sheet.set("class.tiers", "ceil(class.pupils / class.across)");
  sheet.set("class.edgeLength", "ceil(class.finished + 2 * class.ends, tape)");
  sheet.set("class.edgeDepth", "2 * attach.band.depth + 2 * attach.band.turning");
  sheet.set("class.edgeTiers", "ceil(class.pupils / floor(breadths.usable / class.edgeDepth))");
  sheet.set(
    "class.cloth",
    "ceil((class.tiers * class.depth + class.edgeTiers * class.edgeLength) / (1 - cloth.shrinkage), cloth.boughtBy)",
  );
  const needleful = `(whip.needleful - ${fixed(recipe, "6 in")})`;
  sheet.set("class.needlefuls", `ceil(class.stitches * (${fixed(recipe, "5/8 in")}) / ${needleful})`);
  sheet.set("class.sewing", "class.pupils * class.needlefuls * whip.needleful");
  sheet.set("class.tacking", "class.pupils * (class.width + class.edgeLength) * 3/2");
  sheet.set("class.sharps", `class.pupils * ${isGauged ? "needles.sharps" : "2"}`);
  sheet.set("class.betweens", "class.pupils");
  sheet.set("class.needles", "class.sharps + class.betweens");
  sheet.set("class.pinsEach", isGauged ? "4 + 8" : "4 + 2 * class.pleats");
  sheet.set("class.pins", "class.pupils * class.pinsEach");
  sheet.set("class.wax", "ceil(class.pupils / 4)");
  sheet.set("class.tacks", "(class.width + class.edgeLength) * 8 / (1 in)");
}

/** On tape marks, or half a pitch each where the pleats follow the cloth's lines. */
function bitesOf({ recipe, sheet }: Work, isGauged: boolean): Pick<Sampler, "bites" | "style"> {
  if (!isGauged) return {};
  if (recipe.fullness.followRepeat) {
    const marks = toCount(sheet.get("class.marks"));
    return { bites: Array.from({ length: marks }, () => sheet.get("class.bite")), style: "even" };
  }
  const rules: BiteRules = {
    tape: sheet.showing.tape,
    comfortable: sheet.get("fullness.comfortableBite"),
    short: sheet.get("fullness.shortBite"),
  };
  const { bites, style } = layBites(sheet.get("class.top"), toCount(sheet.get("class.pleats")), rules);
  return { bites, style };
}

/** The stages of one sampler that are counted, by the rates of the garment's own work. */
function times({ sheet }: Work): Pick<Sampler, "stages"> {
  const all = [
    { name: "turning down, tacking", rate: "running", count: "class.tacks" },
    { name: "marking", rate: "marking", count: "class.marks" },
    ...(sheet.has("class.bites") ? [{ name: "gauging", rate: "gauging", count: "class.bites" }] : []),
    sheet.has("class.bites")
      ? { name: "whipping", rate: "whip", count: "class.stitches" }
      : { name: "sewing to the edge", rate: "running", count: "class.stitches" },
  ];
  const time = (end: "low" | "high", { count, rate }: { count: string; rate: string }): string =>
    `${count} / rate.${rate}.${end}`;
  const sum = (end: "low" | "high"): string => all.map((stage) => time(end, stage)).join(" + ");
  sheet.set("class.low", sum("high"));
  sheet.set("class.high", sum("low"));
  sheet.set("class.clockLow", "class.low * (60 + 5) / 60");
  sheet.set("class.clockHigh", "class.high * (60 + 10) / 60");
  const stages = all.map(
    (stage): Stage => ({
      name: stage.name,
      low: sheet.evaluate(time("high", stage)),
      high: sheet.evaluate(time("low", stage)),
    }),
  );
  return { stages };
}

/** A sampler is cut from one width, without a seam: fewer pleats go into narrow cloth. */
function sayNarrower({ recipe, sheet, say }: Work): void {
  const isWritten = recipe.places.has("class.sampler");
  say({
    code: "sampler-narrower",
    level: isWritten ? "warning" : "note",
    path: isWritten ? "class.sampler" : recipe.places.has("class") ? "class" : "publish.class",
    text: `the sampler is ${sheet.shown("class.finished")} wide, not ${sheet.shown("class.sampler")}: ${sheet.shown("class.most")} pleats are all that one width of this cloth gives`,
    hint: "a sampler has no seam in it; take wider cloth for the class if it is to be wider",
  });
}

function sayTooWide({ sheet, say }: Work): void {
  say({
    code: "sampler-wide",
    level: "error",
    path: "class",
    text: `not two pleats of a sampler go into one width of this cloth: ${sheet.shown("breadths.usable")} between the selvedges`,
    hint: "take the class out of this recipe: its pleats are too deep for a sampler without a seam",
  });
}
