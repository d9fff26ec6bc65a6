/** Warnings from common practice: said with their reason, never a refusal. Survivals disagree with every rule. */

import { decimal, printOnTape } from "../quantity/print.ts";
import { compare, div, fraction, inches, isWhole, less, mul, plain } from "../quantity/quantity.ts";
import type { Message } from "../recipe/message.ts";
import type { Code } from "../recipe/messages/code.ts";
import type { Work } from "./context.ts";
import { closes } from "./gauging.ts";
import { offerOfMatch } from "./match.ts";
import type { GaugedSection, Section } from "./plan.ts";
import { isPleatSet, PLEAT_NAMES, stacks } from "./pleat.ts";
import { isAlong, repeatRound, roundRepeatOf } from "./run.ts";

const warning = (code: Code, path: string, text: string, hint: string): Message => ({
  code,
  level: "warning",
  path,
  text,
  hint,
});

/** Hem and hoop, repeats and seams, date and straight breadths, sheer cloth. Needs lengths and breadths. */
export function warnOfSkirt({ recipe, sheet, say }: Work): void {
  const round = sheet.get("skirt.round");
  const { hoop } = recipe.wearer;
  if (hoop) {
    const text = `the hem is ${sheet.shown("skirt.round")} round and the hoop ${sheet.shown("wearer.hoop.round")}`;
    if (less(round, hoop.round))
      say(
        warning(
          "hem-under-hoop",
          "wearer.hoop.round",
          `${text}: the ${recipe.garment} will not go over it`,
          "take more breadths or a smaller hoop",
        ),
      );
    else if (less(round, mul(hoop.round, plain(fraction(6n, 5n))))) {
      say(
        warning(
          "hem-near-hoop",
          "wearer.hoop.round",
          `${text}: under a fifth more, steels print through and steps are hobbled`,
          "take another breadth, or a smaller hoop",
        ),
      );
    }
  }
  const repeat = roundRepeatOf(recipe);
  if (repeat && !isWhole(div(sheet.get("breadths.finished"), repeat))) {
    say(
      warning(
        "seams-miss-repeat",
        repeatRound(recipe),
        `a ${isAlong(recipe) ? "length" : "breadth"} is ${sheet.shown("breadths.finished")} between its seams, not a whole number of repeats of ${sheet.shown(repeatRound(recipe))}: the seams cannot all meet on the pattern`,
        offerOfMatch({ recipe, sheet }) ?? "let the pattern break at the back",
      ),
    );
  }
  if (recipe.year !== undefined && recipe.year >= 1863) {
    say({
      code: "gores",
      level: "note",
      path: "year",
      text: "from about 1863 skirts are gored; this program cuts straight breadths only",
    });
  }
  const stations = ["front", "left", "right", "back"].map((station) => sheet.get(`turnDown.${station}`));
  const uneven = stations.some((turnDown) => compare(turnDown, stations[0] as typeof turnDown) !== 0);
  if (recipe.cloth.sheer && uneven) {
    say(
      warning(
        "sheer-turn-down",
        "cloth.sheer",
        "in sheer cloth an uneven turn-down shows as a shadow",
        "after the third fitting trim it even and overcast it, keeping the thread-traced line; this is the one exception to not trimming",
      ),
    );
  }
}

/** Fullness and pitch of each kind of section, and an edge that came out too short for its bites. */
export function warnOfSections({ sheet, say, recipe }: Work, sections: readonly GaugedSection[]): void {
  const seen = new Set<string>();
  const packed = sheet.get("gauging.packed");
  for (const section of sections) {
    const key = `${section.cloth.value.toFraction()} ${section.waist.value.toFraction()}`;
    if (seen.has(key)) continue;
    seen.add(key);
    const ratio = div(section.cloth, section.waist).value;
    const to1 = `${decimal(ratio, 1)} to 1`;
    const pitch = div(section.cloth, plain(section.pleats));
    if (ratio.compare(3) < 0) {
      say(
        warning(
          "gapes",
          "fullness",
          `fullness of the ${section.name} is ${to1}, under 3 to 1: gauging gapes`,
          "take more breadths, or gauge less of the waist",
        ),
      );
    } else if (ratio.compare(8) > 0) {
      say(
        warning(
          "very-full",
          "fullness",
          `fullness of the ${section.name} is ${to1}, over 8 to 1`,
          "take fewer breadths or thinner cloth, and sew the trial before cutting",
        ),
      );
    } else if (ratio.compare(7) > 0) {
      say(
        warning(
          "full",
          "fullness",
          `fullness of the ${section.name} is ${to1}, over 7 to 1: it needs thin cloth and a trial`,
          "sew the trial before cutting",
        ),
      );
    }
    if (less(inches(fraction(5n, 4n)), pitch)) {
      say(
        warning(
          "deep-pitch",
          "fullness",
          `a pleat of the ${section.name} takes ${printOnTape(pitch, sheet.showing)} of cloth: deep pleats flop`,
          recipe.fullness.rows < 3
            ? "take thinner cloth, fewer breadths or a third row"
            : "take thinner cloth or fewer breadths",
        ),
      );
    }
    if (!closes(section.pleats, packed, section.waist)) {
      say(
        warning(
          "edge-too-short",
          recipe.attach.made ? "attach.made" : "fullness",
          `${section.pleats} pleats of the ${section.name} need ${printOnTape(mul(packed, plain(section.pleats)), sheet.showing)} at least, and there are ${printOnTape(section.waist, sheet.showing)}`,
          "make the edge longer, or mark longer bites: leave attach.made out and plan for the smaller waist",
        ),
      );
    }
  }
}

/** Where the wanted count was lifted by the deepest pitch above what sews easily. */
export function warnOfTightness({ sheet, say }: Work): void {
  if (sheet.get("section.wanted").value.compare(sheet.get("section.least").value) > 0) return;
  const easy = sheet.evaluate("floor(section.waist / gauging.easy)");
  if (compare(sheet.get("section.least"), easy) <= 0) return;
  say(
    warning(
      "tighter-than-easy",
      "fullness",
      "the deepest pitch asks for more pleats than stand easily",
      "sew the trial before marking the whole top",
    ),
  );
}

/** Pleats that lie over each other. */
export function warnOfPleats({ sheet, say, recipe }: Work, sections: readonly Section[]): void {
  for (const section of sections) {
    if (section.half !== "left" || section.set === "flat" || section.set === "gauged") continue;
    const { set, face, depth, layers } = section;
    if (!isPleatSet(set)) continue;
    const path = recipe.fullness.zones ? "fullness.zones" : "fullness.method";
    if (stacks(set, face, depth)) {
      say(
        warning(
          "pleats-stack",
          path,
          `the ${PLEAT_NAMES[set]} lie over each other: a depth of ${printOnTape(depth, sheet.showing)} behind a face of ${printOnTape(face, sheet.showing)}, ${layers} layers at the thickest`,
          recipe.fullness.zones
            ? "take shallower pleats, or gauge more of the cloth"
            : recipe.fullness.method === "pleated-gauged-back"
              ? "take fewer breadths or a longer gauged-back, or write zones of your own with shallower pleats"
              : "take fewer breadths, or write zones of your own with shallower pleats or a gauged part",
        ),
      );
    }
  }
}
