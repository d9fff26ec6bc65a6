/**
 * When typed text is saved, and what is shown of it. It goes out a quarter of a second after the last key and never later
 * than 0.7 s after the first unsaved one; nothing is written over a version that this page has not seen.
 */
import type { Answer, Version } from "./project.ts";

export type State =
  | { readonly is: "saved" }
  | { readonly is: "typing" }
  | { readonly is: "away" }
  | { readonly is: "stale" }
  | { readonly is: "refused"; readonly why: string }
  | { readonly is: "conflict"; readonly theirs: Version | undefined; readonly kept: string };

export interface Ways {
  /** Sends a text made of the version with this checksum. */
  send(base: string, text: string, kept?: string): Promise<Answer>;
  /** Called after a time in milliseconds; gives what takes it back. */
  after(milliseconds: number, what: () => void): () => void;
  now(): number;
  /** The text of the page, as it is to be saved. */
  text(): string;
  show(state: State): void;
  /** Is told of every text that is not saved (null once it is). */
  journal(unsaved: { readonly text: string; readonly base: string } | null): void;
}

const AFTER_LAST_KEY = 250;
const AFTER_FIRST_KEY = 700;
const TRY_AGAIN = 1000;

export class Saving {
  private readonly ways: Ways;
  /** The version that the page's text was made of. */
  private base: string;
  /** The text of that version. */
  private known: string;
  /** When the first key fell that is not saved. */
  private since: number | undefined;
  private sending = false;
  private cancel: () => void = () => {};
  private now: State = { is: "saved" };

  constructor(ways: Ways, version: Version | null) {
    this.ways = ways;
    this.base = version?.checksum ?? "";
    this.known = version?.text ?? "";
  }

  get state(): State {
    return this.now;
  }

  get checksum(): string {
    return this.base;
  }

  /** Is everything of the page in the file? */
  get isClean(): boolean {
    return !this.sending && this.ways.text() === this.known && this.now.is !== "conflict";
  }

  /** The text has changed. */
  typed(): void {
    if (this.now.is === "conflict") return;
    if (this.ways.text() === this.known && !this.sending) {
      this.since = undefined;
      this.cancel();
      this.ways.journal(null);
      this.show({ is: "saved" });
      return;
    }
    const now = this.ways.now();
    this.since ??= now;
    if (this.now.is === "saved") this.show({ is: "typing" });
    if (this.now.is === "typing" || this.now.is === "refused")
      this.later(Math.max(0, Math.min(AFTER_LAST_KEY, this.since + AFTER_FIRST_KEY - now)));
    else this.ways.journal({ text: this.ways.text(), base: this.base });
  }

  /** At once, as when the page is left. */
  flush(): void {
    if (!this.isClean && this.now.is !== "conflict" && this.now.is !== "stale") void this.save();
  }

  /** The server is not heard any more: it is asked whether it is there. */
  silent(): void {
    if (this.now.is === "saved" || this.now.is === "typing") void this.save();
  }

  /** The server can be heard again. */
  back(): void {
    if (this.now.is === "away") void this.save();
  }

  /** The page took over a version from the file: its text is that version's. */
  took(version: Version): void {
    this.base = version.checksum;
    this.known = version.text;
    this.settled();
  }

  /** A conflict is settled: the text is to be saved over the version that was shown. */
  async settle(theirs: Version | undefined, kept: string): Promise<void> {
    this.base = theirs?.checksum ?? "";
    this.known = theirs?.text ?? "";
    this.now = { is: "typing" };
    await this.save(kept);
  }

  /** Another version was found where the page has unsaved text of its own. */
  conflict(theirs: Version | undefined, kept: string): void {
    this.cancel();
    this.show({ is: "conflict", theirs, kept });
  }

  private later(milliseconds: number): void {
    this.cancel();
    this.cancel = this.ways.after(milliseconds, () => void this.save());
  }

  private async save(kept?: string): Promise<void> {
    this.cancel();
    if (this.sending) return;
    const text = this.ways.text();
    this.sending = true;
    const started = this.ways.now();
    const answer = await this.ways.send(this.base, text, kept);
    this.sending = false;
    if (answer.is === "saved") {
      this.base = answer.checksum;
      this.known = text;
      if (this.ways.text() === text) this.settled();
      else {
        this.show({ is: "typing" });
        this.since = started;
        this.typed();
      }
      return;
    }
    this.ways.journal({ text: this.ways.text(), base: this.base });
    if (answer.is === "changed-elsewhere") this.conflict(answer.theirs, answer.kept);
    else this.show(answer);
    if (answer.is === "away") this.later(TRY_AGAIN);
    if (answer.is === "refused" && this.ways.text() !== text) this.later(TRY_AGAIN);
  }

  private settled(): void {
    this.cancel();
    this.since = undefined;
    this.ways.journal(null);
    this.show({ is: "saved" });
  }

  private show(state: State): void {
    this.now = state;
    this.ways.show(state);
  }
}
