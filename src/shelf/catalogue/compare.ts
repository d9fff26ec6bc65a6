/** Two garments of the catalogue, number by number. */
import type { Cards } from "./cards.ts";

interface Numbers {
  readonly names: readonly string[];
  readonly about: readonly string[];
  readonly rows: readonly string[];
}

function element(tag: string, text = "", given: Readonly<Record<string, string>> = {}): HTMLElement {
  const made = document.createElement(tag);
  made.textContent = text;
  for (const [name, value] of Object.entries(given)) made.setAttribute(name, value);
  return made;
}

/** The numbers of all garments, out of their packed text (raw deflate, base64). */
async function unpacked(packed: string): Promise<Numbers> {
  const bytes = Uint8Array.from(atob(packed), (letter) => letter.charCodeAt(0));
  const stream = new Blob([bytes]).stream().pipeThrough(new DecompressionStream("deflate-raw"));
  return new Response(stream).json() as Promise<Numbers>;
}

/** One row a number that either garment has: what differs stands out. */
function rowsOf({ names, about, rows }: Numbers, pair: readonly number[]): HTMLElement {
  const [left, right] = pair.map((i) => (rows[i] ?? "").split("\n").map((cell) => cell.split("\t"))) as [
    string[][],
    string[][],
  ];
  const body = element("tbody");
  names.forEach((name, n) => {
    const [a, exactA = a] = left[n] ?? [];
    const [b, exactB = b] = right[n] ?? [];
    if (!a && !b) return;
    const row = element("tr", "", exactA === exactB ? { class: "same" } : {});
    const head = element("th", about[n] || name, { scope: "row" });
    if (about[n]) head.append(element("small", name));
    row.append(head, element("td", a || "-"), element("td", b || "-"));
    body.append(row);
  });
  return body;
}

/**
 * Answers the boxes on the cards.
 * @param comparison where two garments are compared
 * @param packed their numbers
 * @param ended is told when the maker ends the comparison
 * @returns what to call when a card's box was ticked or unticked
 */
export function comparing(
  comparison: HTMLElement,
  cards: Cards,
  packed: () => string,
  ended: () => void,
): (i: number) => void {
  const boxOf = (i: number): HTMLInputElement => cards.at(i).querySelector("input") as HTMLInputElement;
  /** The garments ticked, the latest last; never more than two. */
  let ticked: number[] = [];
  let numbers: Numbers | undefined;

  const compare = async (): Promise<void> => {
    comparison.hidden = ticked.length === 0;
    const titles = ticked.map((i) => cards.at(i).querySelector("h2")?.textContent ?? "");
    if (ticked.length < 2) {
      comparison.replaceChildren(element("p", `${titles[0] ?? ""}: tick a second garment to compare.`));
      return;
    }
    numbers ??= await unpacked(packed());
    if (ticked.length < 2) return;
    const only = element("input", "", { type: "checkbox", id: "only" }) as HTMLInputElement;
    only.addEventListener("change", () => comparison.classList.toggle("only", only.checked));
    comparison.classList.remove("only");
    const label = element("label", "", { for: "only" });
    label.append(only, " only what differs");
    const end = element("button", "End the comparison", { type: "button" });
    end.addEventListener("click", () => {
      for (const i of ticked) boxOf(i).checked = false;
      ticked = [];
      void compare();
      ended();
    });
    const tools = element("p");
    tools.append(label, " ", end);
    const head = element("tr");
    head.append(...["Number", ...titles].map((title) => element("th", title, { scope: "col" })));
    const top = element("thead");
    top.append(head);
    const table = element("table");
    table.append(top, rowsOf(numbers, ticked));
    const frame = element("div", "", {
      class: "table",
      tabindex: "0",
      role: "group",
      "aria-label": "Numbers of both",
    });
    frame.append(table);
    comparison.replaceChildren(element("h2", "Two garments, number by number"), tools, frame);
    comparison.scrollIntoView({ block: "start" });
  };

  return (i) => {
    ticked = boxOf(i).checked ? [...ticked, i] : ticked.filter((one) => one !== i);
    // A third takes the place of the first.
    while (ticked.length > 2) boxOf(ticked.shift() as number).checked = false;
    void compare();
  };
}
