/** The page's measures: fields that change them, messages beside them, and the way back to what was published. */
import type { Message } from "../recipe/message.ts";
import type { Opened } from "./core.ts";
import { faultWords } from "./fault-words.ts";
import { core } from "./loader.ts";
import { button, make } from "./make.ts";
import { say } from "./say.ts";
import type { Store } from "./store.ts";

const inputs = (document: Document): HTMLInputElement[] => [
  ...document.querySelectorAll<HTMLInputElement>(".fields input[name]"),
];

export class Measures {
  private readonly document: Document;
  private readonly store: Store;
  private readonly afterwards: () => void;
  /** What each field was published with. */
  private readonly published = new Map<string, string>();
  /** What is typed and cannot be worked out yet. */
  private readonly pending = new Map<string, string>();
  /** Fields of a page that asks a reader for her own measures; none elsewhere. */
  private readonly asks: ReadonlySet<string>;

  /** `afterwards` is called when the booklet has been worked out anew. */
  constructor(document: Document, store: Store, afterwards: () => void) {
    this.document = document;
    this.store = store;
    this.afterwards = afterwards;
    for (const { name, value } of inputs(document)) this.published.set(name, value);
    this.asks = new Set(
      [...document.querySelectorAll<HTMLInputElement>("#ask input")].map(({ name }) => name),
    );
    document.addEventListener("input", ({ target }) => {
      if (target instanceof HTMLInputElement && target.name !== "" && target.closest(".fields"))
        void this.set(target.name, target.value);
    });
    this.dress();
    if (Object.keys(store.kept.changes).length > 0 || store.kept.units !== "") void this.work();
  }

  /** Text of a measure as it stands on the page. */
  text(path: string): string {
    return this.pending.get(path) ?? this.store.kept.changes[path] ?? this.published.get(path) ?? "";
  }

  isMeasure(path: string): boolean {
    return this.published.has(path);
  }

  /** Changes one measure; what cannot be is said beside it and nothing else happens. Resolves when the page shows it. */
  async set(path: string, text: string): Promise<readonly Message[]> {
    this.pending.set(path, text);
    return this.work();
  }

  /** Takes every change back. */
  async asPublished(): Promise<void> {
    this.pending.clear();
    const asked = Object.entries(this.store.kept.changes).filter(([path]) => this.asks.has(path));
    this.store.keep({ changes: Object.fromEntries(asked) });
    for (const input of inputs(this.document)) input.value = this.text(input.name);
    await this.work();
    say(
      this.document,
      this.asks.size > 0
        ? "All choices are the pattern’s own again; your measures stay."
        : "All measures are as published again.",
    );
  }

  /** Works the booklet out with all changes there are. */
  async work(): Promise<readonly Message[]> {
    let opened: Opened;
    try {
      opened = await core(this.document);
    } catch (error) {
      say(this.document, error instanceof Error ? error.message : String(error));
      return [];
    }
    const all: Record<string, string> = { ...this.store.kept.changes };
    for (const [path, text] of this.pending) all[path] = text.trim();
    for (const path of Object.keys(all))
      if (all[path] === (this.published.get(path) ?? "").trim()) delete all[path];
    const changes = Object.fromEntries(
      Object.entries(all).map(([path, text]) => [path, text === "" ? null : text]),
    );
    const { ok, messages } = opened.show(changes, this.store.kept.units);
    if (ok) this.pending.clear();
    // Measures of her own are kept while they do not work out: she has no others to go back to.
    if (ok || this.asks.size > 0) this.store.keep({ changes: all });
    this.dress();
    this.showMessages(
      messages.filter(({ level }) => !ok || level === "warning"),
      ok,
    );
    if (ok) this.afterwards();
    return ok ? [] : messages;
  }

  /** Fields can be typed in, and show what stands. */
  dress(): void {
    for (const input of inputs(this.document)) {
      input.readOnly = false;
      if (!this.published.has(input.name)) this.published.set(input.name, input.defaultValue);
      const text = this.text(input.name);
      if (input !== this.document.activeElement && input.value !== text) input.value = text;
      const changed = text.trim() !== (this.published.get(input.name) ?? "").trim();
      input.classList.toggle("is-changed", changed && !this.asks.has(input.name));
      this.mark(input, changed && !this.asks.has(input.name));
    }
    this.showBar();
  }

  private mark(input: HTMLInputElement, changed: boolean): void {
    const there = input.parentElement?.querySelector(":scope > .was");
    const was = this.published.get(input.name);
    const words = changed ? `◆ changed; ${was ? `published as ${was}` : "not given as published"}` : "";
    if (!changed) there?.remove();
    else if (there) there.textContent = words;
    else input.after(make(this.document, "small", { class: "was" }, words));
  }

  /** The message of the command line, beside its field; those of no field go to the top of the measures. */
  private showMessages(messages: readonly Message[], ok: boolean): void {
    for (const old of this.document.querySelectorAll(".field-message")) old.remove();
    for (const input of inputs(this.document)) {
      input.removeAttribute("aria-invalid");
      input.removeAttribute("aria-describedby");
    }
    if (ok) return;
    messages.forEach((message, i) => {
      const input = this.fieldOf(message);
      const id = `message-${i}`;
      const text = faultWords(message);
      const words = make(
        this.document,
        "p",
        { class: "field-message", id, role: "alert" },
        `✗ ${text}${this.document.querySelector("main > section") ? " The page keeps the last good booklet." : ""}`,
      );
      if (!input) {
        this.document.querySelector("#ask .fields, #your-measures .fields")?.prepend(words);
        return;
      }
      input.setAttribute("aria-invalid", "true");
      input.setAttribute("aria-describedby", id);
      input.parentElement?.append(words);
    });
  }

  /** The field a message is about: its own path's, or the one that was typed in last. */
  private fieldOf({ path }: Message): HTMLInputElement | undefined {
    const all = inputs(this.document);
    const typed = [...this.pending.keys()].at(-1);
    return all.find(({ name }) => name === path) ?? all.find(({ name }) => name === typed);
  }

  /** While anything is changed: what it is and the way back. */
  private showBar(): void {
    const count = Object.keys(this.store.kept.changes).filter((path) => !this.asks.has(path)).length;
    const there = this.document.querySelector(".changed-bar");
    if (count === 0) {
      there?.remove();
      return;
    }
    const what = this.asks.size > 0 ? ["choice is", "choices are"] : ["measure is", "measures are"];
    const words = `◆ ${count} ${count === 1 ? what[0] : what[1]} changed`;
    if (there) {
      (there.firstElementChild as Element).textContent = words;
      return;
    }
    const bar = make(
      this.document,
      "section",
      { class: "changed-bar", "aria-label": "Changed measures" },
      make(this.document, "span", {}, words),
      button(
        this.document,
        this.asks.size > 0 ? "As the pattern" : "As published",
        () => void this.asPublished(),
      ),
    );
    this.document.querySelector("header")?.after(bar);
  }
}
