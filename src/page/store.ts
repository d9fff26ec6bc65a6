/** Keeps what a reader enters in this browser. When it cannot be kept, that is said; what is on the page stays. */
import { type Kept, NOTHING_KEPT, readKept } from "./kept.ts";
import { say } from "./say.ts";

const FORBIDDEN =
  "This browser keeps nothing for this page: ticks, notes and measures are lost when it is closed. Save the record, or print the page.";
const FULL =
  "The browser's storage is full: what was entered last is on this page but is not kept. Save the record now.";
const ELSEWHERE = "The same booklet was changed in another window; this one now shows the same.";

export class Store {
  private readonly document: Document;
  private readonly key: string;
  private now: Kept;
  private readonly listeners: ((kept: Kept) => void)[] = [];

  /** `name` tells this booklet's things from another's. */
  constructor(document: Document, name: string) {
    this.document = document;
    this.key = `plainwork:${name}`;
    this.now = this.load();
    window.addEventListener("storage", ({ key, newValue }) => {
      if (key === this.key && newValue !== null) this.takeOver(newValue);
    });
  }

  get kept(): Kept {
    return this.now;
  }

  /** Calls back whenever what is kept changes elsewhere or is replaced as a whole. */
  whenReplaced(listener: (kept: Kept) => void): void {
    this.listeners.push(listener);
  }

  /** Changes a part of what is kept. */
  keep(part: Partial<Kept>): void {
    this.set({ ...this.now, ...part });
  }

  /** Keeps this and nothing else. */
  set(kept: Kept): void {
    this.now = kept;
    this.save();
  }

  /** Puts another whole in its place, as a loaded record does. */
  replace(kept: Kept): void {
    this.set(kept);
    for (const listener of this.listeners) listener(kept);
  }

  private load(): Kept {
    try {
      const text = localStorage.getItem(this.key);
      if (text === null) return NOTHING_KEPT;
      return readKept(JSON.parse(text)) ?? NOTHING_KEPT;
    } catch (error) {
      if (error instanceof SyntaxError)
        say(this.document, "What this browser kept for this booklet is damaged and was left aside.");
      else say(this.document, FORBIDDEN);
      return NOTHING_KEPT;
    }
  }

  private save(): void {
    try {
      localStorage.setItem(this.key, JSON.stringify(this.now));
    } catch (error) {
      const full = error instanceof DOMException && /quota/i.test(error.name);
      say(this.document, full ? FULL : FORBIDDEN);
    }
  }

  private takeOver(text: string): void {
    try {
      const kept = readKept(JSON.parse(text));
      if (!kept) return;
      this.now = kept;
      for (const listener of this.listeners) listener(kept);
      say(this.document, ELSEWHERE);
    } catch {
      say(this.document, "Another window kept something this page cannot read; nothing here was changed.");
    }
  }
}
