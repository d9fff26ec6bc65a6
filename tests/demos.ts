/** The demo projects, read and solved from their own files. */
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { EVIDENCE_FILE } from "../src/recipe/evidence.ts";
import { readRecipe } from "../src/recipe/read.ts";
import type { Plan } from "../src/solve/plan.ts";
import { solve } from "../src/solve/solve.ts";

const FOLDER = fileURLToPath(new URL("../demo-projects/", import.meta.url));

/** Those without sizes: what is made of sizes has tests of its own. */
export const DEMOS: readonly string[] = readdirSync(FOLDER)
  .filter((name) => !/^sizes:/m.test(readFileSync(`${FOLDER}${name}/recipe.md`, "utf8")))
  .sort();

const solved = new Map<string, Plan>();

/** The plan of a demo, solved once. */
export function demo(name: string): Plan {
  const known = solved.get(name);
  if (known) return known;
  const list = `${FOLDER}${name}/${EVIDENCE_FILE}`;
  const evidence = existsSync(list) ? { file: EVIDENCE_FILE, text: readFileSync(list, "utf8") } : undefined;
  const { recipe } = readRecipe("recipe.md", readFileSync(`${FOLDER}${name}/recipe.md`, "utf8"), evidence);
  const plan = recipe && solve(recipe).plan;
  if (!plan) throw new Error(`${name} does not build`);
  solved.set(name, plan);
  return plan;
}
