/** The chapters of the booklet of all sizes: those of the garment merged, the sizes before them, the other numbers and the guides behind. */
import { escapeMarkdown } from "../escape.ts";
import { marked } from "../marks.ts";
import type { Section } from "../notebook/compose.ts";
import { aligned } from "./align.ts";
import { columnHead, type KeyRow, ofSize } from "./keys.ts";
import { type Around, mergedChapter } from "./merge.ts";
import { type NumberGroup, type NumberRow, numbersOf } from "./numbers.ts";
import { writeTable } from "./pipe.ts";
import { type SizeSet, sizesWord } from "./set.ts";

export interface SetChapter {
  readonly name: string;
  readonly markdown: string;
  readonly isNote: boolean;
  readonly rows: readonly KeyRow[];
}

/** Chapters that each size has its own of, in its own booklet. */
const APART = new Set(["workings", "guides"]);

/** @param sections each size's sections, number marks in them */
export function chaptersOfSet(
  set: SizeSet,
  sections: readonly (readonly Section[])[],
  around: Around,
): SetChapter[] {
  const own = sections.map((list) => list.filter(({ name }) => !APART.has(name)));
  const merged = aligned(own, ({ name }) => name).map((row): SetChapter => {
    const { name, isNote } = row.find((section) => section) as Section;
    return {
      name,
      isNote,
      ...mergedChapter(
        row.map((section) => section?.markdown),
        around,
      ),
    };
  });
  const [first, ...others] = numbersOf(set.sizes);
  const plain = (name: string, markdown: string): SetChapter => ({ name, markdown, isNote: false, rows: [] });
  return [
    plain(
      "sizes",
      [chooseBy(set), first ? tableOf(first, set) : "", ...faultsOf(set)].filter(Boolean).join("\n\n"),
    ),
    ...merged,
    ...(others.length > 0 ? [plain("numbers", everyNumber(others, set))] : []),
    plain("guides", guides(set)),
  ];
}

const link = (words: string, folder: string, file: string): string =>
  `[${escapeMarkdown(words)}](${encodeURI(folder)}/${file})`;

/** Links to each size's own booklet. */
export const ownBooklets = ({ sizes }: SizeSet): string =>
  sizes.map(({ name, folder }) => link(name, folder, "booklet.md")).join(" · ");

function chooseBy(set: SizeSet): string {
  const all = set.sizes.map((_, i) => i);
  return `## The sizes

This booklet is for ${sizesWord(all, set.sizes).replace(/^S/, "s")}: the words once, the numbers in a column for each size. Choose by the waist, taken over everything worn beneath, and then by the length; the two need not be those of one size, but only a booklet worked out for your own measures is sure to fit both. Mark your size's column in every table before you begin. A letter in a box, or in square brackets, stands for a number: look it up in the table at the head of that chapter, in your size's column.

Each size also has a booklet of its own, with its own drawings, its guides at true size and every working: ${ownBooklets(set)}.`;
}

/** What does not work out, and why. */
const faultsOf = ({ faults }: SizeSet): string[] =>
  faults.map(({ name, messages }) => {
    const why = messages
      .filter(({ level }) => level === "error")
      .map(({ text, hint }) => `${text}${hint ? ` (${hint})` : ""}`)
      .join("; ");
    return `**Size ${printed(name)} does not work out:** ${printed(why)}. There is no booklet for it.`;
  });

const printed = (text: string): string => marked("", text);

/** Rows of left and right that say the same as one. */
function bothSides(rows: readonly NumberRow[]): NumberRow[] {
  const key = ({ about, cells }: NumberRow): string =>
    JSON.stringify([about, cells.map((cell) => cell?.shown ?? null)]);
  const all = new Map(rows.map((row) => [key(row), row]));
  const isLeft = ({ about }: NumberRow): boolean => /\bleft\b/.test(about);
  const isRight = ({ about }: NumberRow): boolean => /\bright\b/.test(about);
  const other = (row: NumberRow, from: RegExp, to: string): NumberRow | undefined =>
    all.get(key({ ...row, about: row.about.replace(from, to) }));
  return rows.flatMap((row) => {
    if (isRight(row) && !isLeft(row) && other(row, /\bright\b/, "left")) return [];
    if (!isLeft(row) || isRight(row) || !other(row, /\bleft\b/, "right")) return [row];
    const about = row.about
      .replace("at the left side", "at the sides")
      .replace("wearer's left, for unlike sides", "sides")
      .replace(/\bleft\b/, "left and right");
    return [{ ...row, about }];
  });
}

/** A group's table: a row for each number, a column for each size. */
export function tableOf({ rows: all }: NumberGroup, { sizes }: SizeSet): string {
  const rows = bothSides(all);
  return writeTable({
    head: ["What", ...sizes.map(({ name }, i) => columnHead(i, name))],
    rows: rows.map(({ about, name = "", cells }) => [
      printed(about.replace(/^./, (letter) => letter.toUpperCase())),
      ...sizes.map((_, i) => {
        const cell = cells[i];
        return cell ? ofSize(i, { name, text: cell.shown }) : "\\-";
      }),
    ]),
  });
}

const everyNumber = (groups: readonly NumberGroup[], set: SizeSet): string =>
  [
    "## Every number that differs",
    "What is not in these tables, nor in that of the sizes, is the same in every size. How each number was worked out stands in the size’s own booklet.",
    ...groups.map((group) => `### ${group.title}\n\n${tableOf(group, set)}`),
  ].join("\n\n");

const guides = (set: SizeSet): string =>
  `## Guides at true size

Guides are drawn at true size, so each size has its own. Print those of your size at 100 %, from the end of its booklet, and measure the square of 1 in on every page before you cut: ${ownBooklets(set)}.`;

/** The size table by itself. */
export function sizesMarkdown(set: SizeSet): string {
  const groups = numbersOf(set.sizes);
  const others = groups.slice(1).map((group) => `## ${group.title}\n\n${tableOf(group, set)}`);
  return [
    `# ${printed(set.title)}: the sizes`,
    `Every number that differs, for ${sizesWord(
      set.sizes.map((_, i) => i),
      set.sizes,
    ).replace(/^S/, "s")}. Booklets: [all sizes](booklet.md) · ${ownBooklets(set)}.`,
    ...groups.slice(0, 1).map((group) => `## ${group.title}\n\n${tableOf(group, set)}`),
    ...faultsOf(set),
    ...(others.length > 0 ? others : ["Nothing else differs."]),
  ].join("\n\n");
}
