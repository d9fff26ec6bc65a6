/**
 * The drawing language: one meaning a line, told by weight and dash and never by colour; everything in the colour of
 * the page's own text, on no paper of its own, so that it prints and turns dark with the page.
 */
import type { Element } from "hast";
import { type Attributes, el } from "./svg.ts";

export type LineKind =
  | "cut"
  | "fold"
  | "finished"
  | "seam"
  | "selvedge"
  | "hidden"
  | "over"
  | "under"
  | "thread"
  | "support"
  | "station"
  | "cord"
  | "band"
  | "braid"
  | "cloth"
  | "lining"
  | "interlining"
  | "crease-over"
  | "crease-under"
  | "crease-line"
  | "body"
  | "ease"
  | "dimension"
  | "leader"
  | "break";

export interface LineStyle {
  readonly attributes: Attributes;
  /** What the key says; lines without words are labelled where they stand. */
  readonly words?: string;
}

const line = (width: number, words?: string, dash?: string, cap?: "round"): LineStyle => ({
  attributes: {
    strokeWidth: width,
    ...(cap ? { strokeLineCap: cap } : {}),
    ...(dash ? { strokeDashArray: dash } : {}),
  },
  ...(words ? { words } : {}),
});

/** Every kind of line, with its weight in units of a picture 360 wide. */
export const LINES: Readonly<Record<LineKind, LineStyle>> = {
  cut: line(0.9, "cut edge"),
  fold: line(2.5, "fold"),
  finished: line(1.5, "finished edge"),
  seam: line(1, "seam", "9 3 1.5 3"),
  selvedge: line(0.65, "selvedge (double line)"),
  hidden: line(0.9, "edge hidden behind", "2 2.5"),
  over: line(2, "thread on the side you see", undefined, "round"),
  under: line(2, "thread on the side away from you", "4 3"),
  thread: line(2, "thread", undefined, "round"),
  support: line(1.7, "what is worn beneath", "0.1 4", "round"),
  station: line(0.8, "place to measure at", "12 3"),
  braid: line(5, "braid", "2.4 1.2"),
  band: line(3.4, "part band"),
  cord: line(3.6, "covered cord", "1.6 1"),
  cloth: line(3.2, "cloth cut through, seen on its edge", undefined, "round"),
  lining: line(2.1, "lining cut through, seen on its edge", "8 2.5"),
  interlining: line(2.6, "interlining cut through, seen on its edge", "2 2"),
  "crease-over": line(1.9, "A: fold over, the edge that shows"),
  "crease-under": line(1.4, "B: fold under, hidden", "6 2.5"),
  "crease-line": line(0.9, "C: where A comes to lie", "1.5 2.5"),
  body: line(1.1),
  ease: line(0.6),
  dimension: line(0.7),
  leader: line(0.6),
  break: line(0.8),
};

export type Filling = "wrong" | "border" | "waste" | "turn-down" | "wall" | "hollow";

interface FillStyle {
  readonly words: string;
  readonly size: number;
  readonly turn: number;
  readonly marks: readonly Attributes[];
}

const stroke = (d: string, width: number): Attributes => ({
  d,
  fill: "none",
  stroke: "currentColor",
  strokeWidth: width,
});

/** Every filling, as a small repeated pattern. */
export const FILLINGS: Readonly<Record<Filling, FillStyle>> = {
  wrong: { words: "wrong side of the cloth", size: 6, turn: 45, marks: [stroke("M0 3H6", 0.5)] },
  border: {
    words: "border of the cloth",
    size: 4,
    turn: 0,
    marks: [stroke("M2 1V3", 0.7), stroke("M0 0.5H4", 0.4)],
  },
  waste: {
    words: "cloth left over",
    size: 7,
    turn: 45,
    marks: [stroke("M0 3.5H7", 0.5), stroke("M3.5 0V7", 0.5)],
  },
  "turn-down": { words: "turned down inside", size: 5, turn: 0, marks: [stroke("M0 2.5H5", 0.6)] },
  hollow: { words: "hollow between two folds", size: 3, turn: 0, marks: [stroke("M0 1.5H1", 0.9)] },
  wall: { words: "cloth cut through", size: 3, turn: -45, marks: [stroke("M0 1.5H3", 0.6)] },
};

/** The id of a filling's pattern inside one figure. */
export const fillingId = (figure: string, filling: Filling): string => `fig-${figure}-${filling}`;

/** The pattern element a filling needs once in its figure. */
export function patternOf(figure: string, filling: Filling): Element {
  const { size, turn, marks } = FILLINGS[filling];
  return el(
    "pattern",
    {
      id: fillingId(figure, filling),
      width: size,
      height: size,
      patternUnits: "userSpaceOnUse",
      patternTransform: `rotate(${turn})`,
    },
    marks.map((mark) => el("path", mark)),
  );
}

/** Sizes of lettering, in units of a picture 360 wide: on a telephone 11.2 is 10 pixels high, and still read. */
export const LETTERING = { heading: 13, label: 12, note: 11.5, small: 11.2, line: 1.28 } as const;

/** The width every picture has, and the margin that lettering keeps. */
export const PICTURE = { width: 360, margin: 8 } as const;
