/** Recipes for tests, made from a plain base with keys changed or taken out; and their plans. */
import { type Message, messageText } from "../src/recipe/message.ts";
import { readRecipe } from "../src/recipe/read.ts";
import { exact } from "../src/solve/json.ts";
import type { Plan } from "../src/solve/plan.ts";
import { solve } from "../src/solve/solve.ts";

/** Nested keys as in a recipe; `null` takes a key out. */
export interface Keys {
  [key: string]: string | null | Keys;
}

/** Four 45 in breadths into 25 1/2 in: the skirt most tests start from. */
export const BASE: Keys = {
  recipe: "1",
  title: "A skirt for the tests (invented)",
  wearer: { waist: "25 1/2 in", "waist-to-floor": { front: "40 in", side: "41 in", back: "42 1/2 in" } },
  cloth: { width: "45 in", selvedge: "3/8 in", thickness: "0.25 mm" },
  skirt: { breadths: "4" },
};

export function merged(base: Keys, patch: Keys): Keys {
  const out: Keys = { ...base };
  for (const [key, value] of Object.entries(patch)) {
    const before = out[key];
    if (value === null) delete out[key];
    else if (typeof value === "string") out[key] = value;
    else out[key] = merged(typeof before === "object" && before !== null ? before : {}, value);
  }
  return out;
}

function lines(keys: Keys, indent: string): string[] {
  return Object.entries(keys).flatMap(([key, value]) =>
    typeof value === "string"
      ? [`${indent}${key}: ${/^[[{"']/.test(value) ? value : JSON.stringify(value)}`]
      : value === null
        ? []
        : [`${indent}${key}:`, ...lines(value, `${indent}  `)],
  );
}

/** The recipe file of these keys over the base. */
export const recipeText = (patch: Keys = {}, base: Keys = BASE): string =>
  `---\n${lines(merged(base, patch), "").join("\n")}\n---\n`;

export interface Tried {
  readonly plan?: Plan;
  readonly messages: readonly Message[];
}

/** Reads and solves; errors stay messages. */
export function tried(source: string): Tried {
  const read = readRecipe("recipe.md", source);
  if (!read.recipe) return { messages: read.messages };
  const solved = solve(read.recipe);
  const messages = [...read.messages, ...solved.messages];
  return solved.plan ? { plan: solved.plan, messages } : { messages };
}

/** The plan of these keys over the base; a test that meets an error shows it. */
export function planOf(patch: Keys = {}, base: Keys = BASE): Plan {
  const source = recipeText(patch, base);
  const { plan, messages } = tried(source);
  if (!plan) throw new Error(messages.map((message) => messageText(message, source)).join("\n"));
  return plan;
}

/** A value's exact text, as plan.json has it. */
export function exactOf(plan: Plan, name: string): string {
  const value = plan.values.get(name);
  if (!value) throw new Error(`the plan has no value "${name}"`);
  return exact(value.quantity);
}
