/** Where in a recipe the cursor stands: which block of measures, or what of the notebook. */

export interface InFront {
  /** Path of the block that a key or value belongs to: "" at the top, an entry of a list as `*`. */
  readonly block: string;
  /** The key whose value is written here; undefined where a key is. */
  readonly key: string | undefined;
  /** What is written already, up to the cursor. */
  readonly written: string;
  /** Keys that stand in the same braces or at the same indent. */
  readonly siblings: readonly string[];
  /** Spaces before the line's key. */
  readonly indent: number;
  readonly inBraces: boolean;
}

interface Opened {
  readonly indent: number;
  readonly key: string;
}

const KEY = /^(\s*(?:- +)*)([\w-]+):(?:\s|$)/;
const indentOf = (line: string): number => /^ */.exec(line)?.[0].length ?? 0;

/** The line without a remark. */
const bare = (line: string): string => line.replace(/(?:^|\s)#.*$/, "");

/** Which block the last of `lines` (up to the cursor) stands in. `lines` begin below the first `---`; `after` follow it. */
export function inFront(lines: readonly string[], after: readonly string[] = []): InFront | undefined {
  const line = lines.at(-1) ?? "";
  if (/(?:^|\s)#/.test(line)) return undefined;
  const braces = openBraces(line);
  const column = /^(\s*(?:- +)*)/.exec(line)?.[1]?.length ?? 0;
  const way = blocksAbove(lines.slice(0, -1), column, /^\s*-/.test(line));
  if (braces.length > 0) return inBraces(line, braces, way, column);
  const found = KEY.exec(line);
  const block = way.join(".");
  const siblings = siblingsOf([...lines.slice(0, -1)].reverse(), column).concat(siblingsOf(after, column));
  if (found) {
    const key = found[2] as string;
    const written = line.slice(found[0].length).trimStart();
    return { block, key, written, siblings, indent: column, inBraces: false };
  }
  const written = line.slice(column);
  return /^[\w-]*$/.test(written)
    ? { block, key: undefined, written, siblings, indent: column, inBraces: false }
    : undefined;
}

/** Blocks that a line at this indent stands in, from the top. */
function blocksAbove(above: readonly string[], column: number, isEntry: boolean): string[] {
  const way: Opened[] = [];
  let limit = column;
  let entry = isEntry;
  for (const line of [...above].reverse()) {
    const text = bare(line);
    if (text.trim() === "") continue;
    const found = KEY.exec(text);
    const inner = found?.[1]?.length ?? indentOf(text);
    const outer = indentOf(text);
    if (found && outer < limit && inner >= limit && /-/.test(found[1] ?? "")) {
      // An entry of a list begins on this line, behind its dash.
      entry = true;
      limit = outer + 1;
      continue;
    }
    if (found && inner < limit && text.slice(found[0].length).trim() === "") {
      way.unshift({ indent: inner, key: entry ? `${found[2]}.*` : (found[2] as string) });
      entry = /-/.test(found[1] ?? "");
      limit = entry ? outer + 1 : inner;
    }
    if (limit === 0) break;
  }
  return way.map(({ key }) => key);
}

/** Keys at one indent, until the block ends. */
function siblingsOf(lines: readonly string[], column: number): string[] {
  const found: string[] = [];
  for (const line of lines) {
    const text = bare(line);
    if (text.trim() === "") continue;
    const key = KEY.exec(text);
    const at = key?.[1]?.length ?? indentOf(text);
    if (at < column) break;
    if (key && at === column) found.push(key[2] as string);
    if (key && /-/.test(key[1] ?? "") && at === column) break;
  }
  return found;
}

/** Places of braces that are open at the line's end. */
function openBraces(line: string): number[] {
  const open: number[] = [];
  for (const [i, letter] of [...line].entries()) {
    if (letter === "{") open.push(i);
    if (letter === "}") open.pop();
  }
  return open;
}

function inBraces(
  line: string,
  braces: readonly number[],
  way: readonly string[],
  column: number,
): InFront | undefined {
  const keys = braces.map((at) => /([\w-]+):\s*\[?(?:[^[{}]*[{}],?\s*)*$/.exec(line.slice(0, at))?.[1]);
  const isEntry = /^\s*- *\{/.test(line);
  const path = [...way, ...keys.filter((key) => key !== undefined)];
  const listed = line.slice(0, braces[0]).includes("[") && !isEntry;
  const block = path.join(".") + (listed ? ".*" : "");
  const inside = line.slice((braces.at(-1) as number) + 1);
  const siblings = [...inside.matchAll(/([\w-]+):/g)].map((found) => found[1] as string);
  const piece = inside.slice(inside.lastIndexOf(",") + 1).trimStart();
  const found = /^([\w-]+):\s+(.*)$/.exec(piece);
  if (found) {
    return { block, key: found[1], written: found[2] ?? "", siblings, indent: column, inBraces: true };
  }
  return /^[\w-]*$/.test(piece)
    ? { block, key: undefined, written: piece, siblings, indent: column, inBraces: true }
    : undefined;
}
