/** Waist and lengths (trade: waist and breadths; lengths and balance). */
import { add, fraction, less, type Quantity } from "../../quantity/quantity.ts";
import { quoted } from "../problem.ts";
import type { Checking } from "./checking.ts";

/** Is there anything to close? */
export const isPositive = (q: Quantity): boolean => q.value.compare(fraction(0n)) > 0;

export function checkWearer(checking: Checking): void {
  const { values, written, say, sayOfKey } = checking;
  const { waist, ease } = values.wearer ?? {};
  if (waist && ease && !isPositive(add(waist, ease))) {
    say("wearer.ease", {
      code: "waist-and-ease",
      text: "waist and ease together leave nothing",
      expected: "a waist seam of more than 0",
      hint: "check the ease: it is added to the waist",
    });
  }
  if (!values.wearer) return;
  checkLengths(checking, values.wearer["waist-to-floor"] !== undefined);
  checkHoop(checking);
  if (!written("wearer.waist-to-floor") && !written("wearer.waist-height")) {
    sayOfKey("wearer", {
      code: "no-lengths",
      text: "neither waist-to-floor nor waist-height is given",
      expected: "one of the two",
      hint: "write waist-to-floor: {front: 40 in, side: 41 in, back: 42 1/2 in}, inside wearer",
    });
  }
}

/** The lengths to the floor; `readable` when waist-to-floor is a block of keys. */
function checkLengths({ written, sayOfKey }: Checking, readable: boolean): void {
  const floor = "wearer.waist-to-floor";
  const has = (key: string): boolean => written(`${floor}.${key}`);
  if (written(floor) && written("wearer.waist-height")) {
    sayOfKey("wearer.waist-height", {
      code: "lengths-twice",
      text: "waist-to-floor and waist-height are both given",
      expected: "one of the two",
      hint: "keep waist-to-floor if it is measured; waist-height only estimates",
    });
  }
  if (!readable) return;
  if (has("side") && (has("left") || has("right"))) {
    const other = has("left") ? "left" : "right";
    sayOfKey(`${floor}.side`, {
      code: "sides-twice",
      text: `side and ${other} are both given`,
      expected: "side for both sides alike, or left and right",
      hint: "keep side, or left and right",
    });
  } else if (has("left") !== has("right")) {
    const [one, other] = has("left") ? ["left", "right"] : ["right", "left"];
    sayOfKey(`${floor}.${one}`, {
      code: "one-side",
      text: `${quoted(one as string)} is given and ${quoted(other as string)} is not`,
      expected: "both sides",
      hint: `measure the other side too and write ${other}; if the sides are alike, write side`,
    });
  } else if (!has("side") && !has("left")) {
    sayOfKey(floor, {
      code: "missing",
      text: `${floor}.side is not given`,
      expected: "the length at the sides",
      hint: "write side, or left and right for unlike sides",
    });
  }
}

function checkHoop({ values, written, say, sayOfKey }: Checking): void {
  if (!written("wearer.waist-height")) return;
  if (!written("wearer.hoop")) {
    sayOfKey("wearer.waist-height", {
      code: "no-hoop",
      text: "waist-height is given without a hoop: there is nothing to estimate lengths over",
      hint: "write hoop: {round: 110 in, height: 9 in}, or measure waist-to-floor",
    });
  } else if (values.wearer?.hoop && !written("wearer.hoop.height")) {
    sayOfKey("wearer.hoop", {
      code: "missing",
      text: "wearer.hoop.height is not given",
      expected: "with waist-height, how high the lowest steel hangs",
      hint: "write height: 9 in, inside hoop",
    });
  }
  const height = values.wearer?.["waist-height"];
  const hoop = values.wearer?.hoop?.height;
  if (height && hoop && !less(hoop, height)) {
    say("wearer.hoop.height", {
      code: "hoop-above-waist",
      text: "the hoop's lowest steel is not below the waist",
      expected: "less than waist-height",
      hint: "measure both from the floor",
    });
  }
}
