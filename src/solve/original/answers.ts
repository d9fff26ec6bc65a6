/** The original worked out: its findings, its contradictions, and recipes tried by the program's own reader and solver. */
import type { Message, Place } from "../../recipe/message.ts";
import type { Original } from "../../recipe/original/schema.ts";
import { readRecipe } from "../../recipe/read.ts";
import type { Plan } from "../plan.ts";
import { solve } from "../solve.ts";
import { asItWas, carriedTo, KEEPS, type Keep } from "./carry.ts";
import { contradictions } from "./contradictions.ts";
import { derive } from "./derive.ts";
import type { Findings } from "./findings.ts";
import { recipeText } from "./recipe-text.ts";

/** One garment that the original comes to. */
export interface Answer {
  /** Absent for the original's own body. */
  readonly keep?: Keep;
  /** recipe.md; absent where no breadths are enough. */
  readonly text?: string;
  /** Absent where it cannot be made; the messages say why. */
  readonly plan?: Plan;
  readonly messages: readonly Message[];
}

export interface Worked {
  readonly found: Findings;
  readonly messages: readonly Message[];
  readonly own: Answer;
  /** Three where another body is given, else none. */
  readonly carried: readonly Answer[];
  /** The one that becomes the recipe. */
  readonly chosen: Answer;
}

/** Works an original out. @param keep what is kept on another body, in place of the sheet's own choice */
export function workOriginal(original: Original, placeOf: (path: string) => Place, keep?: Keep): Worked {
  const found = derive(original);
  const messages = contradictions(original, found, placeOf);
  if (messages.some(({ level }) => level === "error")) {
    const none: Answer = { messages: [] };
    return { found, messages, own: none, carried: [], chosen: none };
  }
  const own = tried(recipeText(original, found, asItWas(found)));
  const { wearer } = original;
  const carried = wearer
    ? KEEPS.map((each): Answer => {
        const garment = carriedTo(wearer, each, found);
        return garment
          ? { keep: each, ...tried(recipeText(original, found, garment)) }
          : { keep: each, messages: [] };
      })
    : [];
  const chosen = carried.find((answer) => answer.keep === (keep ?? wearer?.keep)) ?? own;
  return { found, messages, own, carried, chosen };
}

function tried(text: string): Answer {
  const read = readRecipe("recipe.md", text);
  if (!read.recipe) return { text, messages: read.messages };
  const { plan, messages } = solve(read.recipe);
  return { text, ...(plan ? { plan } : {}), messages: [...read.messages, ...messages] };
}
