/**
 * Changes one value in a recipe's text and leaves everything else as it stands: comments, order, quotes, line ends. Used
 * where a measure is changed in a booklet that is open beside its text.
 */
import { isMap, isScalar, isSeq, type Node, parseDocument } from "yaml";
import { frontMatter } from "../front-matter.ts";
import { Source } from "../lines.ts";
import type { Edit, Entry, Step } from "./entry.ts";
import { insertion } from "./insert.ts";
import { removal } from "./remove.ts";
import { written } from "./written-as.ts";

/**
 * The edit that puts a value at a path.
 *
 * A key that is there keeps its place and its quotes; one that is not is put in at its place in the order of the
 * reference, with the blocks it stands in.
 *
 * @param text the whole recipe
 * @param path as in messages: `wearer.waist`, `fullness.zones.1.face`
 * @param value the text to stand there; "" leaves the key without a value; null takes the key out, and blocks that are
 *   left empty with it
 * @returns undefined where the text is so broken, or so unlike, that the value has no place in it; also where there is nothing to change
 */
export function put(text: string, path: string, value: string | null): Edit | undefined {
  const front = frontMatter(new Source("", text));
  if ("code" in front) return undefined;
  const parsed = parseDocument(front.text, {
    schema: "failsafe",
    uniqueKeys: false,
    prettyErrors: false,
    logLevel: "error",
  });
  if (parsed.errors.length > 0) return undefined;
  const edit = inFront(front.text, parsed.contents as Node | null, path.split("."), value);
  return edit && { from: edit.from + front.offset, to: edit.to + front.offset, insert: edit.insert };
}

function inFront(
  text: string,
  contents: Node | null,
  path: readonly string[],
  value: string | null,
): Edit | undefined {
  const way: Step[] = [];
  let node: Node | null = contents;
  for (const [i, key] of path.entries()) {
    if (isSeq(node)) {
      node = (node.items[Number(key)] as Node | undefined) ?? null;
      if (!node) return undefined;
      continue;
    }
    if (!isMap(node)) break;
    const entry = (node.items as Entry[]).find((item) => isScalar(item.key) && item.key.value === key);
    way.push({ map: node, path: path.slice(0, i).join("."), entry });
    if (!entry) break;
    node = entry.value;
  }
  const last = way.at(-1);
  const isThere = way.length > 0 && last?.entry !== undefined && reaches(last, path);
  if (value === null) return isThere ? removal(text, way) : undefined;
  if (!isThere) return insertion(text, contents, way, path, value);
  return replaced(text, last.entry as Entry, value);
}

/** Does the last entry found stand at the end of the path? */
const reaches = ({ path, entry }: Step, whole: readonly string[]): boolean => {
  const key = isScalar(entry?.key) ? String(entry.key.value) : "";
  return (path === "" ? key : `${path}.${key}`) === whole.join(".");
};

function replaced(text: string, { key, value: node }: Entry, value: string): Edit | undefined {
  const colon = text.indexOf(":", key.range?.[1] ?? 0) + 1;
  if (!node || (isScalar(node) && node.range?.[0] === node.range?.[1])) {
    const gap = /^[ \t]?/.exec(text.slice(colon))?.[0].length ?? 0;
    const tail = /[^\s,}\]]/.test(text[colon + gap] ?? "") ? " " : "";
    return value === ""
      ? undefined
      : { from: colon + gap, to: colon + gap, insert: `${gap === 0 ? " " : ""}${written(value)}${tail}` };
  }
  if (!isScalar(node) || !node.range) return undefined;
  const [from, end] = node.range;
  const isBlock = node.type === "BLOCK_LITERAL" || node.type === "BLOCK_FOLDED";
  const insert = `${value === "" ? "" : written(value, node.type)}${isBlock ? "\n" : ""}`;
  return text.slice(from, end) === insert ? undefined : { from, to: end, insert };
}
