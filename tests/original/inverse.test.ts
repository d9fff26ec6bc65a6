/** Measured, a garment gives its own recipe back: the sheet is the inverse of the plan. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { messageText } from "../../src/recipe/message.ts";
import { readOriginal } from "../../src/recipe/original/read.ts";
import { exact } from "../../src/solve/json.ts";
import { workOriginal } from "../../src/solve/original/answers.ts";
import type { Plan } from "../../src/solve/plan.ts";
import { tried } from "../recipes.ts";
import { isMeasurable, measurableRecipe, sheetOf } from "./measured.ts";

/** What must come out the same, whatever stands on the way. */
const SAME = [
  "waist.seam",
  "breadths.count",
  "breadths.cut",
  "skirt.round",
  "skirt.fullness",
  "gauging.pleats",
  "gauging.pitch",
  "gauging.perInch",
  "finished.front",
  "finished.left",
  "finished.right",
  "finished.back",
  "turnDown.front",
  "turnDown.left",
  "turnDown.right",
  "turnDown.back",
  "facing.length",
  "facing.depth",
  "pleating.count",
];

function back(text: string): Plan {
  const { original, placeOf, messages } = readOriginal("original.yaml", text);
  if (!original) throw new Error(messages.map((message) => messageText(message, text)).join("\n"));
  const { own, messages: said } = workOriginal(original, placeOf);
  if (!own.plan)
    throw new Error([...said, ...own.messages].map((message) => messageText(message, own.text)).join("\n"));
  expect(said.filter(({ level }) => level !== "note").map(({ text }) => text)).toEqual([]);
  return own.plan;
}

const numbers = (plan: Plan): Record<string, string> =>
  Object.fromEntries(
    SAME.flatMap((name) => {
      const value = plan.values.get(name);
      return value ? [[name, exact(value.quantity)]] : [];
    }),
  );

describe("a garment's own measures", () => {
  it.each([
    ["with all that the sheet asks", []],
    ["without the width of the cloth", ["cloth"]],
    ["without lengths at sides and back", ["lengths"]],
  ] as const)("give it back, %s", (_, without) => {
    let seen = 0;
    fc.assert(
      fc.property(measurableRecipe, (source) => {
        const { plan } = tried(source);
        if (!plan || !isMeasurable(plan)) return;
        seen += 1;
        let sheet = sheetOf(plan, without);
        if (without.some((key) => key === "lengths"))
          sheet += `lengths: {front: ${sheetOf(plan).match(/lengths: \{front: ([^,]*)/)?.[1]}}\n`;
        if (without.some((key) => key === "cloth") && plan.gauged.length > 0) {
          // Cloth of another thickness may not hold so many pleats; what is known of it is the selvedge's share only.
          const thick = /thickness: ([^,}]*)/.exec(sheetOf(plan))?.[1];
          if (thick) sheet += `cloth: {thickness: ${thick}}\n`;
        }
        expect(numbers(back(sheet))).toEqual(numbers(plan));
      }),
      { numRuns: 60 },
    );
    expect(seen).toBeGreaterThan(15);
  });
});
