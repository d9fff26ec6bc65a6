import { Parser } from "commonmark";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { escapeMarkdown } from "../../src/booklet/escape.ts";
import { marked, runs, withoutMarks } from "../../src/booklet/marks.ts";
import cases from "./escape.json" with { type: "json" };

/** The text of a Markdown document by the reference parser, and the kinds of node in it. */
function read(markdown: string): { text: string; kinds: Set<string> } {
  let text = "";
  const kinds = new Set<string>();
  const walker = new Parser().parse(markdown).walker();
  for (let event = walker.next(); event; event = walker.next()) {
    if (!event.entering) continue;
    kinds.add(event.node.type);
    text += event.node.literal ?? "";
  }
  return { text, kinds };
}

describe("a maker's own words in Markdown", () => {
  it.each(cases as [string, string][])("%j is written %j", (text, wanted) => {
    expect(escapeMarkdown(text)).toBe(wanted);
  });
  it("read back as one paragraph of the same words, by the reference parser", () => {
    fc.assert(
      fc.property(fc.string({ unit: fc.constantFrom(..."ab1 .)-+=*_`[]()<>|~#&{}\\!:/\"'") }), (words) => {
        const text = words.replace(/\s+/g, " ").trim();
        fc.pre(text !== "");
        const { text: found, kinds } = read(escapeMarkdown(text));
        expect(found).toBe(text);
        expect([...kinds].filter((kind) => !["document", "paragraph", "text"].includes(kind))).toEqual([]);
      }),
      { numRuns: 2000 },
    );
  });
});

describe("number marks", () => {
  it("carry a name through the text and come off again", () => {
    const text = `turn down ${marked("turnDown.front", "3 1/2 in")} in front`;
    expect(withoutMarks(text)).toBe("turn down 3 1/2 in in front");
    expect(runs(text)).toEqual([
      { text: "turn down " },
      { text: "3 1/2 in", name: "turnDown.front" },
      { text: " in front" },
    ]);
    expect(runs("no number")).toEqual([{ text: "no number" }]);
  });
});
