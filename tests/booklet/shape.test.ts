/** Chapters made from their shapes are what parsing their rendered Markdown gives: for every demo and for random garments. */

import shapes from "plainwork:shapes";
import fc from "fast-check";
import type { Element, ElementContent, Root, RootContent } from "hast";
import { describe, expect, it } from "vitest";
import { contextOf } from "../../src/booklet/context.ts";
import { writeChapters } from "../../src/booklet/markdown.ts";
import { escapedMarks, withoutMarks } from "../../src/booklet/marks.ts";
import { parseToHtml } from "../../src/booklet/parse.ts";
import { compileShape } from "../../src/booklet/shape/compile.ts";
import { fillShape, type Maker } from "../../src/booklet/shape/fill.ts";
import { nodesToHtml } from "../../src/booklet/stringify.ts";
import { readTemplate } from "../../src/booklet/template/read.ts";
import { render } from "../../src/booklet/template/render.ts";
import { FIGURE_NAMES } from "../../src/figure/figure.ts";
import type { Plan } from "../../src/solve/plan.ts";
import { GARMENTS, garment } from "../figure/plans.ts";
import { randomRecipe } from "../random.ts";
import { tried } from "../recipes.ts";
import { recordedPlan } from "./recorded.ts";

const image = (folder: string, name: string): ElementContent => ({
  type: "element",
  tagName: "p",
  properties: {},
  children: [
    {
      type: "element",
      tagName: "img",
      properties: { src: `${folder}/${name}.svg`, alt: "" },
      children: [],
    },
  ],
});
const maker: Maker = {
  printed: (text) => [{ type: "text", value: withoutMarks(text) }],
  drawing: (folder, name) => [image(folder, name)],
};
const titles = Object.fromEntries(FIGURE_NAMES.map((name) => [name, name]));

/** The program's own marks of change are not made; texts side by side are one. */
const htmlOf = (nodes: readonly ElementContent[]): string => nodesToHtml(nodes);

function parsed(markdown: string): string {
  const { children }: Root = parseToHtml(markdown);
  return htmlOf(children.map(bare) as ElementContent[]);
}

/** Without the places that the parser notes. */
function bare(node: RootContent): RootContent {
  if (node.type !== "element") return node;
  const { tagName, children } = node;
  // A guide's words are its title, a figure's here its name.
  const properties = tagName === "img" ? { ...node.properties, alt: "" } : node.properties;
  return { type: "element", tagName, properties, children: children.map(bare) as Element["children"] };
}

function compare(plan: Plan): void {
  const context = { ...contextOf(plan), figures: titles };
  for (const { name, markdown } of writeChapters(plan, context)) {
    const filled = htmlOf(fillShape(shapes[name] ?? [], context, maker));
    expect(filled, name).toBe(parsed(escapedMarks(markdown)));
  }
}

describe("a chapter's shape", () => {
  it.each(Object.keys(GARMENTS))("gives what parsing gives: %s", (name) => compare(garment(name)));

  it("gives what parsing gives, for garments of which work is recorded", () => {
    compare(recordedPlan());
    compare(recordedPlan({ fullness: { method: "pleated" }, show: "cm" }));
  });

  it("gives what parsing gives, for random garments", () => {
    fc.assert(
      fc.property(randomRecipe, (source) => {
        const { plan } = tried(source);
        if (plan) compare(plan);
      }),
      { numRuns: 25 },
    );
  });

  const CASES: Readonly<Record<string, string>> = {
    "a choice within a sentence": "Sew {{#if a}}the *first* row{{else}}both rows{{/if}} now.",
    "a choice at the start and end of a paragraph": "{{#if no}}Never. {{/if}}Always.{{#if no}} Never.{{/if}}",
    "a paragraph that is not there": "One.\n\n{{#if no}}Two.{{/if}}\n\nThree.",
    "items of a choice between items":
      "1. one\n{{#if a}}\n1. two\n{{/if}}\n{{#if no}}\n1. three\n{{else}}\n1. four\n{{/if}}\n1. five\n",
    "a list whose every item comes from a list": "{{#each list}}\n- {{n}}\n{{/each}}\n",
    "rows of a table, and columns by choice":
      "| a | b |{{#if a}} c |{{/if}}\n|---|---|{{#if a}}---|{{/if}}\n{{#each list}}\n| {{n}} | x |{{#if ../a}} y |{{/if}}\n{{/each}}\n",
    "a heading and a list for every item":
      "{{#each list}}\n### Part {{n}}\n\n- item\n{{#if @first}}\n- first\n{{/if}}\n\n{{/each}}\n",
    "a choice over two blocks": "{{#if a}}\n## Head\n\nText.\n\n{{else}}\nOther.\n\n{{/if}}\nEnd.\n",
    "a quotation with a choice in it": "> **CAUTION.** Mind{{#if a}} the needle{{/if}}.\n\nNext.\n",
    "escapes and entities": "A \\* star, 3 &lt; 4{{#if a}}, and \\_more\\_ &amp; more{{/if}} \\[end\\].",
    "strong over a choice": "**{{#if a}}Yes{{else}}No{{/if}}, {{words two}}** and `code`.",
    "nothing in a list": "Before.\n\n{{#each none}}\nItem {{n}}.\n\n{{else}}\nNone.\n{{/each}}\n",
    "lines that are one paragraph": "One\n{{#if a}}\ntwo\n{{/if}}\n{{#if no}}\nthree\n{{/if}}\nfour\n",
  };
  const context = {
    a: true,
    no: false,
    two: "2",
    n: "1*",
    list: [{ n: "1" }, { n: "a_b" }, { n: "<b>" }],
    none: [],
  };
  it.each(Object.entries(CASES))("%s", (_, text) => {
    const template = readTemplate(text);
    for (const a of [true, false]) {
      const now = { ...context, a };
      const filled = htmlOf(fillShape(compileShape(template), now, maker));
      expect(filled).toBe(parsed(escapedMarks(render(template, now)).trim()));
    }
  });
});
