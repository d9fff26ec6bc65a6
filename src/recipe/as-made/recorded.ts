/** What is known beside a recipe of work that was done: this garment as made, and the maker's own pace in her others. */
import { emptyBlock } from "../node.ts";
import type { Data } from "../written.ts";
import type { AsMade } from "./as-made.ts";
import type { Paces } from "./pace.ts";
import { readAsMade } from "./read.ts";

export interface Recorded {
  readonly asMade?: AsMade;
  readonly paces?: Paces;
}

/** The same as plain data: what a page, or a check of one, carries. */
export interface RecordedData {
  readonly asMade?: readonly Data[];
  readonly paces?: Paces;
}

/** Nothing where nothing is recorded. */
export function recordedData({ asMade, paces }: Recorded): RecordedData | undefined {
  const some = asMade !== undefined || (paces !== undefined && Object.keys(paces).length > 0);
  return some ? { ...(asMade ? { asMade: asMade.written } : {}), ...(paces ? { paces } : {}) } : undefined;
}

/** Takes carried data in again; it was sound when it was carried. */
export function recordedFrom({ asMade, paces }: RecordedData): Recorded {
  const read =
    asMade &&
    readAsMade(
      asMade.map((entry) => Object.assign(emptyBlock(), entry)),
      new Map(),
    ).asMade;
  return { ...(read ? { asMade: read } : {}), ...(paces ? { paces } : {}) };
}
