/** What is wrong with a formula and where in its text (from 0). The message is fit to show. */
export class FormulaError extends Error {
  readonly at: number;
  readonly hint: string | undefined;
  /** A name that nobody knows, so that the caller can offer the nearest. */
  readonly unknown: string | undefined;
  constructor(message: string, at: number, hint?: string, unknown?: string) {
    super(message);
    this.at = at;
    this.hint = hint;
    this.unknown = unknown;
  }
}
