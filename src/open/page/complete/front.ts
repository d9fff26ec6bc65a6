/** Keys and values of the measures, with what they mean: from the schema, as the reference has it. */
import {
  type Completion,
  type CompletionContext,
  type CompletionResult,
  snippet,
} from "@codemirror/autocomplete";
import { KEYS, type Key } from "../../../recipe/keys.ts";
import { keyWords } from "../../../recipe/reference/tables.ts";
import { describe } from "./describe.ts";
import { inFront } from "./where.ts";

const above = (path: string): string => path.slice(0, Math.max(0, path.lastIndexOf(".")));

/** Keys by the block they stand in. */
const IN_BLOCK = new Map<string, Key[]>();
for (const key of KEYS) IN_BLOCK.set(above(key.path), [...(IN_BLOCK.get(above(key.path)) ?? []), key]);

/** Completes keys and choices between the two lines of `---`. */
export function completeFront({ state, pos, explicit }: CompletionContext): CompletionResult | null {
  const text = state.doc.sliceString(0, pos);
  if (!/^\uFEFF?---[ \t]*\n/.test(text) || /\n---[ \t]*\n/.test(text)) return null;
  const lines = text.split("\n").slice(1);
  const line = state.doc.lineAt(pos);
  const after = state.doc.sliceString(line.to, state.doc.length).split("\n---")[0]?.split("\n") ?? [];
  const where = inFront(lines, after);
  if (!where || (!explicit && where.written === "" && where.key === undefined)) return null;
  const from = pos - where.written.length;
  const keys = IN_BLOCK.get(where.block) ?? [];
  if (where.key !== undefined) return values(keys, where.key, from);
  const options = keys
    .filter(({ name }) => !where.siblings.includes(name) || name === where.written)
    .map((key, i) => keyOption(key, where.indent, where.inBraces, keys.length - i));
  return options.length === 0 ? null : { from, options, validFor: /^[\w-]*$/ };
}

function keyOption(key: Key, indent: number, inBraces: boolean, order: number): Completion {
  const { name, shape } = key;
  const words = keyWords(key);
  const space = " ".repeat(indent + 2);
  const apply =
    shape.is === "field"
      ? `${name}: `
      : inBraces
        ? snippet(`${name}: {\${}}`)
        : `${name}:\n${space}${shape.is === "list" ? "- " : ""}`;
  return {
    label: name,
    detail: words.written ?? "",
    info: () => describe(words),
    apply,
    type: "property",
    boost: Math.min(99, order),
  };
}

function values(keys: readonly Key[], name: string, from: number): CompletionResult | null {
  const key = keys.find((one) => one.name === name);
  if (key?.shape.is !== "field") return null;
  const { meta } = key.shape;
  const words = keyWords(key);
  const choices = meta.kind === "flag" ? ["true", "false"] : (meta.options ?? []);
  const usual = meta.byDefault?.flatMap((one) => [one.in, one.cm]) ?? [];
  const offered = choices.length > 0 ? choices : [...new Set([...usual, meta.example])];
  const options = offered.map((label): Completion => {
    const detail = usual.includes(label) ? "usual" : choices.length > 0 ? "" : "as an example";
    return { label, detail, info: () => describe(words), type: "constant" };
  });
  return { from, options };
}
