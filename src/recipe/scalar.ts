/** Where each character of a YAML scalar's value stands in the file. */

const ESCAPE_DIGITS: Readonly<Record<string, number>> = { x: 2, u: 4, U: 8 };

/**
 * Offsets in `raw` (a scalar as written, quotes included) of each character of its value, and of its end. Undefined
 * when that cannot be told simply: folded over lines, a block scalar, or odd escapes.
 */
export function offsetsIn(raw: string, value: string): readonly number[] | undefined {
  const quote = /^["']/.exec(raw)?.[0];
  const offsets: number[] = [];
  const end = quote ? raw.length - 1 : raw.length;
  let at = quote ? 1 : 0;
  while (at < end && offsets.length < value.length) {
    const width = quote ? widthOf(raw, at, quote) : 1;
    const decoded = width === 1 || raw[at] !== "\\" ? 1 : decodedLength(raw, at, width);
    for (let i = 0; i < decoded; i += 1) offsets.push(at);
    if (width === 1 && raw[at] !== value[offsets.length - 1]) return undefined;
    at += width;
  }
  if (offsets.length !== value.length || at !== end) return undefined;
  offsets.push(at);
  return offsets;
}

/** How many characters of the source stand for one of the value. */
function widthOf(raw: string, at: number, quote: string): number {
  if (quote === "'") return raw[at] === "'" && raw[at + 1] === "'" ? 2 : 1;
  if (raw[at] !== "\\") return 1;
  return 2 + (ESCAPE_DIGITS[raw[at + 1] ?? ""] ?? 0);
}

/** An escape above U+FFFF stands for two units. */
function decodedLength(raw: string, at: number, width: number): number {
  return width === 10 && Number.parseInt(raw.slice(at + 2, at + 10), 16) > 0xffff ? 2 : 1;
}
