/** A hostile project as data: what it is in a sentence, what stands in it, and what must come of it. */
import { mkdirSync, symlinkSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { type Keys, recipeText } from "../recipes.ts";

/** A text: as it stands, a piece repeated, or several one after the other. */
export type Text = string | { readonly repeat: Text; readonly times: number } | readonly Text[];

export interface Row {
  /** What it is. */
  readonly what: string;
  /** The folder's name; else "skirt". */
  readonly name?: string;
  /** The whole recipe; else the plain one with `keys` changed, lines of `front` added at the end of its measures, and `body` below. */
  readonly whole?: Text;
  readonly keys?: Keys;
  readonly front?: Text;
  readonly body?: Text;
  /** Files beside it: a text, bytes in hexadecimal, or a link to a path of the row's own folder. */
  readonly files?: Readonly<Record<string, Text | { readonly bytes: string } | { readonly link: string }>>;
  /** A record that is added first. */
  readonly record?: Text;
  /** What must come of it; one of them, and with the code of a message where one is named. */
  readonly is: "built" | "refused";
  readonly says?: string;
  /** Takes long: only in the long run. */
  readonly long?: boolean;
  /** So many booklets are made of it, where it is more than one. */
  readonly booklets?: number;
}

export function textOf(text: Text): string {
  if (typeof text === "string") return text;
  if ("repeat" in text) return textOf(text.repeat).repeat(text.times);
  return text.map(textOf).join("");
}

/** The recipe's text. */
export function recipeOf({ whole, keys = {}, front, body }: Row): string {
  if (whole !== undefined) return textOf(whole);
  const plain = recipeText(keys);
  const more = front === undefined ? plain : plain.replace(/---\n$/, () => `${textOf(front)}\n---\n`);
  return `${more}${textOf(body ?? "")}`;
}

/** Writes a row's project; gives the project's folder. */
export function writeRow(row: Row, place: string): string {
  const folder = join(place, row.name ?? "skirt");
  mkdirSync(folder, { recursive: true });
  writeFileSync(join(place, "secret.txt"), SECRET);
  writeFileSync(
    join(place, "secret.png"),
    Buffer.concat([Buffer.from("89504e470d0a1a0a", "hex"), Buffer.from(SECRET)]),
  );
  writeFileSync(join(folder, "recipe.md"), recipeOf(row));
  for (const [file, content] of Object.entries(row.files ?? {})) {
    const path = join(folder, file);
    mkdirSync(dirname(path), { recursive: true });
    if (typeof content === "object" && "link" in content) symlinkSync(join(place, content.link), path);
    else if (typeof content === "object" && "bytes" in content)
      writeFileSync(path, Buffer.from(content.bytes, "hex"));
    else writeFileSync(path, textOf(content));
  }
  if (row.record !== undefined) writeFileSync(join(folder, "record.json"), textOf(row.record));
  return folder;
}

/** What stands outside the project, and may be in nothing that comes out. */
export const SECRET = "this stands outside the project";
