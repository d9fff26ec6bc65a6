/** A length between two short lines, measured from the left edge of a card, with its words beside it. */
import type { Element } from "hast";
import { written } from "../figure/svg.ts";
import { isZero, type Quantity } from "../quantity/quantity.ts";
import { lines, mm, SHEET, upright, words } from "./paper.ts";

/** The longest length a bracket can show. */
const LONGEST = SHEET.width;

/** Does the page hold it at true size? */
export const fits = (size: Quantity): boolean => mm(size) <= LONGEST && !isZero(size);

/** The bracket itself; words stand beyond it, or above its line where there is no room beyond. */
export function bracket(size: Quantity, top: number, text: string): Element[] {
  const end = mm(size);
  const beyond = end < 60;
  return [
    lines(
      `${upright(0, top, top + 3.6)}M0 ${written(top + 1.8)}H${written(end)}${upright(end, top, top + 3.6)}`,
      {
        width: "cut",
      },
    ),
    words(beyond ? end + 2 : 3, beyond ? top + 2.8 : top + 1.2, text),
  ];
}
