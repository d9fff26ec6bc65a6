/** What is made again of a text in steps is what is made of it at once, and what is said of it is what the command line says. */
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { Desk } from "../../src/open/page/desk.ts";
import { checkProject } from "../../src/shelf/build.ts";
import { nodeWorld } from "../../src/shelf/world.ts";
import { ALL_DEMOS } from "../long.ts";
import { copyOf } from "./opened.ts";

const DEMO = "madder-print-1851";
const SOURCE = readFileSync(
  fileURLToPath(new URL(`../../demo-projects/${DEMO}/recipe.md`, import.meta.url)),
  "utf8",
);

/** Changes that a maker makes: of measures, sentences, chapters, workings; some are wrong. */
const CHANGES: readonly ((text: string) => string)[] = [
  (text) => text.replace("waist: 26 in", "waist: 27 1/2 in"),
  (text) => text.replace("waist: 26 in", "waist: 27"),
  (text) => text.replace("walking out", "riding out"),
  (text) => text.replace("This skirt is", "This skirt, {{garment.cloth}}, is"),
  (text) => text.replace("{{skirt.round}}.", "{{skirt.rownd}}."),
  (text) => text.replace("{{> hem}}\n", "## Hem\n\nOf {{skirt.round}}.\n\n{{> hem}}\n"),
  (text) => text.replace("ribbon.width = 3/4 in", "ribbon.width = 1 in"),
  (text) => text.replace("{{> keeping}}\n", ""),
  (text) => text.replace("rows: 2", "rows: 3"),
  (text) => text.replace("Cut the ends on a slant.", "Cut the ends on a slant, *all* of them."),
  (text) => text.replace("## Ribbon and bows\n", '## Ribbon and bows\n\n{{figure "balance"}}\n'),
  () => SOURCE,
];

const nodesOf = (desk: Desk, text: string): unknown => {
  const { booklet, messages } = desk.make(text);
  return booklet
    ? JSON.parse(JSON.stringify([booklet.main, booklet.contents, booklet.measures]))
    : messages.map(({ text }) => text);
};

describe("the desk", () => {
  it("makes in steps what it makes at once", () => {
    fc.assert(
      fc.property(fc.array(fc.constantFrom(...CHANGES), { minLength: 1, maxLength: 4 }), (changes) => {
        const desk = new Desk();
        desk.make(SOURCE);
        let text = SOURCE;
        for (const change of changes) {
          text = change(text);
          desk.make(text);
        }
        expect(nodesOf(desk, text)).toEqual(nodesOf(new Desk(), text));
      }),
      { numRuns: ALL_DEMOS ? 60 : 6 },
    );
  });

  it("makes nothing again but the section of a changed sentence", () => {
    const desk = new Desk();
    desk.make(SOURCE);
    desk.markFrom(SOURCE);
    const before = desk.make(SOURCE).booklet;
    const text = SOURCE.replace("walking out", "riding out");
    expect(desk.changesMeasures(text)).toBe(false);
    const after = desk.make(text).booklet;
    const old = new Set(before?.main.children);
    const made = after?.main.children.filter((section) => !old.has(section)) ?? [];
    expect(made.map((section) => section.type === "element" && section.properties.id)).toEqual(["note-1"]);
    expect(after?.plan).toBe(before?.plan);
  });

  it("marks what has changed since the text it was told of", () => {
    const desk = new Desk();
    desk.markFrom(SOURCE);
    expect(JSON.stringify(desk.make(SOURCE).booklet?.main)).not.toContain("dataWas");
    const changed = desk.make(SOURCE.replace("waist: 26 in", "waist: 27 1/2 in"));
    expect(JSON.stringify(changed.booklet?.main)).toContain('"dataWas":"26 1/2 in"');
  });

  it.each(CHANGES.map((change, i) => [i, change] as const))(
    "says of change %i what the command line says",
    (_, change) => {
      const copy = copyOf(DEMO);
      try {
        const project = { recipe: copy.recipe, shown: "recipe.md", name: "x" };
        const world = nodeWorld(process);
        const text = change(SOURCE);
        const told = checkProject(
          { ...world, read: (path) => (path === copy.recipe ? Buffer.from(text) : world.read(path)) },
          project,
        );
        const desk = new Desk();
        const { messages } = desk.examine(text, (path) => readFileSync(`${copy.folder}/${path}`));
        expect(messages).toEqual(told.messages);
      } finally {
        copy.remove();
      }
    },
  );
});
