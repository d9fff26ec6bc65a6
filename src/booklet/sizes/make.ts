/** Everything that is published of a garment's sizes together: one booklet, one table. Each size's own booklet is made as any other. */
import version from "plainwork:version";
import type { Figure } from "../../figure/figure.ts";
import { drawFigure, figuresOf } from "../../figure/index.ts";
import { contents } from "../contents.ts";
import { escapeMarkdown } from "../escape.ts";
import { escapedMarks } from "../marks.ts";
import { isAsked, MEASURE_YOUR_OWN, ownMeasuresPage } from "../measure-your-own.ts";
import { writeSections } from "../notebook/compose.ts";
import { asNote } from "../notebook/note.ts";
import { ownContext } from "../notebook/own-context.ts";
import { apart } from "../notebook/repeated-figures.ts";
import { work } from "../notebook/work.ts";
import { toldIn, WORDS_CHAPTER } from "../words.ts";
import { chaptersOfSet, type SetChapter, sizesMarkdown } from "./chapters.ts";
import { setJson } from "./json.ts";
import type { Around } from "./merge.ts";
import { type Drawings, setChapterNodes } from "./nodes.ts";
import { setPage } from "./page.ts";
import type { SizeSet } from "./set.ts";

/** The files of a set: booklet.html, booklet.md, sizes.html, sizes.md, sizes.json, and measure-your-own.html where it is wanted. */
export function makeSet(set: SizeSet): ReadonlyMap<string, string> {
  const made = set.sizes.map(({ plan }) => {
    // The words of all sizes name none.
    const { size: _, ...recipe } = plan.recipe;
    const worked = work({ ...plan, recipe }, set.notebook);
    const figures = new Map<string, Figure>(
      figuresOf(worked.plan).map((name) => [name, drawFigure(name, worked.plan)]),
    );
    const titles = Object.fromEntries([...figures].map(([name, { title }]) => [name, title]));
    const context = ownContext(worked, titles);
    return { figures, sections: writeSections(worked, set.notebook, context).sections };
  });
  const around = aroundOf(
    set,
    made.map(({ figures }) => figures),
  );
  const chapters = chaptersOfSet(
    set,
    made.map(({ sections }) => sections),
    around,
  );
  const drawings: Drawings = {
    find: (folder, path) => {
      const figures = made[set.sizes.findIndex((size) => size.folder === folder)]?.figures;
      return figures?.get(path.replace(/^figures\//, ""));
    },
  };
  const told = toldIn(chapters.find(({ name }) => name === WORDS_CHAPTER)?.markdown ?? "");
  const nodes = chapters.map((chapter) => {
    const section = setChapterNodes(chapter, set, drawings, told);
    return chapter.isNote ? asNote(section) : section;
  });
  const main = set.notebook.body ? apart(nodes) : nodes;
  const table = setChapterNodes({ name: "sizes", ...tableChapter(set) }, set, drawings, new Set());
  return new Map([
    ["booklet.html", setPage(set, set.title, [contents(main)], main)],
    ["booklet.md", escapedMarks(markdownOf(set, chapters))],
    ["sizes.html", setPage(set, `${set.title}: the sizes`, [], [table])],
    ["sizes.md", escapedMarks(`${sizesMarkdown(set)}\n`)],
    ...(isAsked(set.base, true)
      ? [[MEASURE_YOUR_OWN, ownMeasuresPage(set.base, version, set)] as const]
      : []),
    ["sizes.json", `${JSON.stringify(setJson(set, version), null, 1)}\n`],
  ]);
}

const markdownOf = ({ title }: SizeSet, chapters: readonly SetChapter[]): string =>
  [`# ${escapeMarkdown(title)}`, ...chapters.map(({ markdown }) => markdown)].join("\n\n").concat("\n");

/** The table as one section of its page, whose title stands above it. */
const tableChapter = (set: SizeSet) => ({
  markdown: sizesMarkdown(set).replace(/^## /gm, "### ").replace(/^# .*/, "## Every number that differs"),
  rows: [],
});

function aroundOf(set: SizeSet, drawn: readonly ReadonlyMap<string, Figure>[]): Around {
  const middle = Math.floor((set.sizes.length - 1) / 2);
  const pictures = drawn.map(
    (figures) => new Map([...figures].map(([name, one]) => [name, JSON.stringify(one.svg)])),
  );
  return {
    names: set.sizes,
    about: (name) =>
      set.sizes.map(({ plan }) => plan.values.get(name)?.about).find((about) => about !== undefined),
    drawing: (line, path, sizes) => {
      const of = sizes.includes(middle) ? middle : (sizes[0] as number);
      const { name, folder } = set.sizes[of] as SizeSet["sizes"][number];
      const figure = /^figures\/([\w-]+)\.svg$/.exec(path)?.[1];
      if (figure === undefined) return line;
      const isSame = sizes.every((size) => pictures[size]?.get(figure) === pictures[of]?.get(figure));
      const said = isSame ? "" : `, drawn for size ${escapeMarkdown(name)}`;
      return line.replace(/\]\([^)]*\)$/, `${said}](${encodeURI(folder)}/${path})`);
    },
  };
}
