/** The words of the trade: told once each, led to where they stand, and none said in another word. */
import { readdirSync, readFileSync } from "node:fs";
import fc from "fast-check";
import type { Element, ElementContent } from "hast";
import { describe, expect, it } from "vitest";
import { textOf } from "../../src/booklet/chapter-shape.ts";
import { writeChapters } from "../../src/booklet/markdown.ts";
import { MARKED } from "../../src/booklet/marks.ts";
import { STANDARD } from "../../src/booklet/notebook/notebook.ts";
import { readNotebook } from "../../src/booklet/notebook/read.ts";
import { work } from "../../src/booklet/notebook/work.ts";
import { bookletParts } from "../../src/booklet/parts.ts";
import { WORD_LIST } from "../../src/booklet/template/word-list.ts";
import { toldIn } from "../../src/booklet/words.ts";
import { NAMES } from "../../src/solve/names.ts";
import type { Plan } from "../../src/solve/plan.ts";
import { GARMENTS, garment } from "../figure/plans.ts";
import { randomRecipe } from "../random.ts";
import { planOf, tried } from "../recipes.ts";
import instead from "./words.json" with { type: "json" };

const ROOT = new URL("../../", import.meta.url);
const text = (path: string): string => readFileSync(new URL(path, ROOT), "utf8");
const chapters = readdirSync(new URL("templates/", ROOT)).filter(
  (name) => name.endsWith(".md") && name !== "README.md",
);
const marksIn = (template: string): string[] =>
  [...template.matchAll(/\{\{word (?:"[^"]*" )?"([^"]+)"\}\}/g)].map(([, word = ""]) => word.toLowerCase());
const told = [...text("templates/words.md").matchAll(/\{\{term "([^"]+)"\}\}/g)].map(([, word = ""]) => word);

describe("the list of words", () => {
  it("is what the chapter tells, each once", () => expect([...told].sort()).toEqual([...WORD_LIST].sort()));

  it("stands in the order of the alphabet", () => {
    const first = text("templates/words.md").match(/(?<=^- \*\*\{\{term ")[^"]+/gm) ?? [];
    expect(first).toEqual([...first].sort());
  });

  const marked = new Set(chapters.flatMap((name) => marksIn(text(`templates/${name}`))));
  it.each(WORD_LIST)("%s is led to from a chapter", (word) => expect(marked).toContain(word));
  it("every mark names one", () =>
    expect([...marked].filter((word) => !WORD_LIST.includes(word))).toEqual([]));
});

function* elements(
  nodes: readonly ElementContent[],
  inside: readonly string[] = [],
): Generator<[Element, readonly string[]]> {
  for (const node of nodes) {
    if (node.type !== "element") continue;
    yield [node, inside];
    yield* elements(node.children, [...inside, node.tagName]);
  }
}

/** Words that are the trade's here and anybody's elsewhere: a definition may use them in their plain sense. */
const PLAIN = new Set([
  "band",
  "bar",
  "depth",
  "face",
  "length",
  "part",
  "point",
  "round",
  "row",
  "set",
  "tail",
]);

/** What is amiss with the words of a plan's booklet. */
function amiss(plan: Plan): string[] {
  const { nodes, context } = bookletParts(work(plan, STANDARD));
  const faults: string[] = [];
  const words = nodes.find(({ properties }) => properties.id === "words") as Element;
  const ids = [...elements([words])].flatMap(([{ properties }]) => String(properties.id ?? ""));
  for (const node of nodes) {
    const seen = new Set<string>();
    for (const [{ tagName, properties }, inside] of elements([node])) {
      const href = String(properties.href ?? "");
      if (tagName !== "a" || !href.startsWith("#word-")) continue;
      const where = `${node.properties.id}: ${href}`;
      if (!ids.includes(href.slice(1))) faults.push(`${where} leads nowhere`);
      if (seen.has(href)) faults.push(`${where} a second time`);
      seen.add(href);
      if (inside.some((name) => ["a", "h2", "h3", "th"].includes(name))) faults.push(`${where} in ${inside}`);
    }
  }
  const terms = [...elements([words])].flatMap(([node]) =>
    node.tagName === "dfn" ? [textOf(node.children)] : [],
  );
  const written = writeChapters(plan, context);
  const known = toldIn(written.map(({ markdown }) => markdown).join());
  for (const { name, markdown } of written)
    for (const [, mark = ""] of markdown.matchAll(MARKED))
      if (/^#\p{L}/u.test(mark) && !known.has(mark.slice(1))) faults.push(`${name}: ${mark} is not told`);
  const means = textOf([words]);
  for (const word of WORD_LIST)
    if (!terms.includes(word) && !PLAIN.has(word) && new RegExp(`\\b${word}s?\\b`, "i").test(means))
      faults.push(`"${word}" is said and not told`);
  return faults;
}

describe("a booklet's words", () => {
  it.each(Object.keys(GARMENTS))("%s", (name) => expect(amiss(garment(name))).toEqual([]));

  it("of random garments", () => {
    fc.assert(
      fc.property(randomRecipe, (source) => {
        const { plan } = tried(source);
        if (plan) expect(amiss(plan)).toEqual([]);
      }),
      { numRuns: 15 },
    );
  });
});

describe("a maker's own text", () => {
  const html = (body: string, own: Parameters<typeof readNotebook>[2] = []) => {
    const { notebook, messages } = readNotebook("recipe.md", { text: body, line: 20 }, own);
    const parts = bookletParts(work(planOf(), notebook), undefined, { notebook, pictures: new Map() });
    const links = parts.nodes.flatMap((node) =>
      [...elements([node])].flatMap(([{ properties }]) => {
        const href = String(properties.href ?? "");
        return href.startsWith("#word-") ? [`${node.properties.id} ${href}`] : [];
      }),
    );
    return { codes: messages.map(({ code }) => code), links };
  };
  const NOTE = 'A {{word "bite"}}, two {{word "bites" "bite"}}, a {{word "flounce"}}.\n\n';

  it("leads to what this garment's booklet tells", () => {
    const { codes, links } = html(`${NOTE}{{> the-rest}}\n`);
    expect(codes).toEqual([]);
    expect(links.filter((link) => link.startsWith("note-1"))).toEqual(["note-1 #word-bite"]);
  });

  it("leads nowhere without the chapter", () =>
    expect(html(`${NOTE}{{> cautions}}\n\n{{> gauging}}\n`).links).toEqual([]));

  it("in a link stays the link's", () =>
    expect(html('[the {{word "bite"}}](#gauging), a {{word "bite"}}.\n\n{{> the-rest}}\n').links[0]).toBe(
      "note-1 #word-bite",
    ));

  it("may tell words of its own, and only those and the standard ones are known", () => {
    const own = [
      { file: "templates/words.md", text: '## Words\n\n- **{{term "ruching"}}**: gathered trimming.\n' },
    ];
    const body = 'A {{word "Ruching"}} and a {{word "bite"}}.\n\n{{> the-rest}}\n';
    expect(html(body, own)).toEqual({ codes: [], links: ["note-1 #word-ruching"] });
    expect(html(body).codes).toEqual(["unknown-word"]);
    expect(html('{{word "bite" bite}}\n').codes).toContain("helper");
  });
});

describe("one word for one thing", () => {
  const LITERAL = /"(?:[^"\\\n]|\\.)*"|`(?:[^`\\]|\\.)*`/g;
  const files = (folder: string): string[] =>
    readdirSync(new URL(folder, ROOT), { recursive: true, encoding: "utf8" })
      .filter((name) => name.endsWith(".ts"))
      .map((name) => `${folder}${name}`);
  const literals = (path: string): string => (text(path).match(LITERAL) ?? []).join("\n");
  const said = new Map([
    ...chapters.map((name) => [`templates/${name}`, text(`templates/${name}`)] as const),
    ...["commission", "class"].map(
      (name) => [`templates/sheets/${name}.md`, text(`templates/sheets/${name}.md`)] as const,
    ),
    ["README.md", text("README.md")] as const,
    ...["solve", "figure", "guide", "booklet", "recipe/schema", "recipe/check", "recipe/messages"]
      .flatMap((folder) => files(`src/${folder}/`))
      .map((path) => [path, literals(path)] as const),
  ]);

  it.each(instead)("$word, and never $not", ({ word, not }) => {
    expect(WORD_LIST).toContain(word);
    const found = [...said].flatMap(([path, all]) =>
      [...all.matchAll(new RegExp(`(?<![\\w-])(?:${not})(?![\\w-])`, "gi"))].map(
        ([one]) => `${path}: ${one}`,
      ),
    );
    expect(found).toEqual([]);
  });

  it("the wordings of values name what the glossary tells", () => {
    const all = Object.values(NAMES)
      .map(({ about }) => about)
      .join("\n");
    const used = WORD_LIST.filter((word) => new RegExp(`\\b${word}`, "i").test(all));
    expect(used.length).toBeGreaterThan(30);
  });
});
