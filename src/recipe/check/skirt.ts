/** Breadths, turn-down and hem height (trade: waist and breadths; lengths and balance). */

import { printExactly } from "../../quantity/print.ts";
import { add, isWhole, less, mul, plain, type Quantity } from "../../quantity/quantity.ts";
import type { Checking } from "./checking.ts";
import { isGauged } from "./gauged.ts";

export function checkSkirt(checking: Checking): void {
  checkBreadths(checking);
  checkTurnDown(checking);
  checkOffFloor(checking);
}

function checkBreadths({ values, written, sayOfKey }: Checking): void {
  const breadths = written("skirt.breadths");
  const round = written("skirt.round");
  if (values.skirt?.run === "along") {
    checkAlong({ breadths, round }, sayOfKey);
    return;
  }
  if (breadths && round) {
    sayOfKey("skirt.round", {
      code: "breadths-and-round",
      text: "breadths and round are both given",
      expected: "one of the two",
      hint: "keep breadths to fix how many; keep round to have them chosen",
    });
  }
  if (values.skirt && !breadths && !round) {
    sayOfKey("skirt", {
      code: "no-breadths",
      text: "neither breadths nor round is given",
      expected: "one of the two",
      hint: "write breadths: 4, or round: 165 in, inside skirt",
    });
  }
  const count = values.skirt?.breadths;
  if (count && !isWhole(count) && written("skirt.centre-front")) {
    sayOfKey("skirt.centre-front", {
      code: "half-breadth-front",
      text: "centre-front is given with a half breadth",
      expected: "no centre-front: a half breadth is centred at the front",
      hint: "leave centre-front out, or take whole breadths",
    });
  }
}

/** Along the body there are no breadths: the round is wished and the cloth cut to it. */
function checkAlong(
  { breadths, round }: { breadths: boolean; round: boolean },
  sayOfKey: Checking["sayOfKey"],
): void {
  if (breadths)
    sayOfKey("skirt.breadths", {
      code: "breadths-along",
      text: "cloth that runs along the body goes round in lengths, and has no breadths",
      hint: "write round: 160 in for the round, and lengths: 2 where it is joined from two",
    });
  else if (!round)
    sayOfKey("skirt", {
      code: "no-breadths",
      text: "the cloth runs along the body, and its round is not given",
      expected: "round",
      hint: "write round: 160 in, inside skirt; it is cut to measure",
    });
}

/** The rows must go through the turned layer: the last one, and the margin under it, lie within the turn-down. */
function checkTurnDown(checking: Checking): void {
  const { values, say } = checking;
  const least = values.skirt?.["turn-down"];
  const { rows, margin } = values.fullness ?? {};
  const first = values.fullness?.["first-row"];
  const between = values.fullness?.["between-rows"];
  if (!least || !rows || !margin || !first || !between || !isGauged(checking)) return;
  const needed = add(add(first, mul(between, add(rows, plain(-1n)))), margin);
  if (!less(least, needed)) return;
  say("skirt.turn-down", {
    code: "turn-down-and-rows",
    text: "the turn-down does not reach below the last row: the rows would miss the turned layer",
    expected: `at least ${shown(needed, checking)}: first row, the rows below it, and ${shown(margin, checking)} under the last`,
    hint: "deepen the turn-down, or put the rows closer or leave one out",
  });
}

function checkOffFloor(checking: Checking): void {
  const { values, say } = checking;
  const off = values.skirt?.["off-floor"];
  const floor = values.wearer?.["waist-to-floor"];
  if (!off || !floor) return;
  for (const station of ["front", "side", "left", "right", "back"] as const) {
    const length = floor[station];
    if (!length || less(off, length)) continue;
    say("skirt.off-floor", {
      code: "no-length",
      text: `the hem hangs as high off the floor as the waist at the ${station}: no length is left`,
      expected: `off-floor less than ${shown(length, checking)}`,
      hint: "check off-floor and waist-to-floor",
    });
    return;
  }
}

const shown = (q: Quantity, { values }: Checking): string => printExactly(q, values.show ?? "in");
