/** How large a number and a formula may be. */

/** Digits of one number as it is written; bits of what comes out, above and below the line of a fraction. */
export const MOST_DIGITS = 12;
export const MOST_BITS = 4096;
/** Characters of a formula; brackets inside each other in it. */
export const LONGEST_FORMULA = 500;
export const DEEPEST_FORMULA = 40;
