/**
 * The shortest layout there is, by an exact integer program: every piece's place is a variable, and of each two pieces
 * one lies left of, right of, above or below the other. Shares nothing with the program's own layout. Plain inches.
 */
import type { LegacyHighs } from "highs";

export interface Rectangle {
  readonly width: number;
  readonly length: number;
  /** Starts on a whole multiple of this, where given. */
  readonly startsOn?: number;
}

/** The integer program in the LP format. `enough` is a length that some layout has (the big M). */
export function layoutProgram(width: number, pieces: readonly Rectangle[], enough: number): string {
  const rows: string[] = [];
  const bounds: string[] = [];
  const binaries: string[] = [];
  const generals: string[] = [];
  pieces.forEach((a, i) => {
    rows.push(`L - y${i} >= ${a.length}`);
    bounds.push(`0 <= x${i} <= ${width - a.width}`, `0 <= y${i} <= ${enough - a.length}`);
    if (a.startsOn) {
      generals.push(`k${i}`);
      bounds.push(`0 <= k${i} <= ${Math.ceil(enough / a.startsOn)}`);
      rows.push(`y${i} - ${a.startsOn} k${i} = 0`);
    }
    pieces.forEach((b, j) => {
      if (j <= i) return;
      const either: string[] = [];
      const apart = (name: string, between: string, size: number, far: number) => {
        either.push(name);
        binaries.push(name);
        rows.push(`${between} + ${far} ${name} <= ${far - size}`);
      };
      // Two too wide to lie beside each other can only lie one under the other.
      if (a.width + b.width <= width) {
        apart(`l${i}_${j}`, `x${i} - x${j}`, a.width, width);
        apart(`r${i}_${j}`, `x${j} - x${i}`, b.width, width);
      }
      const alike = a.width === b.width && a.length === b.length && a.startsOn === b.startsOn;
      apart(`u${i}_${j}`, `y${i} - y${j}`, a.length, enough);
      // Two alike may change places, so one of the two ways is enough.
      if (!alike) apart(`d${i}_${j}`, `y${j} - y${i}`, b.length, enough);
      rows.push(`${either.join(" + ")} >= 1`);
    });
  });
  return [
    "Minimize\n length: L\nSubject To",
    ...rows.map((row, i) => ` c${i}: ${row}`),
    "Bounds",
    ...bounds.map((bound) => ` ${bound}`),
    `Binary\n ${binaries.join(" ")}`,
    ...(generals.length > 0 ? [`General\n ${generals.join(" ")}`] : []),
    "End",
  ].join("\n");
}

/** The shortest length, proved. Throws when the program could not prove it. */
export function shortestLength(
  highs: LegacyHighs,
  width: number,
  pieces: readonly Rectangle[],
  enough: number,
): number {
  const solution = highs.solve(layoutProgram(width, pieces, enough), {
    mip_rel_gap: 0,
    mip_abs_gap: 1e-6,
    time_limit: 60,
  });
  if (solution.Status !== "Optimal") throw new Error(`the integer program ended ${solution.Status}`);
  return solution.ObjectiveValue;
}
