/** The nearest known name to a mistyped one. */

/** Longer names are not compared: nobody mistypes a key of this length, and the work grows with its square. */
const LONGEST = 60;

/** Case, underscores, spaces and camelCase are not counted as mistakes. */
function folded(name: string): string {
  return name
    .replace(/([a-z])([A-Z])/g, "$1-$2")
    .toLowerCase()
    .replace(/[_ ]/g, "-");
}

/**
 * How many single changes turn one word into the other: a letter put in, left out, changed, or two neighbours swapped
 * (optimal string alignment).
 */
export function distance(a: string, b: string): number {
  let beforeLast: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i += 1) {
    const row = [i];
    for (let j = 1; j <= b.length; j += 1) {
      const same = a[i - 1] === b[j - 1] ? 0 : 1;
      let best = Math.min(at(last, j) + 1, at(row, j - 1) + 1, at(last, j - 1) + same);
      // Before the first letter of either word there is none, and none is like no letter.
      if (a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]) {
        best = Math.min(best, at(beforeLast, j - 2) + 1);
      }
      row.push(best);
    }
    beforeLast = last;
    last = row;
  }
  return at(last, b.length);
}

const at = (row: readonly number[], index: number): number => row[index] as number;

/** How many letters two words have in common at their beginning. */
function inCommon(a: string, b: string): number {
  let n = 0;
  while (n < a.length && a[n] === b[n]) n += 1;
  return n;
}

/** Names this near are offered: a change in three letters or part of three, but only one in a short name. */
function nearEnough(a: string, b: string): number {
  const longer = Math.max(a.length, b.length);
  return longer < 5 ? 1 : Math.ceil(longer / 3);
}

/**
 * The known name nearest to `name`, or undefined when none is close enough to be meant. Of equally near names the one
 * with the longest beginning in common is taken, then the one that comes first in `known`. Names of one or two letters are only
 * matched when they differ by case or hyphen. Where more than one change is needed a name that ends in all of this one, or a word that
 * this one is a form of, comes first. Where none is near, the only one that has the same parts, and perhaps more, is taken.
 */
export function nearest(name: string, known: Iterable<string>): string | undefined {
  if (name.length > LONGEST) return undefined;
  const names = [...known];
  const wanted = folded(name);
  let best: string | undefined;
  let fewest = Number.POSITIVE_INFINITY;
  let longest = 0;
  for (const candidate of names) {
    const other = folded(candidate);
    const changes = distance(wanted, other);
    const most = Math.min(wanted.length, other.length) < 3 ? 0 : nearEnough(wanted, other);
    const shared = inCommon(wanted, other);
    if (changes <= most && (changes < fewest || (changes === fewest && shared > longest))) {
      best = candidate;
      fewest = changes;
      longest = shared;
    }
  }
  if (fewest < 2) return best;
  return bySuffix(wanted, names) ?? byStem(wanted, names) ?? best ?? byParts(wanted, names);
}

/** The only known name that ends in all of `wanted`, its first words left out: "hem.depth" is meant for skirt.hem.depth. */
function bySuffix(wanted: string, known: readonly string[]): string | undefined {
  if (!wanted.includes(".")) return undefined;
  const ending = known.filter((name) => folded(name).endsWith(`.${wanted}`));
  return ending.length === 1 ? ending[0] : undefined;
}

/** The known word that `wanted` is another form of: "hemming" is meant for hem. */
function byStem(wanted: string, known: readonly string[]): string | undefined {
  const stem = /^([a-z]{3,}?)([a-z]?)(?:ing|ed)$/.exec(wanted);
  if (!stem) return undefined;
  const [, short, double] = stem as unknown as [string, string, string];
  return known.find((name) => name === short + double || (short.endsWith(double) && name === short));
}

/** The only known name that has every part of `wanted` among its own: "back" is meant for centre-back, "back-centre" too. */
function byParts(wanted: string, known: readonly string[]): string | undefined {
  const parts = wanted.split(/[-.]/);
  if (parts.some((part) => part.length < 3)) return undefined;
  const holding = known.filter((name) => {
    const own = folded(name).split(/[-.]/);
    return parts.every((part) => own.includes(part));
  });
  return holding.length === 1 ? holding[0] : undefined;
}
