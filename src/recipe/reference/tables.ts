/** The reference of a recipe's keys as Markdown, made from the schema: one table a block. */
import { KEYS, type Key } from "../keys.ts";
import type { Default, FieldMeta, Kind, When } from "../meta.ts";
import { limitsTable } from "./limits.ts";

const WRITTEN: Record<Kind, string> = {
  length: "a length",
  number: "a number",
  share: "a share, as 3 %",
  weight: "a weight of cloth: g/m2 or oz/yd2",
  rate: "so many `per min`",
  version: "a number",
  year: "a year",
  text: "a line of text",
  choice: "one of",
  flag: "`true` or `false`",
  money: "a sum, as 12.00",
  price: "a sum `per yd` or `per m`",
  currency: "three letters",
};

const cell = (text: string): string => text.replaceAll("|", "\\|");
const code = (text: string): string => `\`${text}\``;
const row = (cells: readonly string[]): string => `| ${cells.map(cell).join(" | ")} |`;

function written({ kind, options }: FieldMeta): string {
  return kind === "choice" ? (options ?? []).map(code).join(", ") : WRITTEN[kind];
}

const condition = ({ path, is }: When): string =>
  `with ${code(path)} ${is.map((text) => (text === undefined ? "not given" : code(text))).join(" or ")}`;

function oneDefault({ in: inches, cm, when }: Default): string {
  const value = inches === cm ? code(inches) : `${code(inches)} or ${code(cm)}`;
  return when ? `${value} ${condition(when)}` : value;
}

function usual({ byDefault, sameAs, unless }: FieldMeta, required: boolean): string {
  if (required) return "**must be given**";
  const parts = [
    ...(byDefault ?? []).map(oneDefault),
    ...(sameAs ? [`that of ${code(sameAs)}`] : []),
    ...(unless && (byDefault || sameAs) ? [`none with ${code(unless)}`] : []),
  ];
  return parts.join("; else ") || "none";
}

function limits({ above, least, most, step }: FieldMeta): string {
  const parts = [
    ...(step === "whole" ? ["whole"] : step === "half" ? ["whole or half"] : []),
    ...(above ? [`more than ${above}`] : []),
    ...(least ? [`at least ${least}`] : []),
    ...(most ? [`at most ${most}`] : []),
  ];
  return parts.join(", ");
}

/** What a key is in words, for showing beside it: without marks. */
export function keyWords({ shape, required }: Key): { readonly [what: string]: string } {
  const plain = (text: string): string => text.replaceAll("`", "").replaceAll("**", "");
  if (shape.is !== "field") {
    const most = shape.is === "list" && shape.meta.most ? `, at most ${shape.meta.most} entries` : "";
    const kind = shape.is === "list" ? `a list${most}` : "a block of keys";
    return { means: plain(shape.meta.about), written: kind };
  }
  const { meta } = shape;
  return {
    means: plain(`${meta.about}${meta.when ? `; has an effect only ${condition(meta.when)}` : ""}`),
    written: plain(meta.kind === "choice" ? `one of ${written(meta)}` : written(meta)),
    usual: plain(usual(meta, required)),
    limits: limits(meta),
    example: meta.example,
  };
}

const HEAD = ["Key", "What it means", "Written as", "Usual value", "Limits", "Example"];

function fieldRow({ path, shape, required }: Key): string[] {
  if (shape.is !== "field") return [];
  const { meta } = shape;
  const effect = meta.when ? `; has an effect only ${condition(meta.when)}` : "";
  const cells = [
    code(path),
    `${meta.about}${effect}`,
    written(meta),
    usual(meta, required),
    limits(meta),
    code(`${path.split(".").at(-1) ?? path}: ${meta.example}`),
  ];
  return [row(cells)];
}

/** A block's own line: what it is, and whether it must be there. */
function blockRow({ path, shape, required }: Key): string[] {
  if (shape.is === "field") return [];
  const kind =
    shape.is === "list"
      ? `a list${shape.meta.most ? `, at most ${shape.meta.most} entries` : ""}`
      : "a block";
  return [row([code(path), shape.meta.about, kind, required ? "**must be given**" : "", "", ""])];
}

const top = (path: string): string => path.split(".")[0] as string;

/** Every key with its meaning, default, limits and an example, in the order of the schema. */
export function keyTables(): string {
  const blocks = KEYS.filter(({ path, shape }) => !path.includes(".") && shape.is !== "field");
  const first = KEYS.filter(({ path, shape }) => !path.includes(".") && shape.is === "field");
  const table = (keys: readonly Key[]): string =>
    [
      row(HEAD),
      `|${" --- |".repeat(HEAD.length)}`,
      ...keys.flatMap((key) => [...fieldRow(key), ...blockRow(key)]),
    ].join("\n");
  return [
    `### At the top\n\n${table(first)}`,
    ...blocks.map(({ name, shape, required }) => {
      const inside = KEYS.filter(({ path }) => path.includes(".") && top(path) === name);
      const must = required ? " It must be there." : "";
      return `### \`${name}\`\n\n${sentence(shape.meta.about)}.${must}\n\n${table(inside)}`;
    }),
    `### Limits\n\nWhat is past one of these is refused, with the limit in the message. They are far more than a garment needs, so that no file keeps the\nprogram busy for long.\n\n${limitsTable()}`,
  ].join("\n\n");
}

const sentence = (text: string): string => text.replace(/^./, (letter) => letter.toUpperCase());
