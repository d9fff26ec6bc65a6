/** What a booklet's page carries of its making: recipe, version, numbers, checksums; put in, and read back. */
import { createHash } from "node:crypto";
import { UNSEALED } from "../booklet/page.ts";
import type { Paces } from "../recipe/as-made/pace.ts";
import { exact, unitOf } from "../solve/json.ts";
import type { Value } from "../solve/plan.ts";
import type { ProjectFiles } from "./project-files.ts";

/** One number as a page carries it: exact, its unit, as printed. */
export type CarriedValue = readonly [exact: string, unit: string, shown: string];

export interface Carried {
  /** The program's version. */
  readonly plainwork: string;
  /** The texts it was made from, by their path beside the recipe. */
  readonly files: Readonly<Record<string, string>>;
  readonly paces: Paces;
  /** Which size it is, where the recipe has sizes. */
  readonly size?: string;
  readonly values: Readonly<Record<string, CarriedValue>>;
}

const sha256 = (text: string): string => createHash("sha256").update(text).digest("hex");

export const carriedValue = ({ quantity, shown }: Value): CarriedValue => [
  exact(quantity),
  unitOf(quantity),
  shown,
];

/** The JSON that a page carries, and its checksum. Same project, same program: same bytes. */
export function carried(made: {
  readonly files: ProjectFiles;
  readonly paces: Paces;
  readonly values: ReadonlyMap<string, Value>;
  readonly version: string;
  readonly size?: string;
}): { readonly text: string; readonly sum: string } {
  const { recipe, evidence, asMade, templates } = made.files;
  const all: Carried = {
    plainwork: made.version,
    files: Object.fromEntries(
      [recipe, evidence, asMade, ...templates].flatMap((file) => (file ? [[file.file, file.text]] : [])),
    ),
    paces: made.paces,
    ...(made.size === undefined ? {} : { size: made.size }),
    values: Object.fromEntries([...made.values].map(([name, value]) => [name, carriedValue(value)])),
  };
  const text = JSON.stringify(all).replaceAll("<", "\\u003c");
  return { text, sum: sha256(text) };
}

/** A page with the checksum of the whole in its place. */
export const sealed = (html: string): string =>
  html.replace(`data-page="${UNSEALED}"`, () => `data-page="${sha256(html)}"`);

/** What a page says of itself. `damaged` says what is not as it was built. */
export interface ReadBack {
  readonly carried: Carried;
  readonly damaged?: "page" | "recipe";
}

const SOURCE =
  /<script type="application\/json" id="source" data-sum="([0-9a-f]{64})" data-page="([0-9a-f]{64})">([^<]*)<\/script>/;

/** Reads back what a page carries; undefined where it carries nothing that can be read. */
export function readBack(html: string): ReadBack | undefined {
  const [whole, sum, page, text] = SOURCE.exec(html) ?? [];
  if (whole === undefined || text === undefined) return undefined;
  let data: Partial<Carried> | null;
  try {
    data = JSON.parse(text) as Partial<Carried> | null;
  } catch {
    return undefined;
  }
  const texts = Object.values(data?.files ?? {});
  if (typeof data?.plainwork !== "string" || !data.values || texts.length === 0) return undefined;
  if (!texts.every((one) => typeof one === "string")) return undefined;
  const found = { ...data, paces: data.paces ?? {} } as Carried;
  if (sha256(text) !== sum) return { carried: found, damaged: "recipe" };
  const unsealed = html.replace(`data-page="${page}"`, `data-page="${UNSEALED}"`);
  return sha256(unsealed) === page ? { carried: found } : { carried: found, damaged: "page" };
}
