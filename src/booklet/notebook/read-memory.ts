/** What was read of a notebook before: what stands as it stood is not read again. */
import type { Shapes } from "./own-text.ts";
import type { ReadWorkings } from "./read-workings.ts";

export class ReadMemory {
  readonly shapes: Shapes = new Map();
  private last: { from: string; read: ReadWorkings } | undefined;

  /** Workings that were read from the same lines at the same places, or as `make` reads them. */
  readWorkings(from: unknown, make: () => ReadWorkings): ReadWorkings {
    const text = JSON.stringify(from);
    if (this.last?.from !== text) this.last = { from: text, read: make() };
    return this.last.read;
  }
}
