/** Words in a column beside a drawing, or in a row below it: each as near to what it names as the others let it be. */

export interface Entry {
  /** Where the middle of the words would best stand, down the column or along the row. */
  readonly middle: number;
  /** Height in a column, width in a row. */
  readonly size: number;
}

interface Block {
  readonly entries: readonly number[];
  readonly size: number;
  /** Sum of where each entry would have its block begin; the mean is where the block stands. */
  readonly wishes: number;
}

const startOf = ({ wishes, entries }: Block): number => wishes / entries.length;

/**
 * The middles at which entries stand one after another, in the order given: `gap` apart at least, none before `from`
 * and, if all have room, none after `to`. Neighbours that would meet are moved together, so that what they name lies on
 * average at their own place.
 */
export function spread(
  entries: readonly Entry[],
  gap: number,
  from: number,
  to = Number.POSITIVE_INFINITY,
): number[] {
  const middles: number[] = [];
  const blocks = blocksOf(entries, gap);
  let free = from;
  let after = blocks.reduce((sum, { size }) => sum + size, 0);
  for (const block of blocks) {
    let at = Math.max(free, Math.min(startOf(block), to + gap - after));
    after -= block.size;
    for (const i of block.entries) {
      const { size } = entries[i] as Entry;
      middles[i] = at + size / 2;
      at += size + gap;
    }
    free = at;
  }
  return middles;
}

/** Entries in order of place, those that would meet joined into one block. */
function blocksOf(entries: readonly Entry[], gap: number): Block[] {
  const blocks: Block[] = [];
  const order = [...entries.entries()].sort(([i, a], [j, b]) => a.middle - b.middle || i - j);
  for (const [i, { middle, size }] of order) {
    let block: Block = { entries: [i], size: size + gap, wishes: middle - size / 2 };
    for (let above = blocks.at(-1); above && meet(above, block); above = blocks.at(-1)) {
      blocks.pop();
      block = joined(above, block);
    }
    blocks.push(block);
  }
  return blocks;
}

const meet = (above: Block, below: Block): boolean => startOf(above) + above.size > startOf(below);

const joined = (above: Block, below: Block): Block => ({
  entries: [...above.entries, ...below.entries],
  size: above.size + below.size,
  wishes: above.wishes + below.wishes - below.entries.length * above.size,
});
