/** schema.org HowTo metadata: thread is a supply, scissors a tool; times as ISO 8601 durations. */
import type { Element, ElementContent } from "hast";
import { nearestWhole } from "../quantity/tape.ts";
import { wholeTitle } from "../recipe/recipe.ts";
import type { Plan } from "../solve/plan.ts";
import { textOf } from "./chapter-shape.ts";
import { titleOf } from "./contents.ts";
import { withoutMarks } from "./marks.ts";
import { notionsOf } from "./notions.ts";

const minutes = (plan: Plan, name: string): bigint => {
  const value = plan.values.get(name);
  return value ? nearestWhole(value.quantity.value.div(60)) : 0n;
};

const duration = (total: bigint): string => `PT${total / 60n}H${total % 60n}M`;

const isFigure = (node: ElementContent): boolean => node.type === "element" && node.tagName === "figure";

/** The text of every step; a picture inside it has words of its own that are not the step's. */
function stepsOf(chapter: Element): string[] {
  const lists = chapter.children.filter(
    (node): node is Element =>
      node.type === "element" && node.tagName === "ol" && String(node.properties.className ?? "") === "steps",
  );
  const items = lists
    .flatMap((list) => list.children)
    .filter((node): node is Element => node.type === "element");
  return items.map((item) =>
    textOf((item.children as ElementContent[]).filter((node) => !isFigure(node)))
      .replace(/\s+/g, " ")
      .trim(),
  );
}

/** The metadata object: every chapter with steps is a section. Time is the quicker hand's, work only. */
export function howTo(plan: Plan, chapters: readonly Element[]) {
  const notions = notionsOf(plan);
  const named = (type: string, kind: string) =>
    notions
      .filter((notion) => notion.kind === kind)
      .map(({ thing, amount }) => ({ "@type": type, name: thing, requiredQuantity: withoutMarks(amount) }));
  const perform = minutes(plan, "work.high");
  return {
    "@context": "https://schema.org",
    "@type": "HowTo",
    name: wholeTitle(plan.recipe),
    prepTime: duration(0n),
    performTime: duration(perform),
    totalTime: duration(perform),
    supply: named("HowToSupply", "supply"),
    tool: named("HowToTool", "tool"),
    step: chapters
      .map((chapter) => ({ chapter, steps: stepsOf(chapter) }))
      .filter(({ steps }) => steps.length > 0)
      .map(({ chapter, steps }) => ({
        "@type": "HowToSection",
        name: titleOf(chapter) || wholeTitle(plan.recipe),
        itemListElement: steps.map((text) => ({ "@type": "HowToStep", text })),
      })),
  };
}
