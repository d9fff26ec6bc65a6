/** One step at a time: the step, its drawing and the cautions before it; next and back with one thumb. */
import { button, make } from "./make.ts";
import { say } from "./say.ts";
import { stepsOf } from "./steps.ts";
import type { Store } from "./store.ts";

export class Walk {
  private readonly document: Document;
  private readonly store: Store;
  private readonly foot: HTMLElement;
  private readonly words: HTMLElement;
  private at = 0;

  constructor(document: Document, store: Store) {
    this.document = document;
    this.store = store;
    this.words = make(document, "p", { role: "status" });
    this.foot = make(
      document,
      "section",
      { class: "walk", "aria-label": "One step at a time" },
      button(document, "Back", () => this.go(this.at - 1)),
      button(document, "Done, next", () => this.next()),
      button(document, "Whole booklet", () => this.leave()),
      this.words,
    );
    document.addEventListener("keydown", (event) => {
      if (!this.on || event.target instanceof HTMLInputElement || event.target instanceof HTMLTextAreaElement)
        return;
      if (event.key === "ArrowRight") this.go(this.at + 1);
      else if (event.key === "ArrowLeft") this.go(this.at - 1);
      else if (event.key === "Escape") this.leave();
    });
  }

  private get on(): boolean {
    return this.document.body.classList.contains("one-step");
  }

  /** Begins at the first step that is not done. */
  start(): void {
    const steps = stepsOf(this.document);
    if (steps.length === 0) {
      say(this.document, "There are no steps yet: enter your measures first.");
      return;
    }
    const first = steps.findIndex(({ id }) => !this.store.kept.ticked.includes(id));
    this.document.body.classList.add("one-step");
    this.document.body.append(this.foot);
    this.go(Math.max(0, first));
  }

  /** Shows the same step after the booklet was worked out anew. */
  dress(): void {
    if (!this.on) return;
    if (stepsOf(this.document).length === 0) this.leave();
    else this.go(this.at);
  }

  private leave(): void {
    const { id } = stepsOf(this.document)[this.at] ?? {};
    this.clear();
    this.document.body.classList.remove("one-step");
    this.foot.remove();
    if (id) this.document.getElementById(id.split("/")[0] ?? "")?.scrollIntoView();
  }

  private next(): void {
    const now = stepsOf(this.document)[this.at];
    const box = now?.step.querySelector<HTMLInputElement>(":scope > .tick input");
    if (box && !box.checked) box.click();
    this.go(this.at + 1);
  }

  private clear(): void {
    for (const old of this.document.querySelectorAll(".now")) old.classList.remove("now");
  }

  private go(to: number): void {
    const steps = stepsOf(this.document);
    this.at = Math.min(Math.max(0, to), steps.length - 1);
    const now = steps[this.at];
    if (!now) return;
    this.clear();
    // A word that was looked up stood under the step it is of.
    if (location.hash.startsWith("#word-")) location.hash = "";
    now.chapter.classList.add("now");
    now.step.parentElement?.classList.add("now");
    now.step.classList.add("now");
    const mine = steps.filter(({ chapter }) => chapter === now.chapter);
    const title = now.chapter.querySelector("h2")?.textContent ?? "";
    this.words.textContent = `${title}: step ${now.n} of ${mine.length} (${this.at + 1} of ${steps.length} in all)`;
    window.scrollTo(0, 0);
  }
}
