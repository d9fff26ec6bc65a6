/**
 * One chapter of several sizes as one: what says the same stands once, a number that differs as a letter of the chapter's table,
 * a table with a column for each size, and words that only some sizes have under those sizes' names.
 */
import { aligned } from "./align.ts";
import { type Block, blocksOf, joined } from "./blocks.ts";
import { columnHead, type KeyRow, Keys, ofSize, onlyFor } from "./keys.ts";
import { keyOf, type Piece, type Print, piecesOf, printsOf, textOf } from "./mask.ts";
import { writeTable } from "./pipe.ts";
import { tablesBySize } from "./tables.ts";

/** What a chapter's texts stand for beside themselves. */
export interface Around {
  /** The sizes, in order. */
  readonly names: readonly { readonly name: string }[];
  /** What a value is, by its name. */
  about(name: string): string | undefined;
  /** The Markdown of a drawing by its path (`figures/balance.svg`), of one of these sizes. */
  drawing(line: string, path: string, sizes: readonly number[]): string;
}

export interface MergedChapter {
  /** Markdown with number marks. */
  readonly markdown: string;
  readonly rows: readonly KeyRow[];
}

/** @param chapters each size's Markdown of the chapter, number marks in it, where the size has it */
export function mergedChapter(chapters: readonly (string | undefined)[], around: Around): MergedChapter {
  const whole = chapters.flatMap((chapter, size) => (chapter === undefined ? [] : [size]));
  const lists = chapters.map((chapter) => (chapter === undefined ? [] : blocksOf(chapter)));
  const keys = new Keys(placeLetters(lists));
  const blocks = aligned(lists, blockKey).flatMap((row) => oneBlock(row, whole, keys, around));
  const all =
    whole.length === around.names.length ? [] : [paragraph(`**${onlyFor(whole, around.names)} only.**`)];
  const table = keys.rows.length === 0 ? [] : keyTable(keys.rows, whole, around);
  const isTitle = blocks[0]?.kind === "heading" && blocks[0].marker.startsWith("## ");
  const [title, rest] = isTitle ? [blocks.slice(0, 1), blocks.slice(1)] : [[], blocks];
  return { markdown: joined([...title, ...all, ...table, ...rest]), rows: keys.rows };
}

/** Single letters that the chapter prints: places of the map, rows of a figure. */
const placeLetters = (lists: readonly (readonly Block[])[]): Set<string> =>
  new Set(
    lists
      .flat()
      .flatMap(({ text }) => printsOf(text))
      .map(({ text }) => text)
      .filter((text) => /^[a-z]$/.test(text)),
  );

const PATH = /\]\(([^)\s]+)\)$/;
const pathOf = (text: string): string => PATH.exec(text)?.[1] ?? "";

function blockKey({ kind, marker, text }: Block): string {
  if (kind === "figure") return `figure ${pathOf(text)}`;
  if (kind === "table") return `table ${keyOf(text.split("\n")[0] ?? "")}`;
  return `${kind} ${marker.replace(/^\d+/, "1")}${keyOf(text)}`;
}

const paragraph = (text: string, indent = ""): Block => ({ kind: "text", indent, marker: "", text });

function oneBlock(
  row: readonly (Block | undefined)[],
  whole: readonly number[],
  keys: Keys,
  around: Around,
): Block[] {
  const sizes = row.flatMap((block, size) => (block ? [size] : []));
  const first = row[sizes[0] as number] as Block;
  if (first.kind === "table")
    return tablesBySize(
      row.map((block) => block?.text),
      around.names,
      whole,
    );
  const text =
    first.kind === "figure"
      ? around.drawing(first.text, pathOf(first.text), sizes)
      : keyed(
          row.map((block) => block?.text),
          keys,
          around,
        );
  const block = { ...first, text };
  if (sizes.length === whole.length) return [block];
  const label = onlyFor(sizes, around.names);
  if (first.kind === "item" || first.kind === "text") return [{ ...block, text: `**${label}:** ${text}` }];
  if (first.kind === "heading") return [{ ...block, text: `${text} (${label})` }];
  return [paragraph(`**${label}:**`, first.indent), block];
}

/** A text whose differing numbers are letters. */
function keyed(texts: readonly (string | undefined)[], keys: Keys, { about }: Around): string {
  const prints = texts.map((text) => (text === undefined ? undefined : printsOf(text)));
  const first = texts.find((text) => text !== undefined) as string;
  let at = 0;
  const pieces = piecesOf(first);
  return pieces
    .map((piece, i) => {
      if (typeof piece === "string") return piece;
      const ofEach = prints.map((list) => list?.[at]);
      at += 1;
      const isSame = ofEach.every((print) => print === undefined || print.text === piece.text);
      return isSame ? textOf([piece]) : keys.letter(about(piece.name) ?? words(pieces, i), ofEach);
    })
    .join("");
}

/** How many letters of the text before and after say what a nameless number is. */
const BEFORE = 32;
const AFTER = 22;

function words(pieces: readonly Piece[], at: number): string {
  const plain = (some: readonly Piece[]): string =>
    some
      .map((piece) => (typeof piece === "string" ? piece : /\d/.test(piece.text) ? "…" : piece.text))
      .join("")
      .replace(/[*_`\n]+/g, " ");
  const before = plain(pieces.slice(0, at));
  const after = plain(pieces.slice(at + 1));
  const head = before.length > BEFORE ? before.slice(-BEFORE).replace(/^\S*\s/, "… ") : before;
  const tail = after.length > AFTER ? after.slice(0, AFTER).replace(/\s\S*$/, " …") : after;
  return `“${`${head}▢${tail}`.replace(/\s+/g, " ").trim()}”`;
}

/** The table at the head of a chapter: a row for each letter, a column for each size. */
function keyTable(rows: readonly KeyRow[], sizes: readonly number[], { names }: Around): Block[] {
  const print = (one: Print | undefined, size: number): string => (one ? ofSize(size, one) : "\\-");
  return [
    paragraph(
      "**The numbers of each size.** A letter in the text stands for the number in your size’s column.",
    ),
    {
      kind: "table",
      indent: "",
      marker: "",
      text: writeTable({
        head: ["", "What", ...sizes.map((size) => columnHead(size, names[size]?.name ?? ""))],
        rows: rows.map(({ letter, about, prints }) => [
          letter,
          escaped(about),
          ...sizes.map((size) => print(prints[size], size)),
        ]),
      }),
    },
  ];
}

const escaped = (about: string): string => textOf([{ name: "", text: about }]);
