/** The stretch in which two texts differ. */

export interface Change {
  readonly from: number;
  readonly to: number;
  readonly insert: string;
}

/** The shortest single change that makes one text of another; undefined where they are the same. */
export function difference(before: string, after: string): Change | undefined {
  if (before === after) return undefined;
  const most = Math.min(before.length, after.length);
  let from = 0;
  while (from < most && before[from] === after[from]) from += 1;
  let tail = 0;
  while (tail < most - from && before[before.length - 1 - tail] === after[after.length - 1 - tail]) tail += 1;
  return { from, to: before.length - tail, insert: after.slice(from, after.length - tail) };
}
