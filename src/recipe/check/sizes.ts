/** Other sizes: names that can be folders, and measures that can be. */
import { add } from "../../quantity/quantity.ts";
import { quoted } from "../problem.ts";
import type { Checking } from "./checking.ts";
import { checkLengths, isPositive } from "./wearer.ts";

/** A folder may bear it on any system. */
const FOLDER = /^[\p{L}\p{N}](?:[\p{L}\p{N} ._-]{0,38}[\p{L}\p{N}])?$/u;

export function checkSizes(checking: Checking): void {
  const { values, written, say } = checking;
  const first = new Map<string, number>();
  for (const [i, size] of (values.sizes ?? []).entries()) {
    const at = `sizes.${i}`;
    checkLengths(checking, at, size["waist-to-floor"] !== undefined);
    const waist = size.waist ?? values.wearer?.waist;
    const ease = size.ease ?? values.wearer?.ease;
    if ((size.waist || size.ease) && waist && ease && !isPositive(add(waist, ease))) {
      say(written(`${at}.ease`) ? `${at}.ease` : `${at}.waist`, {
        code: "waist-and-ease",
        text: "waist and ease together leave nothing",
        expected: "a waist seam of more than 0",
        hint: "check the ease: it is added to the waist",
      });
    }
    if (size.name === undefined) continue;
    if (!FOLDER.test(size.name)) {
      say(`${at}.name`, {
        code: "size-name",
        text: `${quoted(size.name)} cannot be the name of a folder`,
        expected:
          "at most 40 letters, figures, spaces, full stops and hyphens, a letter or figure first and last",
      });
    }
    const folded = size.name.toLowerCase();
    const before = first.get(folded);
    if (before === undefined) first.set(folded, i);
    else {
      say(`${at}.name`, {
        code: "size-name",
        text: `${quoted(size.name)} is the name of another size too, entry ${before + 1} of the list`,
        hint: "give each size its own name",
      });
    }
  }
}
