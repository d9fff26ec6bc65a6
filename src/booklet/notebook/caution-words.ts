/** Which chapters carry cautions: what is left out with them has to be said. */
import type { Template } from "../template/tree.ts";

const SIGNAL = /^(?:> \*\*|### )(?:WARNING|CAUTION)\b/m;

/** Does a template carry a WARNING or a CAUTION? Every branch counts. */
export const carriesCaution = (template: Template): boolean => SIGNAL.test(textsOf(template));

/** The signal words that a chapter of cautions must have and this one has not. */
export const missingSignals = (template: Template): string[] =>
  ["WARNING", "CAUTION"].filter((word) => !new RegExp(`\\b${word}\\b`).test(textsOf(template)));

function textsOf(template: Template): string {
  return template
    .map((part) =>
      typeof part === "string" ? part : "do" in part ? textsOf(part.do) + textsOf(part.else) : "",
    )
    .join("");
}
