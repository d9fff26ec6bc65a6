/** Any number opens its working: what it is, formula in names and in numbers, where each name comes from; a measure can be changed there. */

import type { Message } from "../recipe/message.ts";
import { faultWords } from "./fault-words.ts";
import type { Working } from "./live/working.ts";
import { button, labelled, make } from "./make.ts";
import { say } from "./say.ts";

/** Where measures are changed. */
export interface Changing {
  isMeasure(path: string): boolean;
  /** Text of a measure as it stands. */
  text(path: string): string;
  /** Changes one; resolves when the page shows it, with what is wrong. */
  set(path: string, text: string): Promise<readonly Message[]>;
}

/** What knows how values were worked out. */
export interface Workings {
  working(name: string): Working | undefined;
}

export class Numbers {
  private readonly document: Document;
  private readonly measures: Changing;
  private readonly workings: () => Promise<Workings>;
  private readonly dialog: HTMLDialogElement;

  constructor(document: Document, measures: Changing, workings: () => Promise<Workings>) {
    this.document = document;
    this.measures = measures;
    this.workings = workings;
    this.dialog = make(document, "dialog", { "aria-label": "How this number was worked out" });
    document.body.append(this.dialog);
    const opened = (target: EventTarget | null): string | undefined =>
      target instanceof Element ? target.closest<HTMLElement>("data[data-name]")?.dataset.name : undefined;
    document.addEventListener("click", ({ target }) => {
      const name = opened(target);
      if (name !== undefined) void this.open(name);
    });
    document.addEventListener("keydown", (event) => {
      const name = event.key === "Enter" || event.key === " " ? opened(event.target) : undefined;
      if (name === undefined) return;
      event.preventDefault();
      void this.open(name);
    });
    this.dress();
  }

  /** Every number can be reached by the keyboard. */
  dress(): void {
    for (const number of this.document.querySelectorAll<HTMLElement>("data[data-name]:not(.opens)")) {
      number.tabIndex = 0;
      number.setAttribute("role", "button");
      number.classList.add("opens");
    }
  }

  private async open(name: string): Promise<void> {
    try {
      const working = (await this.workings()).working(name);
      if (working) await this.show(working);
    } catch (error) {
      say(this.document, error instanceof Error ? error.message : String(error));
    }
  }

  private async show(working: Working): Promise<void> {
    const { document } = this;
    const list = make(document, "dl");
    const row = (term: string, ...value: (Node | string)[]): void => {
      if (value.length === 0 || value[0] === "") return;
      list.append(make(document, "dt", {}, term), make(document, "dd", {}, ...value));
    };
    row("what", working.about);
    row("value", `${working.name} = ${working.shown}`);
    row("before it is rounded for printing", working.exactly);
    row("worked out as", working.how);
    row("in numbers", working.inNumbers === working.how ? "" : working.inNumbers);
    row("from", ...(await this.sources(working.from)));
    row("rule", working.rule);
    const close = button(document, "Close", () => this.dialog.close());
    this.dialog.replaceChildren(list, ...this.field(working), close);
    if (!this.dialog.open) this.dialog.showModal();
    close.focus();
  }

  /** The names of the formula, each with its number, each opening its own working. */
  private async sources(names: readonly string[]): Promise<HTMLElement[]> {
    const opened = await this.workings();
    return names.map((name) =>
      button(this.document, `${name} = ${opened.working(name)?.shown ?? ""}`, () => void this.open(name), {
        class: "source",
      }),
    );
  }

  /** A measure of the recipe can be changed where it is read. */
  private field({ path, name }: Working): HTMLElement[] {
    const { document, measures } = this;
    if (!measures.isMeasure(path)) return [];
    const input = make(document, "input", { type: "text", autocomplete: "off", spellcheck: "false" });
    input.value = measures.text(path);
    const message = make(document, "p", { class: "dialog-message", role: "alert" });
    input.addEventListener("input", () => {
      void measures.set(path, input.value).then(async (faults) => {
        message.textContent = faults.map((fault) => `✗ ${faultWords(fault)}`).join(" ");
        const working = (await this.workings()).working(name);
        const value = this.dialog.querySelectorAll("dd")[1];
        if (faults.length === 0 && working && value) value.textContent = `${name} = ${working.shown}`;
      });
    });
    return [labelled(document, "change this measure", input), message];
  }
}
