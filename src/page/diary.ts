/** The record's section: what is said of the whole, times and notes gathered, the file out and back. */

import { LARGEST_RECORD, LONGEST_ENTRY } from "../recipe/limits.ts";
import type { Kept } from "./kept.ts";
import { madeFields, madeWords } from "./made-fields.ts";
import { button, labelled, make } from "./make.ts";
import { readRecord, recordText } from "./record.ts";
import { say } from "./say.ts";
import type { Store } from "./store.ts";
import { spoken } from "./time.ts";

const SAID: readonly (readonly [name: string, words: string, long: boolean])[] = [
  ["hands", "Made by", false],
  ["begun", "Begun", false],
  ["finished", "Finished", false],
  ["changed", "What I changed, and why", true],
  ["lessons", "What I would do otherwise", true],
  ["photographs", "Photographs, as photos/front.jpg, one a line", true],
];

const newNotebook = (): string =>
  [...crypto.getRandomValues(new Uint8Array(6))].map((byte) => byte.toString(16).padStart(2, "0")).join("");

/** As 2026-11-25, where the reader is. */
const today = (now = new Date()): string =>
  [now.getFullYear(), now.getMonth() + 1, now.getDate()].map((n) => String(n).padStart(2, "0")).join("-");

export class Diary {
  private readonly document: Document;
  private readonly store: Store;
  private readonly gathered: HTMLElement;

  constructor(document: Document, store: Store) {
    this.document = document;
    this.store = store;
    this.gathered = make(document, "div", { class: "gathered" });
    document.querySelector("#your-measures")?.after(this.section());
    this.dress();
  }

  /** Shows what stands now. */
  dress(): void {
    const fields = this.document.querySelectorAll<HTMLInputElement | HTMLTextAreaElement>("[data-said]");
    for (const field of fields)
      if (field !== this.document.activeElement)
        field.value = this.store.kept.said[field.dataset.said ?? ""] ?? "";
    this.gathered.replaceChildren(...this.gather(this.store.kept));
    // An empty record takes no paper.
    const entered = this.gathered.childElementCount > 0 || Object.keys(this.store.kept.said).length > 0;
    this.document.querySelector("#record")?.classList.toggle("has-entries", entered);
  }

  private section(): HTMLElement {
    const { document, store } = this;
    const load = make(document, "input", {
      type: "file",
      accept: ".json,application/json",
      id: "load-record",
    });
    load.addEventListener("change", () => void this.load(load));
    return make(
      document,
      "section",
      { class: "record", id: "record", "aria-labelledby": "record-title" },
      make(document, "h2", { id: "record-title" }, "Your record"),
      make(
        document,
        "p",
        {},
        "Ticks, times, notes, the trial and changed measures stay in this browser. Save them as a file to keep them for good, to take them to another device, or to add them to the garment’s own papers (plainwork record).",
      ),
      ...SAID.map(([name, words, long]) => this.said(name, words, long)),
      ...madeFields(document, store, () => this.dress()),
      this.gathered,
      make(
        document,
        "div",
        { class: "record-buttons" },
        button(document, "Save the record", () => this.save()),
        labelled(document, "Load a record", load),
      ),
    );
  }

  private said(name: string, words: string, long: boolean): HTMLElement {
    const { document, store } = this;
    const given = { id: `said-${name}`, maxlength: String(LONGEST_ENTRY), autocomplete: "off" };
    const field = long
      ? make(document, "textarea", { ...given, rows: "3" })
      : make(document, "input", { ...given, type: "text" });
    field.dataset.said = name;
    field.addEventListener("input", () => {
      const { [name]: _, ...others } = store.kept.said;
      store.keep({ said: field.value === "" ? others : { ...others, [name]: field.value } });
      this.dress();
    });
    return labelled(document, words, field);
  }

  /** Times, notes and changed measures, as they print. */
  private gather(kept: Kept): HTMLElement[] {
    const { document } = this;
    const titleOf = (chapter: string): string =>
      document.querySelector(`#${CSS.escape(chapter)} > h2`)?.textContent ?? chapter;
    const list = (words: string, items: readonly string[]): HTMLElement[] =>
      items.length === 0
        ? []
        : [
            make(document, "h3", {}, words),
            make(document, "ul", {}, ...items.map((item) => make(document, "li", {}, item))),
          ];
    const times = Object.entries(kept.seconds);
    const total = times.reduce((sum, [, seconds]) => sum + seconds, 0);
    return [
      ...list("What was made", madeWords(kept.said)),
      ...list(
        "Measures changed",
        Object.entries(kept.changes).map(([path, text]) => `${path}: ${text === "" ? "taken out" : text}`),
      ),
      ...list(
        "Time spent",
        times.length === 0
          ? []
          : [
              ...times.map(([chapter, seconds]) => `${titleOf(chapter)}: ${spoken(seconds)}`),
              `in all: ${spoken(total)}`,
            ],
      ),
      ...list(
        "Notes",
        Object.entries(kept.notes).map(
          ([id, text]) => `${titleOf(id.split("/")[0] ?? "")}, step ${id.split("/")[1]}: ${text}`,
        ),
      ),
    ];
  }

  private save(): void {
    const { document } = this;
    // Times of one notebook run on from record to record; those of another are counted apart.
    if (this.store.kept.notebook === "") this.store.keep({ notebook: newNotebook() });
    const text = recordText(document.title, this.store.kept, today());
    const file = new Blob([text], { type: "application/json" });
    const link = make(document, "a", { href: URL.createObjectURL(file), download: "record.json" });
    link.click();
    setTimeout(() => URL.revokeObjectURL(link.href), 10_000);
  }

  private async load(input: HTMLInputElement): Promise<void> {
    const [file] = input.files ?? [];
    input.value = "";
    if (!file) return;
    if (file.size > LARGEST_RECORD) {
      say(this.document, "This file is larger than any record. Nothing was changed.");
      return;
    }
    const read = readRecord(await file.text(), this.document.title, this.store.kept);
    if ("fault" in read) {
      say(this.document, read.fault);
      return;
    }
    const before = this.store.kept;
    this.store.replace(read.kept);
    say(this.document, "The record is loaded; what stood here before is set aside.");
    const bar = this.document.querySelector(".notice-bar");
    bar?.append(
      button(this.document, "Put back what stood here", () => {
        this.store.replace(before);
        say(this.document, "What stood here before is back.");
      }),
    );
  }
}
