/** Piping: a cord in a bias strip. How wide and long the strip is, and from what square of cloth it is cut. */
import { diagonal } from "../quantity/diagonal.ts";
import { add, div, less, mul, plain, type Quantity, sub } from "../quantity/quantity.ts";
import type { Work } from "./context.ts";
import type { Wanted } from "./layout.ts";

/** As many strips as are joined without asking; more only where the cloth is too narrow for such a square. */
export const FEW_STRIPS = 3;
/** More strips than this are refused. */
export const MOST_STRIPS = 15;

/** How a square is cut: strips of `width`, which lies on the tape; `join` is lost at every join. */
export interface Cutting {
  readonly width: Quantity;
  readonly join: Quantity;
  readonly tape: Quantity;
}

/**
 * The strips of a bias square of side `square`, longest first: one along the diagonal, as long as the diagonal less its
 * width, then two at a time, one on either side, each two widths shorter. Lengths are those of the shorter edge, down
 * to a tape mark, so that no more is claimed than can be cut. A strip under two widths and a join is not worth joining.
 */
export function stripsOf(square: Quantity, cutting: Cutting): readonly Quantity[] {
  const { width, tape } = cutting;
  const strips: Quantity[] = [];
  let length = sub(diagonal(square, tape, "down"), width);
  while (!less(length, shortest(cutting)) && strips.length < MOST_STRIPS) {
    strips.push(...(strips.length === 0 ? [length] : [length, length]));
    length = sub(length, mul(width, plain(2n)));
  }
  return strips;
}

const shortest = ({ width, join }: Cutting): Quantity => add(mul(width, plain(2n)), join);

/** What the first `count` strips make when they are joined. */
export function joined(strips: readonly Quantity[], count: number, join: Quantity): Quantity {
  const [first, ...rest] = strips.slice(0, count);
  if (!first) return sub(join, join);
  return rest.reduce((sum, strip) => sub(add(sum, strip), join), first);
}

/** The smallest square on tape marks whose first `count` strips, joined, reach `length`. */
function squareFor(length: Quantity, count: number, cutting: Cutting): Quantity {
  const { width, join, tape } = cutting;
  const widths = Array.from({ length: count }, (_, i) => 2 * Math.trunc((i + 1) / 2) + 1);
  const lost = add(mul(width, plain(widths.reduce((a, b) => a + b))), mul(join, plain(count - 1)));
  const long = div(add(length, lost), plain(count));
  let square = diagonal(div(long, plain(2n)), tape);
  for (;;) {
    const strips = stripsOf(square, cutting);
    if (strips.length >= count && !less(joined(strips, count, join), length)) return square;
    square = add(square, tape);
  }
}

/** A square and the number of strips cut from it. */
export interface BiasSquare {
  readonly square: Quantity;
  readonly strips: number;
}

/**
 * The square to cut: the smallest that gives `length` in three strips at most. Where the cloth is not as wide as that,
 * the first that gives it in more. Undefined when fifteen strips do not reach.
 */
export function biasSquare(length: Quantity, clothWidth: Quantity, cutting: Cutting): BiasSquare | undefined {
  let best: BiasSquare | undefined;
  for (let strips = 1; strips <= MOST_STRIPS; strips += 1) {
    if (strips > FEW_STRIPS && best && !less(clothWidth, best.square)) return best;
    const square = squareFor(length, strips, cutting);
    if (!best || less(square, best.square)) best = { square, strips };
  }
  return best && less(clothWidth, best.square) ? undefined : best;
}

/** The strip and the square it is cut from. `run` is the formula of the edge that the piping runs along. */
export function solvePiping(work: Work, run: string): void {
  const { sheet, say } = work;
  sheet.set("piping.run", run);
  sheet.set("piping.length", "piping.run + 2 * attach.piping.turning");
  sheet.set("piping.width", "ceil(2 * attach.piping.turning + 22/7 * attach.piping.cord, tape)");
  sheet.set("piping.alongSelvedge", "diagonal(piping.width, tape)");
  const found = biasSquare(sheet.get("piping.length"), sheet.get("cloth.width"), {
    width: sheet.get("piping.width"),
    join: sheet.get("attach.piping.join"),
    tape: sheet.showing.tape,
  });
  if (!found) {
    say({
      code: "piping-too-long",
      level: "error",
      path: "attach.piping",
      text: `${sheet.shown("piping.length")} of piping strip ${sheet.shown("piping.width")} wide cannot be cut from a square of cloth ${sheet.shown("cloth.width")} wide in ${MOST_STRIPS} strips`,
      hint: "take a thinner cord or a smaller turning, or wider cloth",
    });
    return;
  }
  sheet.choose(
    "piping.square",
    found.square,
    `the smallest square on tape marks that gives the length in ${found.strips > FEW_STRIPS ? "the fewest strips that the cloth is wide enough for" : "three strips at most"}`,
  );
  sheet.choose(
    "piping.strips",
    plain(found.strips),
    "the first as long as the diagonal less its width, then two at a time, each two widths shorter, less a join each",
  );
  sheet.set("piping.most", "piping.square * piping.square / piping.width");
}

/** The square as a piece of the layout; none without piping. */
export function pipingPieces({ sheet }: Pick<Work, "sheet">): readonly Wanted[] {
  if (!sheet.has("piping.square")) return [];
  const side = sheet.get("piping.square");
  return [{ name: "bias square for piping", width: side, length: side }];
}
