/** Rules between keys that need no solving: what goes together, what does not, and what cannot be. */
import type { Level } from "../message.ts";
import type { Problem } from "../problem.ts";
import type { Filled } from "../schema/recipe.ts";
import type { Partly } from "../values.ts";
import { checkAttach } from "./attach.ts";
import type { Checking } from "./checking.ts";
import { checkCloth } from "./cloth.ts";
import { checkFullness } from "./fullness.ts";
import { checkLining } from "./lining.ts";
import { checkRepeat } from "./repeat.ts";
import { checkSkirt } from "./skirt.ts";
import { checkWearer } from "./wearer.ts";

export interface Finding {
  readonly path: string;
  readonly problem: Problem;
  readonly level: Level;
  /** Is the key meant, rather than its value? */
  readonly atKey: boolean;
}

const RULES: readonly ((checking: Checking) => void)[] = [
  checkWearer,
  checkCloth,
  checkRepeat,
  checkLining,
  checkSkirt,
  checkFullness,
  checkAttach,
];

/** Runs every rule over what could be read. */
export function checkRules(values: Partly<Filled>, written: (path: string) => boolean): readonly Finding[] {
  const findings: Finding[] = [];
  const checking: Checking = {
    values,
    written,
    say: (path, problem, level = "error") => findings.push({ path, problem, level, atKey: false }),
    sayOfKey: (path, problem) => findings.push({ path, problem, level: "error", atKey: true }),
  };
  for (const rule of RULES) rule(checking);
  return findings;
}
