/**
 * The booklet beside the text: in a frame of its own, so that it has the width of its pane and is read as a booklet is.
 * It shows the nodes it is given, gives changed measures out, and opens the working of any number.
 */
import type { Element as Node } from "hast";
import { html } from "../../../booklet/nodes.ts";
import { faultWords } from "../../../page/fault-words.ts";
import type { Units } from "../../../page/kept.ts";
import { patch } from "../../../page/live/patch.ts";
import type { Working } from "../../../page/live/working.ts";
import { button, make } from "../../../page/make.ts";
import { Numbers } from "../../../page/numbers.ts";
import type { Message } from "../../../recipe/message.ts";
import { show as bring } from "./bring.ts";

/** What the frame asks of the page. */
export interface Page {
  /** A measure is typed; `isDone` once the field is left. Gives what is wrong with it now. */
  change(path: string, text: string, isDone: boolean): readonly Message[];
  working(name: string): Working | undefined;
  /** Text of a measure as the recipe writes it now. */
  text(path: string): string;
  readIn(units: Units): void;
  /** From now on what differs from the booklet as it is now is marked. */
  markFromHere(): void;
  undo(): void;
  redo(): void;
}

export interface Shown {
  readonly title: string;
  readonly units: "in" | "cm";
  readonly main: Node;
  readonly contents: Node;
  readonly measures: Node;
}

export interface Frame {
  /**
   * Shows a booklet; its fields are filled by `say`, which follows.
   *
   * @param brings the section to bring into view where nothing of it is seen
   */
  show(shown: Shown, brings?: string): void;
  /** Fills the fields, and says what is wrong beside those it is about. */
  say(messages: readonly Message[]): void;
}

declare global {
  /** Given by the frame's script. */
  var plainworkFrame: ((page: Page) => Frame) | undefined;
}

const inputs = (): HTMLInputElement[] => [
  ...document.querySelectorAll<HTMLInputElement>(".fields input[name]"),
];

class BookletFrame implements Frame {
  private readonly page: Page;
  private readonly numbers: Numbers;
  private readonly units: HTMLButtonElement;
  private last: Shown = {
    title: "",
    units: "in",
    main: html("main"),
    contents: html("nav", { className: ["contents"], ariaLabel: "Chapters" }),
    measures: html("section", { id: "your-measures" }),
  };
  private own: Units = "";

  constructor(page: Page) {
    this.page = page;
    this.numbers = new Numbers(
      document,
      {
        isMeasure: (path) => inputs().some(({ name }) => name === path),
        text: (path) => page.text(path),
        set: (path, text) => Promise.resolve(page.change(path, text, false)),
      },
      () => Promise.resolve({ working: (name: string) => page.working(name) }),
    );
    this.units = button(document, "In cm", () => {
      this.own = this.own === "" ? (this.last.units === "cm" ? "in" : "cm") : "";
      page.readIn(this.own);
    });
    const large = button(document, "Larger", () => {
      const is = document.documentElement.classList.toggle("large");
      large.setAttribute("aria-pressed", String(is));
    });
    large.setAttribute("aria-pressed", "false");
    document.body.append(
      make(
        document,
        "section",
        { class: "bar", "aria-label": "This booklet" },
        large,
        this.units,
        button(document, "Measures", () => {
          document.getElementById("your-measures")?.scrollIntoView();
          inputs()
            .find((input) => input.closest("#your-measures"))
            ?.focus({ preventScroll: true });
        }),
        button(document, "Mark from here", () => page.markFromHere()),
      ),
    );
    this.listen();
  }

  show(shown: Shown, brings?: string): void {
    const { last } = this;
    this.last = shown;
    if (shown.title !== last.title) {
      document.title = shown.title;
      (document.querySelector("h1") as HTMLElement).textContent = shown.title;
    }
    const place = (selector: string): Element => document.querySelector(selector) as Element;
    patch(place("body > main"), last.main, shown.main);
    patch(place("nav.contents"), last.contents, shown.contents);
    patch(place("#your-measures"), last.measures, shown.measures);
    if (this.own === "") this.units.textContent = shown.units === "cm" ? "In inches" : "In cm";
    else this.units.textContent = "As written";
    this.numbers.dress();
    if (brings !== undefined) bring(document.getElementById(brings));
  }

  say(messages: readonly Message[]): void {
    for (const old of document.querySelectorAll(".field-message")) old.remove();
    for (const input of inputs()) {
      const own = messages.filter(({ path, level }) => path === input.name && level === "error");
      if (own.length > 0) input.setAttribute("aria-invalid", "true");
      else input.removeAttribute("aria-invalid");
      if (own.length === 0) {
        input.removeAttribute("aria-describedby");
        continue;
      }
      const id = `${input.id}-message`;
      input.setAttribute("aria-describedby", id);
      input.parentElement?.append(
        make(document, "p", { class: "field-message", id }, `✗ ${own.map(faultWords).join(" ")}`),
      );
    }
    this.dressFields();
  }

  /** Fields can be typed in, and show what the text says. */
  private dressFields(): void {
    for (const input of inputs()) {
      input.readOnly = false;
      if (input === document.activeElement) continue;
      const text = this.page.text(input.name);
      if (input.value !== text) input.value = text;
    }
  }

  private listen(): void {
    const changed = (isDone: boolean) => (event: Event) => {
      const { target } = event;
      if (!(target instanceof HTMLInputElement) || target.name === "" || !target.closest(".fields")) return;
      this.page.change(target.name, target.value, isDone);
    };
    document.addEventListener("input", changed(false));
    document.addEventListener("change", changed(true));
    // Filled and emptied again in one visit, a field says nothing of a change.
    document.addEventListener("focusout", (event) => {
      if (event.target instanceof HTMLInputElement && event.target.value === "") changed(true)(event);
    });
    document.addEventListener("keydown", (event) => {
      if (!(event.ctrlKey || event.metaKey) || event.altKey) return;
      const key = event.key.toLowerCase();
      if (key !== "z" && key !== "y") return;
      event.preventDefault();
      if (key === "y" || event.shiftKey) this.page.redo();
      else this.page.undo();
      const { activeElement } = document;
      if (activeElement instanceof HTMLInputElement && activeElement.name !== "")
        activeElement.value = this.page.text(activeElement.name);
    });
  }
}

globalThis.plainworkFrame = (page) => new BookletFrame(page);
