/** Several lists brought into one order: what has the same key in several of them stands once. */

/** One place of the common order: each list's item that stands there, if it has one. */
export type Row<Item> = readonly (Item | undefined)[];

/** Brings lists together by their longest common parts, each list's own order kept. */
export function aligned<Item>(
  lists: readonly (readonly Item[])[],
  keyOf: (item: Item) => string,
): Row<Item>[] {
  let rows: { readonly key: string; readonly items: (Item | undefined)[] }[] = [];
  lists.forEach((list, at) => {
    const keys = list.map(keyOf);
    const pairs = common(
      rows.map(({ key }) => key),
      keys,
    );
    const next: typeof rows = [];
    let row = 0;
    let item = 0;
    const fresh = (to: number): void => {
      for (; item < to; item += 1)
        next.push({ key: keys[item] as string, items: [...Array(at).fill(undefined), list[item]] });
    };
    const old = (to: number): void => {
      for (; row < to; row += 1) {
        const known = rows[row] as (typeof rows)[number];
        next.push({ key: known.key, items: [...known.items, undefined] });
      }
    };
    for (const [r, i] of pairs) {
      old(r);
      fresh(i);
      const known = rows[r] as (typeof rows)[number];
      next.push({ key: known.key, items: [...known.items, list[i]] });
      row = r + 1;
      item = i + 1;
    }
    old(rows.length);
    fresh(list.length);
    rows = next;
  });
  return rows.map(({ items }) => items);
}

/** Places of the longest common part of two lists. */
function common(a: readonly string[], b: readonly string[]): [number, number][] {
  const best: number[][] = Array.from({ length: a.length + 1 }, () => Array(b.length + 1).fill(0));
  const at = (i: number, j: number): number => best[i]?.[j] ?? 0;
  for (let i = a.length - 1; i >= 0; i -= 1)
    for (let j = b.length - 1; j >= 0; j -= 1)
      (best[i] as number[])[j] = a[i] === b[j] ? at(i + 1, j + 1) + 1 : Math.max(at(i + 1, j), at(i, j + 1));
  const pairs: [number, number][] = [];
  let i = 0;
  let j = 0;
  while (i < a.length && j < b.length) {
    if (a[i] === b[j]) pairs.push([i++, j++]);
    else if (at(i + 1, j) >= at(i, j + 1)) i += 1;
    else j += 1;
  }
  return pairs;
}
