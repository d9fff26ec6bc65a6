/** A ruler along one half: a strip with divisions and numbers, to a scale of its own. */
import type { Drawing } from "./drawing.ts";
import { LEFT, WIDE } from "./flat-half.ts";
import type { LineKind } from "./language.ts";
import { LETTERING } from "./language.ts";
import { widthOf } from "./lettering.ts";

/** Height of a ruler's strip. */
export const STRIP = 25;
const SIZE = LETTERING.small;
/** Numbers are written at one of these steps, the first that leaves them room; between them stand plain divisions. */
const STEPS: readonly (readonly [number, number])[] = [
  [1, 1],
  [2, 1],
  [5, 1],
  [10, 5],
  [20, 10],
  [50, 10],
  [100, 50],
];
const ROOM = 26;

export interface Ruler {
  /** The upper edge of the strip on the page. */
  readonly top: number;
  /** How long it is, in the units it is numbered in. */
  readonly length: number;
  /** The edge the divisions stand at, and the kind of line it is drawn with. */
  readonly edge: "top" | "foot";
  readonly kind: LineKind;
  /** The place across the page of a distance in those units. */
  readonly across: (at: number) => number;
}

export function drawRuler(drawing: Drawing, { top, length, edge, kind, across }: Ruler): void {
  const foot = top + STRIP;
  const [near, far] = edge === "top" ? [top, foot] : [foot, top];
  for (const [y, line] of [
    [near, kind],
    [far, "body"],
  ] as const)
    drawing.line(line, [
      { x: LEFT, y },
      { x: LEFT + WIDE, y },
    ]);
  const unit = WIDE / length;
  const [step, small] = STEPS.find(([wide]) => wide * unit >= ROOM) ?? [200, 100];
  const into = edge === "top" ? 1 : -1;
  for (let at = 0; at <= length + 1e-9; at += small) {
    const numbered = at % step === 0;
    const x = across(at);
    drawing.line(
      "leader",
      [
        { x, y: near },
        { x, y: near + into * (numbered ? 6 : 3.5) },
      ],
      { soft: true },
    );
    if (!numbered) continue;
    const width = widthOf(String(at), SIZE);
    const height = SIZE * LETTERING.line;
    const y = edge === "top" ? foot - height - 2 : top + 2;
    drawing.set([String(at)], SIZE, { x: x - width / 2, y, width, height }, { anchor: "middle" });
  }
}
