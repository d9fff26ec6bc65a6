/** Step pictures in the booklet: each once, inside the step it belongs to, and with no words in the metadata. */
import type { Element } from "hast";
import { describe, expect, it } from "vitest";
import { howTo } from "../../src/booklet/howto.ts";
import { STANDARD } from "../../src/booklet/notebook/notebook.ts";
import { work } from "../../src/booklet/notebook/work.ts";
import { bookletParts } from "../../src/booklet/parts.ts";
import { all } from "../figure/outlines.ts";
import { GARMENTS, garment } from "../figure/plans.ts";

function bookletOf(name: string) {
  const plan = garment(name);
  const { figures, nodes } = bookletParts(work(plan, STANDARD));
  return { plan, figures, chapters: nodes };
}

const isSteps = ({ properties }: Element): boolean => String(properties.className ?? "") === "steps";

describe.each(Object.keys(GARMENTS))("the booklet of %s", (name) => {
  const { plan, figures, chapters } = bookletOf(name);
  const items = chapters
    .flatMap((chapter) => all(chapter, "ol").filter(isSteps))
    .flatMap((list) => list.children.filter((node): node is Element => node.type === "element"));

  it("has every step picture once, each in a step", () => {
    const wanted = [...figures.keys()].filter((figure) => figure.startsWith("step-"));
    const found = items.flatMap((item) => all(item, "figure")).map(({ properties }) => properties.id);
    expect([...found].sort()).toEqual(wanted.map((figure) => `figure-${figure}`).sort());
  });

  it("keeps the text of a step plain, with or without a picture in its list", () => {
    expect(items.length).toBeGreaterThan(50);
    expect(items.flatMap((item) => all(item, "p"))).toEqual([]);
  });

  it("has one metadata step for each, without the pictures' words", () => {
    const steps = howTo(plan, chapters).step.flatMap(({ itemListElement }) => itemListElement);
    expect(steps.length).toBe(items.length);
    for (const { text } of steps) {
      expect(text.length).toBeGreaterThan(5);
      expect(text).not.toContain("Step: ");
    }
  });
});
