/** What measures of an original say against each other: told with both numbers, and never mended in silence. [ours] */

import { printExactly } from "../../quantity/print.ts";
import {
  abs,
  fraction,
  inches,
  isNegative,
  isZero,
  less,
  more,
  mul,
  plain,
  type Quantity,
  sub,
} from "../../quantity/quantity.ts";
import type { Level, Message, Place } from "../../recipe/message.ts";
import type { Code } from "../../recipe/messages/code.ts";
import type { Original } from "../../recipe/original/schema.ts";
import { messageOf } from "../../recipe/problem.ts";
import { STATIONS } from "./derive.ts";
import type { Findings } from "./findings.ts";

/** A tape's reading of one breadth, and of a length on a garment that lies soft. */
const EIGHTH = inches("1/8");
const QUARTER = inches("1/4");

/** Everything that does not agree. An error is said where no garment can be made of it. */
export function contradictions(
  original: Original,
  found: Findings,
  placeOf: (path: string) => Place,
): Message[] {
  const messages: Message[] = [];
  const say = (path: string, code: Code, text: string, hint: string, level: Level = "warning"): void =>
    void messages.push(messageOf({ code, text, hint }, path, placeOf(path), level));
  breadths(original, found, say);
  pleats(original, found, say);
  lengths(original, found, say);
  return messages;
}

type Say = (path: string, code: Code, text: string, hint: string, level?: Level) => void;

function breadths({ show, cloth, seam }: Original, found: Findings, say: Say): void {
  const print = (q: Quantity): string => printExactly(q, show);
  const pieces = found.evaluate("breadths.whole + breadths.half");
  const off = found.evaluate("breadths.sum - hem.round");
  if (more(abs(off), mul(EIGHTH, pieces))) {
    const seams = found.evaluate("abs(breadths.sum - hem.round - seam.lost)");
    say(
      "breadths",
      "breadths-and-round",
      `the breadths make ${found.shown("breadths.sum")} together, and the hem is ${found.shown("hem.round")} round: ${print(abs(off))} ${isNegative(off) ? "less" : "more"}`,
      more(seams, mul(EIGHTH, pieces))
        ? "count the breadths again, and measure the round along the hem's own edge; the recipe follows the round"
        : "they differ by what the seams take: were the widths taken from selvedge to selvedge? The recipe follows the round",
    );
  }
  if (more(found.get("breadths.half"), plain(1n)))
    say(
      "breadths",
      "many-halves",
      `${found.shown("breadths.half")} breadths are under three quarters of the widest`,
      "a recipe knows whole breadths and one half: the recipe takes as much cloth in breadths alike",
    );
  if (!cloth.width) return;
  const taken = found.get("seam.taken");
  if (isNegative(taken) || isZero(taken) || more(taken, inches("4")))
    say(
      "cloth.width",
      "width-and-round",
      `${found.shown("breadths.count")} breadths of cloth ${found.shown("cloth.width")} wide cannot make a hem ${found.shown("hem.round")} round: each seam would take ${print(taken)} of either breadth`,
      "count the breadths again, and measure width and round again",
      "error",
    );
  else if (seam && more(abs(sub(taken, seam)), EIGHTH))
    say(
      "seam",
      "seam-and-width",
      `seams of ${print(seam)} are seen, and width and round ask for ${found.shown("seam.taken")}`,
      "measure again; the recipe takes the seams that make the measured round",
    );
}

function pleats(original: Original, found: Findings, say: Say): void {
  const within = (name: string, low: string, high: string): boolean => {
    const { value } = found.get(name);
    return value.compare(fraction(low)) >= 0 && value.compare(fraction(high)) <= 0;
  };
  if (found.has("whips.perPleat") && !within("whips.perPleat", "9/10", "7/5")) {
    const everyOther = within("whips.perPleat", "2/5", "3/5");
    say(
      "whips",
      "whips-and-pleats",
      `${found.shown("whips.seen")} whip stitches stand to ${found.shown("pleats.seen")} pleats: ${found.shown("whips.perPleat")} to one`,
      everyOther
        ? "it looks as if every other pleat is whipped; the recipe whips every pleat"
        : "count both again along the same inch: one to a pleat, or five to four where every fourth is doubled",
      everyOther ? "note" : "warning",
    );
  }
  if (!found.has("pleats.all")) return;
  if (original["pleats-in-all"] && found.has("pleats.seen")) {
    const off = found.evaluate("abs(pleats.all - pleats.seen * gauged.waist) * 10");
    if (more(off, found.get("pleats.all")))
      say(
        "pleats-in-all",
        "pleats-and-waist",
        `${found.shown("pleats.all")} pleats are counted all round, and ${found.shown("pleats.seen")} along ${found.shown("gauged.waist")} would be ${printCount(found.evaluate("round(pleats.seen * gauged.waist)"))}`,
        "count again, or measure the gauged waist again; the recipe follows the count all round",
      );
  }
  if (found.has("bite.pitch") && original.bite?.outside) {
    const off = found.evaluate("abs(bite.pitch - pleat.pitch) * 10");
    if (more(off, found.get("pleat.pitch")))
      say(
        "bite",
        "bites-and-pitch",
        `one stitch inside and one outside make ${found.shown("bite.pitch")}, and the cloth over the pleats gives ${found.shown("pleat.pitch")} a pleat`,
        "the stitches that are seen are drawn up: measure over several; the recipe follows cloth and count",
      );
  }
  if (
    found.has("pleats.front", "pleats.back") &&
    more(found.evaluate("abs(pleats.back - pleats.front)"), plain(1n))
  )
    say(
      "pleats.back",
      "pleats-uneven",
      `${found.shown("pleats.front")} pleats are counted in front and ${found.shown("pleats.back")} behind`,
      "fullness is thrown about: the recipe lays it evenly; write back-share into it to follow the original",
      "note",
    );
  if (found.has("rows.last", "fold.least") && less(found.get("fold.least"), found.evaluate("rows.last")))
    say(
      "fold",
      "rows-and-fold",
      `the last row lies ${found.shown("rows.last")} below the fold, and the fold is only ${found.shown("fold.least")} deep there`,
      "measure both again; the recipe takes the least fold that its rows need",
    );
}

const printCount = (q: Quantity): string => q.value.toFraction();

function lengths(original: Original, found: Findings, say: Say): void {
  const given = original.lengths;
  const written = { left: given.left ?? given.side, right: given.right ?? given.side, back: given.back };
  for (const at of STATIONS) {
    if (at === "front" || !written[at] || !found.has(`longer.${at}`)) continue;
    const off = found.evaluate(`length.${at} - length.front - longer.${at}`);
    if (!more(abs(off), QUARTER)) continue;
    say(
      `lengths.${given.side && at !== "back" ? "side" : at}`,
      "lengths-and-folds",
      `the ${at} is ${printExactly(found.evaluate(`length.${at} - length.front`), original.show)} longer than the front as measured, and ${found.shown(`longer.${at}`)} by the folds`,
      "the cut edge may not be straight, or was trimmed; the recipe follows the lengths",
    );
    if (at === "left" && given.side) break;
  }
  if (!original.fold && (!given.back || !written.left))
    say(
      "lengths",
      "lengths-assumed",
      "lengths at sides or back are neither measured nor given by the folds",
      "they are taken as in front: measure them if the original can be hung",
      "note",
    );
}
