/** Seams that are to meet on the pattern, and the dominant line: what they need to be worked out. */
import { isWhole, less } from "../../quantity/quantity.ts";
import type { Checking } from "./checking.ts";

export function checkRepeat({ values, written, say, sayOfKey }: Checking): void {
  const repeat = values.cloth?.repeat;
  if (!repeat) return;
  const { across, match, dominant } = repeat;
  const along = values.skirt?.run === "along";
  const round = along ? "down" : "across";
  if (match && !written(`cloth.repeat.${round}`))
    sayOfKey("cloth.repeat.match", {
      code: "match-what",
      text: `the seams are to meet on the pattern, and its repeat ${along ? "along" : "across"} the cloth is not given`,
      hint: `write ${round}: 3/4 in beside it, measured from line to line`,
    });
  if (along && match)
    for (const key of ["lines-lost", "dominant"] as const)
      if (written(`cloth.repeat.${key}`))
        sayOfKey(`cloth.repeat.${key}`, {
          code: "match-along",
          text: `run along the body, the cloth meets because every length is cut to whole repeats: ${key} has no effect`,
          hint: "take it out, and begin the first length where the pattern shall lie at its seam",
        });
  for (const key of ["lines-lost", "dominant"] as const)
    if (match === false && written(`cloth.repeat.${key}`))
      sayOfKey(`cloth.repeat.${key}`, {
        code: "no-match",
        text: `${key} has an effect only where the seams meet on the pattern`,
        hint: "write match: true beside it, or take it out",
      });
  if (dominant && across && !less(dominant, across))
    say("cloth.repeat.dominant", {
      code: "dominant-far",
      text: "the first dominant line lies no nearer the selvedge than a whole repeat",
      expected: "less than across",
      hint: "take the dominant line nearest the left selvedge; where the dominant line comes only every few lines, across is from one of them to the next",
    });
  if (!dominant || !match) return;
  const { breadths } = values.skirt ?? {};
  if (breadths && !isWhole(breadths))
    say("cloth.repeat.dominant", {
      code: "half-and-dominant",
      text: "the half breadth stands at centre front, and is cut through the pattern",
      hint: "give whole breadths, or take dominant out",
    });
  if (!written("skirt.breadths") && written("skirt.round"))
    sayOfKey("cloth.repeat.dominant", {
      code: "dominant-and-round",
      text: "what stands at centre front is not known where the number of breadths is only worked out",
      hint: "give breadths in place of round",
    });
}
