/** What a booklet was made of last: what is made of the same things again is taken, not made. */
import type { Figure } from "../figure/figure.ts";
import type { ChapterNodes } from "./html.ts";
import type { Worked } from "./notebook/work.ts";
import type { Context } from "./template/evaluate.ts";

/** What all chapters of one plan share. */
export interface Drawn {
  readonly figures: ReadonlyMap<string, Figure>;
  readonly guides: ReadonlyMap<string, Figure>;
  readonly context: Context;
}

/** Remembers one booklet, by the identity of what it was made of. A fresh one remembers nothing. */
export class PartsMemory {
  private worked: Worked | undefined;
  private shared: Drawn | undefined;
  private sections = new Map<string, { from: readonly unknown[]; made: ChapterNodes }>();

  /** Drawings and context, made once for each plan. */
  drawn(worked: Worked, make: () => Drawn): Drawn {
    if (!this.shared || this.worked !== worked) {
      this.shared = make();
      this.worked = worked;
    }
    return this.shared;
  }

  /** A section by its name and all that it is made of. */
  section(from: readonly [name: string, ...unknown[]], make: () => ChapterNodes): ChapterNodes {
    const [name] = from;
    const last = this.sections.get(name);
    if (last?.from.every((one, i) => one === from[i])) return last.made;
    const made = make();
    this.sections.set(name, { from, made });
    return made;
  }
}
