/** A recipe to begin with: the measures that are given, and every other key commented out with its default or an example. */
import { FORMAT } from "./measures.ts";
import { type AnySchema, type FieldMeta, isOpen, type Shape, shapeOf } from "./meta.ts";
import { FRONT_MATTER } from "./schema/recipe.ts";

/** Keys of one line by path, as the maker writes them. */
export type Answers = ReadonlyMap<string, string>;

/** Better written by one who has read the reference. */
const LEFT_OUT = new Set(["sizes"]);
/** Where the remarks begin, so that they stand in one column. */
const COLUMN = 46;

/** A line and what it means. */
interface Line {
  readonly text: string;
  readonly about?: string;
}

/** The text of recipe.md. Taking `# ` away from a line, and from the lines of its block above it, puts a key in. */
export function commentedRecipe(answers: Answers): string {
  const lines = blockLines(FRONT_MATTER, "", new Map([["recipe", FORMAT], ...answers])).map(remarked);
  return ["---", ...INTRODUCTION, ...lines, "", ...BELOW, "---", ""].join("\n");
}

/** Lines of every key of a schema, commented out with its default or an example. */
export const commentedKeys = (schema: AnySchema): string[] => blockLines(schema, "", new Map()).map(remarked);

const INTRODUCTION = [
  "# Every length has its unit: 26 1/2 in, 67.3 cm, 2 ft 2 1/2 in. What stands behind a # is not read. To set a key of your",
  "# own, take its # and the space behind it away; what is written there is the usual value, or an example.",
];

const BELOW = [
  "# Below the next line you may write a notebook of your own: prose, chapters by {{> gauging}}, values by {{waist.seam}}.",
  "# Left empty it gives the standard booklet.",
];

function blockLines(schema: AnySchema, path: string, answers: Answers): Line[] {
  const shape = shapeOf(schema);
  if (shape.is !== "block") return [];
  return Object.entries(shape.entries).flatMap(([key, entry]) => {
    const inner = path === "" ? key : `${path}.${key}`;
    const found = shapeOf(entry);
    if (!isOpen(found) || LEFT_OUT.has(inner)) return [];
    const gap = path === "" && found.is === "block" ? [{ text: "" }] : [];
    return [...gap, ...entryLines(entry, found, key, inner, answers)];
  });
}

function entryLines(entry: AnySchema, shape: Shape, key: string, path: string, answers: Answers): Line[] {
  const { about } = shape.meta;
  const given = answers.get(path);
  if (shape.is === "field") {
    const { meta } = shape;
    const written = `${key}: ${quotedIfNeeded(given ?? usual(meta, answers) ?? meta.example)}`;
    const words = meta.options ? `${about}: ${meta.options.join(" | ")}` : about;
    return [{ text: given === undefined ? `# ${written}` : written, about: words }];
  }
  if (shape.is === "list") return [{ text: `# ${key}: ${exampleOf(shape.item)}`, about }];
  const isGiven = [...answers.keys()].some((one) => one.startsWith(`${path}.`));
  const inside = blockLines(entry, path, answers);
  if (isGiven)
    return [{ text: `${key}:`, about }, ...inside.map((line) => ({ ...line, text: `  ${line.text}` }))];
  const commented = inside.map((line) => ({ ...line, text: `#   ${line.text.replace("# ", "")}` }));
  return [{ text: `# ${key}:`, about }, ...commented];
}

/** The default that these answers would take. */
function usual({ byDefault }: FieldMeta, answers: Answers): string | undefined {
  const found = byDefault?.find(({ when }) => !when || when.is.includes(answers.get(when.path)));
  return found?.[answers.get("show") === "cm" ? "cm" : "in"];
}

/** A list of one entry with what it must have and a length. */
function exampleOf(item: AnySchema): string {
  const shape = shapeOf(item);
  if (shape.is !== "block") return "[]";
  const parts = Object.entries(shape.entries).flatMap(([key, entry]) => {
    const inner = shapeOf(entry);
    return inner.is === "field" && !inner.optional ? [`${key}: ${inner.meta.example}`] : [];
  });
  return `[{${parts.join(", ")}}]`;
}

/** In double quotes where YAML would read something else than the text. */
const quotedIfNeeded = (text: string): string =>
  /^[\w(][^:#"'{}[\],&*!|>@`\\]*$/.test(text) && !/\s$/.test(text) ? text : JSON.stringify(text);

const remarked = ({ text, about }: Line): string =>
  about === undefined ? text : `${text.padEnd(COLUMN)}${text.length >= COLUMN ? " " : ""}# ${about}`;
