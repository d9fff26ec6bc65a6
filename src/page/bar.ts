/** The bar within the thumb's reach: one step at a time, larger type, the other units, measures, record. */
import { button, make } from "./make.ts";
import type { Measures } from "./measures.ts";
import type { Store } from "./store.ts";
import type { Walk } from "./walk.ts";

export class Bar {
  private readonly document: Document;
  private readonly store: Store;
  private readonly large: HTMLButtonElement;
  private readonly units: HTMLButtonElement;

  constructor(document: Document, store: Store, measures: Measures, walk: Walk) {
    this.document = document;
    this.store = store;
    const to = (id: string) => () => {
      document.getElementById(id)?.scrollIntoView();
      document.querySelector<HTMLElement>(`#${id} input, #${id} button`)?.focus({ preventScroll: true });
    };
    this.large = button(document, "Larger", () => {
      store.keep({ large: !store.kept.large });
      this.dress();
    });
    this.units = button(document, "", () => {
      store.keep({ units: this.other() });
      this.dress();
      void measures.work();
    });
    const walking = button(document, "One step", () => walk.start());
    document.body.append(
      make(
        document,
        "section",
        { class: "bar", "aria-label": "This booklet" },
        walking,
        this.large,
        this.units,
        button(document, "Measures", to(document.getElementById("ask") ? "ask" : "your-measures")),
        button(document, "Record", to("record")),
      ),
    );
    this.dress();
  }

  /** What pressing the units' button changes to: the other ones, and back to the recipe's own. */
  private other(): "" | "in" | "cm" {
    if (this.store.kept.units !== "") return "";
    return this.document.documentElement.dataset.units === "cm" ? "in" : "cm";
  }

  /** In line with what is kept. */
  dress(): void {
    const { large } = this.store.kept;
    this.document.documentElement.classList.toggle("large", large);
    this.large.setAttribute("aria-pressed", String(large));
    const own = this.document.documentElement.dataset.units === "cm" ? "cm" : "in";
    const now = this.store.kept.units === "" ? own : this.store.kept.units;
    this.units.textContent = now === "in" ? "In cm" : "In inches";
  }
}
