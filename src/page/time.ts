/** Time spent, chapter by chapter: a timer, or hours typed in. */
import { button, labelled, make } from "./make.ts";
import type { Store } from "./store.ts";

/** Seconds as `1 h 20 min`; under a minute is none. */
export function spoken(seconds: number): string {
  const minutes = Math.round(seconds / 60);
  const hours = Math.floor(minutes / 60);
  if (hours === 0) return `${minutes} min`;
  return minutes % 60 === 0 ? `${hours} h` : `${hours} h ${minutes % 60} min`;
}

/** `1 h 20 min`, `1:20`, `80 min`, `1.5 h`, or minutes alone, in seconds; undefined when it is no time. */
export function readTime(text: string): number | undefined {
  const word = text.trim().toLowerCase();
  if (word === "") return 0;
  const clock = /^(\d{1,3}):([0-5]\d)$/.exec(word);
  if (clock) return Number(clock[1]) * 3600 + Number(clock[2]) * 60;
  const parts =
    /^(?:(\d{1,4}(?:\.\d+)?) ?h(?:ours?|rs?)?)? ?(?:(\d{1,5}(?:\.\d+)?)(?: ?m(?:in(?:utes?)?)?)?)?$/.exec(
      word,
    );
  if (!parts || (parts[1] === undefined && parts[2] === undefined)) return undefined;
  return Math.round(Number(parts[1] ?? 0) * 3600 + Number(parts[2] ?? 0) * 60);
}

export class Times {
  private readonly document: Document;
  private readonly store: Store;

  constructor(document: Document, store: Store) {
    this.document = document;
    this.store = store;
    this.dress();
  }

  /** Every chapter with steps has its time. */
  dress(): void {
    for (const chapter of this.document.querySelectorAll("main > section")) {
      if (chapter.querySelector(":scope > .steps") && !chapter.querySelector(":scope > .time"))
        this.put(chapter);
      this.show(chapter);
    }
  }

  private put(chapter: Element): void {
    const { document } = this;
    const input = make(document, "input", {
      type: "text",
      autocomplete: "off",
      inputmode: "text",
      placeholder: "1 h 20 min",
    });
    const fault = make(document, "small", { class: "field-message", role: "alert" });
    input.addEventListener("change", () => {
      const seconds = readTime(input.value);
      fault.textContent = seconds === undefined ? "✗ write a time as 1 h 20 min, 80 min or 1:20" : "";
      if (seconds !== undefined) this.keep(chapter.id, seconds);
      this.show(chapter);
    });
    const timer = button(document, "Start timer", () => this.toggle(chapter), { class: "timer" });
    const title = chapter.querySelector("h2")?.textContent ?? chapter.id;
    chapter.append(
      make(
        document,
        "div",
        { class: "time" },
        labelled(document, `Time spent: ${title}`, input),
        timer,
        fault,
      ),
    );
  }

  private keep(chapter: string, seconds: number): void {
    const { [chapter]: _, ...others } = this.store.kept.seconds;
    this.store.keep({ seconds: seconds === 0 ? others : { ...others, [chapter]: seconds } });
  }

  private toggle(chapter: Element): void {
    const mine = this.store.kept.running?.chapter === chapter.id;
    this.stop();
    if (!mine) this.store.keep({ running: { chapter: chapter.id, since: Date.now() } });
    this.dress();
  }

  /** One timer runs at a time; it goes on while the page is closed. */
  private stop(): void {
    const { running, ...kept } = this.store.kept;
    if (!running) return;
    this.store.set(kept);
    const passed = Math.max(0, Math.round((Date.now() - running.since) / 1000));
    this.keep(running.chapter, (kept.seconds[running.chapter] ?? 0) + passed);
  }

  private show(chapter: Element): void {
    const frame = chapter.querySelector(":scope > .time");
    if (!frame) return;
    const input = frame.querySelector("input") as HTMLInputElement;
    const seconds = this.store.kept.seconds[chapter.id] ?? 0;
    if (input !== this.document.activeElement && readTime(input.value) !== undefined)
      input.value = seconds === 0 ? "" : spoken(seconds);
    frame.classList.toggle("has-time", seconds > 0);
    const runs = this.store.kept.running?.chapter === chapter.id;
    const timer = frame.querySelector(".timer") as HTMLButtonElement;
    timer.textContent = runs ? "Stop timer" : "Start timer";
    timer.setAttribute("aria-pressed", String(runs));
  }
}
