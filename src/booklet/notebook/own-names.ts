/** Which names a workings line may give: words in camelCase, joined by dots, that hide nothing. */

import { FUNCTIONS } from "../../quantity/formula-functions.ts";
import { UNITS } from "../../quantity/units.ts";
import type { Code } from "../../recipe/messages/code.ts";
import { type Problem, quoted } from "../../recipe/problem.ts";
import { HELPERS } from "../template/helpers.ts";
import { isNames, type Names, named } from "../template/shape.ts";

const SHAPE = /^[a-z][A-Za-z0-9]*(?:\.[a-z][A-Za-z0-9]*)*$/;
/** Longer names are refused: they stand in a table. */
const LONGEST = 60;
const WORDS = new Set([
  "this",
  "true",
  "false",
  "null",
  "undefined",
  "else",
  "to",
  "mod",
  "and",
  "or",
  "xor",
  "not",
]);

const problem = (code: Code, text: string, hint: string): Problem => ({ code, text, hint });

/** What is wrong with a name; undefined when it can be given. `names` are those of the program. */
export function nameProblem(name: string, names: Names): Problem | undefined {
  if (!SHAPE.test(name) || name.length > LONGEST) {
    const hint =
      "letters and digits, a small letter first, words joined by dots: ribbon, bow.ends, secondFlounce";
    return problem("bad-name", `${quoted(name)} cannot be a name`, hint);
  }
  const steps = name.split(".");
  const odd = steps.find((step) => step in {} || step === "prototype");
  if (odd !== undefined)
    return problem("bad-name", `${quoted(odd)} cannot stand in a name`, "take another word");
  const [first] = steps as [string];
  if (steps.length === 1 && UNITS.has(first)) {
    return problem("bad-name", `${quoted(name)} is a unit`, "take a longer name");
  }
  if (steps.length === 1 && (FUNCTIONS.has(first) || Object.hasOwn(HELPERS, first) || WORDS.has(first))) {
    return problem("bad-name", `${quoted(name)} has a meaning of its own here`, "take another name");
  }
  return hiding(steps, names);
}

/** A name may stand beside the program's own inside a block, but not in the place of one, nor over or under one. */
function hiding(steps: readonly string[], names: Names): Problem | undefined {
  const name = steps.join(".");
  if (steps[0] === "is" || steps[0] === "garment" || steps[0] === "figures") {
    return problem("name-taken", `${quoted(steps[0])} is a block of the program's own`, "take another name");
  }
  for (let i = 1; i <= steps.length; i += 1) {
    const part = steps.slice(0, i).join(".");
    const known = named(names, part);
    if (known === undefined) return undefined;
    if (i === steps.length || !isNames(known)) {
      const what = isNames(known) ? "a block of values" : "a name of the program's own";
      const hidden = part === name ? "" : `, and would be hidden by ${quoted(name)}`;
      return problem("name-taken", `${quoted(part)} is ${what}${hidden}`, "take another name");
    }
  }
  return undefined;
}
