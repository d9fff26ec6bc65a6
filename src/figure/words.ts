/** The lettering of a picture as elements: size and setting are written once for every run of lines that share them. */
import type { Element } from "hast";
import type { Placed } from "./labels.ts";
import { LETTERING } from "./language.ts";
import { type Attributes, el } from "./svg.ts";

interface Run {
  readonly key: string;
  readonly style: Attributes;
  readonly lines: Element[];
}

export class Words {
  private readonly runs: Run[] = [];

  /** Puts down the lines of one label, each in the middle of its box or from the box's left edge. */
  write({ lines, size, box, wish }: Placed, anchor: "start" | "middle"): void {
    const x = anchor === "start" ? box.x : box.x + box.width / 2;
    const run = this.run(size, anchor, wish.bold ?? false);
    for (const [i, words] of lines.entries()) {
      const y = box.y + (i + 0.78) * size * LETTERING.line + 0.06 * size;
      run.lines.push(el("text", { x, y }, [words]));
    }
  }

  elements(): Element[] {
    return this.runs.map(({ style, lines }) => el("g", style, lines));
  }

  private run(size: number, anchor: "start" | "middle", bold: boolean): Run {
    const key = `${size} ${anchor} ${bold}`;
    const last = this.runs.at(-1);
    if (last?.key === key) return last;
    const style: Attributes = {
      fontSize: size,
      ...(anchor === "middle" ? { textAnchor: anchor } : {}),
      ...(bold ? { fontWeight: "bold" } : {}),
    };
    const run: Run = { key, style, lines: [] };
    this.runs.push(run);
    return run;
  }
}
