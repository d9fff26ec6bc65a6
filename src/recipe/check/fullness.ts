/** Method, zones, bites and the trial (trade: zones; gauging a section). */

import { printExactly } from "../../quantity/print.ts";
import { less, mul, plain } from "../../quantity/quantity.ts";
import type { Checking } from "./checking.ts";

export function checkFullness(checking: Checking): void {
  const { values, written, say, sayOfKey } = checking;
  if (written("fullness.method") && written("fullness.zones")) {
    sayOfKey("fullness.zones", {
      code: "method-and-zones",
      text: "method and zones are both given",
      expected: "one of the two",
      hint: "keep method for one of the usual ways; keep zones for your own",
    });
  }
  const finest = values.fullness?.["finest-bite"];
  const deepest = values.fullness?.["deepest-pitch"];
  const least = finest && mul(finest, plain(2n));
  if (least && deepest && less(deepest, least)) {
    say(written("fullness.deepest-pitch") ? "fullness.deepest-pitch" : "fullness.finest-bite", {
      code: "bite-and-pitch",
      text: "the deepest pitch is less than two of the finest bites: no pleat fits between them",
      expected: `a deepest pitch of at least ${printExactly(least, values.show ?? "in")}`,
      hint: "make deepest-pitch larger, or finest-bite smaller",
    });
  }
  if (finest && values.tape && less(finest, values.tape)) {
    say(written("tape") ? "tape" : "fullness.finest-bite", {
      code: "tape-too-coarse",
      text: "the smallest mark of the tape is longer than the finest bite: a bite could not be marked",
      expected: `a mark of at most ${printExactly(finest, values.show ?? "in")}`,
      hint: "give a finer tape, or a longer finest-bite",
    });
  }
  const { trial } = values.fullness ?? {};
  if (trial?.cloth && trial["closes-to"] && !less(trial["closes-to"], trial.cloth)) {
    say("fullness.trial.closes-to", {
      code: "trial-not-drawn",
      text: "the trial does not close to less than its cloth",
      expected: "the width it closes to, drawn tight",
      hint: "check the two measures, and which is which",
    });
  }
  const follows = values.fullness?.["follow-repeat"];
  const repeat = checking.values.skirt?.run === "along" ? "down" : "across";
  if (follows && !written(`cloth.repeat.${repeat}`)) {
    say("fullness.follow-repeat", {
      code: "no-repeat",
      text: `the pitch is to follow the repeat, and no repeat ${repeat === "down" ? "along" : "across"} the cloth is given`,
      hint: `write repeat: {${repeat}: 3/4 in}, inside cloth, or follow-repeat: false`,
    });
  }
  if (values.fullness?.["pleats-as-wished"] && !written("fullness.pleats-per-inch")) {
    say("fullness.pleats-as-wished", {
      code: "no-wish",
      text: "just the wished number of pleats is asked for, and none is wished",
      hint: "write pleats-per-inch: 9 beside it, or leave it out",
    });
  }
  checkShares(checking);
}

/** A length that only one method uses does nothing with another: told, since it looks as if it did. */
function checkShares({ values, written, say }: Checking): void {
  const method = values.fullness?.method;
  for (const [key, wanted] of [
    ["gauged-back", "pleated-gauged-back"],
    ["flat-front", "flat-front-gauged"],
  ] as const) {
    const unread = written("fullness.method") && !written("fullness.zones") && method === undefined;
    if (!written(`fullness.${key}`) || method === wanted || unread) continue;
    const text = `${key} does nothing without method: ${wanted}`;
    const hint = `write method: ${wanted}, or leave ${key} out`;
    say(`fullness.${key}`, { code: "no-effect", text, hint }, "warning");
  }
}
