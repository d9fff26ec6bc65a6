/** What is read at a fitting is written into the table itself: its empty cells become fields, kept with the record. */
import { make } from "./make.ts";
import type { Store } from "./store.ts";

const CHAPTERS = ["at-a-glance", "second-fitting", "third-fitting"] as const;
const LONGEST = "60";

const textOf = (cell: Element | null | undefined): string => cell?.textContent?.trim() ?? "";

/** Every empty cell of a fitting's tables with its name, `second-fitting/left side/Read`. */
function emptyCells(document: Document): { name: string; words: string; cell: HTMLElement }[] {
  return CHAPTERS.flatMap((chapter) =>
    [...document.querySelectorAll<HTMLTableElement>(`#${chapter} table`)].flatMap((table) => {
      const heads = [...table.querySelectorAll("thead th")].map(textOf);
      return [...table.querySelectorAll("tbody tr")].flatMap((row) => {
        const [first, ...cells] = [...row.children] as HTMLElement[];
        return cells.flatMap((cell, i) => {
          const own = cell.querySelector(":scope > input");
          if (!own && textOf(cell) !== "") return [];
          const head = heads[i + 1] ?? "";
          const row = textOf(first);
          return [{ name: `${chapter}/${row}/${head}`, words: `${row}: ${head}`, cell }];
        });
      });
    }),
  );
}

/** Puts a field into every empty cell that has none yet, and brings all in line with what is kept. */
export function dressCells(document: Document, store: Store): void {
  for (const { name, words, cell } of emptyCells(document)) {
    const field =
      cell.querySelector<HTMLInputElement>(":scope > input") ?? put(document, store, name, words, cell);
    if (field !== document.activeElement) field.value = store.kept.said[name] ?? "";
  }
}

function put(
  document: Document,
  store: Store,
  name: string,
  words: string,
  cell: HTMLElement,
): HTMLInputElement {
  const field = make(document, "input", {
    class: "cell",
    type: "text",
    "aria-label": words,
    maxlength: LONGEST,
    autocomplete: "off",
  });
  field.addEventListener("input", () => {
    const { [name]: _, ...others } = store.kept.said;
    store.keep({ said: field.value === "" ? others : { ...others, [name]: field.value } });
  });
  cell.append(field);
  return field;
}
