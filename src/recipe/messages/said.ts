/** What is told of one message code. The text of a message says what was found in this recipe; this says what it is about. */

/** How much it stops: an error the booklet, a warning and a note nothing. */
export type Level = "error" | "warning" | "note";

export interface Said {
  /** How it can be said; without it always as an error. */
  readonly levels?: readonly Level[];
  /** What it means, in one sentence. */
  readonly means: string;
  /** What to do, in one sentence. */
  readonly do: string;
}
