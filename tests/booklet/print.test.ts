/** Styles for paper: every standard chapter has its name at the head of its pages; each paper is allowed by the page's policy. */

import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { papers } from "plainwork:page";
import { describe, expect, it } from "vitest";
import { makeBooklet } from "../../src/booklet/booklet.ts";
import { CHAPTERS } from "../../src/booklet/chapters.ts";
import { pageOnPaper } from "../../src/booklet/paper.ts";
import { planOf } from "../recipes.ts";

const css = readFileSync(fileURLToPath(new URL("../../src/booklet/print.css", import.meta.url)), "utf8");
const template = (name: string): string =>
  readFileSync(fileURLToPath(new URL(`../../templates/${name}.md`, import.meta.url)), "utf8").split(
    "\n",
    1,
  )[0] ?? "";

describe("the booklet on paper", () => {
  it.each(CHAPTERS)("the chapter %s is a named page with words of its own heading", (name) => {
    expect(css).toContain(`#${name} {\n  page: ${name};\n}`);
    const head = new RegExp(`@page ${name} \\{\\s*@top-left \\{\\s*content: "([^"]+)"`).exec(css)?.[1] ?? "";
    const heading = template(name).toLowerCase();
    for (const word of head.toLowerCase().split(" ")) expect(heading).toContain(word);
  });

  it.each(papers.map(({ name }) => name))(
    "the style of %s is allowed, and at work only when asked",
    (name) => {
      const html = makeBooklet(planOf()).get("booklet.html") ?? "";
      const paper = papers.find((each) => each.name === name);
      expect(/http-equiv="Content-Security-Policy" content="([^"]*)"/.exec(html)?.[1]).toContain(paper?.hash);
      expect(html).toContain(`<style id="paper-${name}" media="not all">${paper?.style}</style>`);
      const printed = pageOnPaper(html, name as Parameters<typeof pageOnPaper>[1]);
      expect(printed).toContain(`<style id="paper-${name}" media="print">`);
      expect(printed.match(/media="print"/g)).toHaveLength(1);
    },
  );
});
