/** Puts a key in that is not there yet, at its place in the order of the reference. */
import { isMap, isScalar, type Node, type YAMLMap } from "yaml";
import { KEYS } from "../keys.ts";
import type { Edit, Entry, Step } from "./entry.ts";
import { breakOf, endOfEntry, lineEnd, lineStart, startOf } from "./lines.ts";
import { written } from "./written-as.ts";

const ORDER: ReadonlyMap<string, number> = new Map(KEYS.map(({ path }, i) => [path, i]));

const orderOf = (path: string): number =>
  ORDER.get(path.replace(/\.\d+(?=\.|$)/g, ".*")) ?? Number.MAX_SAFE_INTEGER;

/** `way` leads as far as the path is there. */
export function insertion(
  text: string,
  contents: Node | null,
  way: readonly Step[],
  path: readonly string[],
  value: string,
): Edit | undefined {
  const last = way.at(-1);
  if (!last) return isNothing(contents) ? first(text, path, value) : undefined;
  const depth = last.path === "" ? 0 : last.path.split(".").length;
  if (last.entry) return under(text, last, path.slice(depth + 1), value);
  const rest = path.slice(depth);
  const key = rest[0] as string;
  const order = orderOf(last.path === "" ? key : `${last.path}.${key}`);
  const entries = last.map.items as Entry[];
  const before = entries.filter((entry) => orderOf(pathOf(last, entry)) < order).at(-1);
  return last.map.flow ? inFlow(last.map, before, rest, value) : inBlock(text, entries, before, rest, value);
}

/** Is nothing written there yet? */
const isNothing = (node: Node | null): boolean =>
  node === null || (isScalar(node) && node.range?.[0] === node.range?.[1]);

const pathOf = ({ path }: Step, { key }: Entry): string => {
  const name = isScalar(key) ? String(key.value) : "";
  return path === "" ? name : `${path}.${name}`;
};

const flowing = ([key, ...rest]: readonly string[], value: string): string =>
  `${key}: ${rest.length === 0 ? written(value) : `{${flowing(rest, value)}}`}`;

function standing(
  [key, ...rest]: readonly string[],
  value: string,
  indent: string,
  lineBreak: string,
): string {
  return rest.length === 0
    ? `${indent}${key}: ${written(value)}`
    : `${indent}${key}:${lineBreak}${standing(rest, value, `${indent}  `, lineBreak)}`;
}

const first = (text: string, path: readonly string[], value: string): Edit => ({
  from: 0,
  to: 0,
  insert: standing(path, value, "", breakOf(text)) + breakOf(text),
});

/** Below a key that has nothing under it yet. */
function under(text: string, { entry, map }: Step, rest: readonly string[], value: string): Edit | undefined {
  const { key, value: node } = entry as Entry;
  if (!isNothing(node)) return undefined;
  if (map.flow) {
    const colon = text.indexOf(":", key.range?.[1] ?? 0) + 1;
    return { from: colon, to: colon, insert: ` {${flowing(rest, value)}}` };
  }
  const at = lineEnd(text, key.range?.[1] ?? 0);
  const lineBreak = breakOf(text);
  const lines = standing(rest, value, `${indentOf(text, entry as Entry)}  `, lineBreak);
  return { from: at, to: at, insert: lineBreak + lines };
}

/** The column of a key, as spaces: an entry of a list may begin behind its `- `. */
const indentOf = (text: string, entry: Entry): string =>
  " ".repeat(startOf(entry) - lineStart(text, startOf(entry)));

function inBlock(
  text: string,
  entries: readonly Entry[],
  before: Entry | undefined,
  rest: readonly string[],
  value: string,
): Edit | undefined {
  const lineBreak = breakOf(text);
  const [beginning] = entries;
  if (!beginning) return undefined;
  const indent = indentOf(text, beginning);
  const lines = standing(rest, value, indent, lineBreak);
  if (before) {
    const at = lineEnd(text, endOfEntry(before));
    return { from: at, to: at, insert: lineBreak + lines };
  }
  const at = startOf(beginning);
  return { from: at, to: at, insert: `${lines.slice(indent.length)}${lineBreak}${indent}` };
}

function inFlow(
  map: YAMLMap,
  before: Entry | undefined,
  rest: readonly string[],
  value: string,
): Edit | undefined {
  const pair = flowing(rest, value);
  if (before) {
    const at = endOfEntry(before);
    return { from: at, to: at, insert: `, ${pair}` };
  }
  const open = map.range?.[0];
  if (open === undefined || !isMap(map)) return undefined;
  return { from: open + 1, to: open + 1, insert: map.items.length === 0 ? pair : `${pair}, ` };
}
