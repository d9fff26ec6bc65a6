/** What runs in the catalogue: search, filters, order, and two garments compared number by number. */

const byId = <T extends HTMLElement>(id: string): T => document.getElementById(id) as T;
const jsonOf = <T>(id: string): T => JSON.parse(byId(id).textContent ?? "null") as T;

type Facets = readonly [fibre: string, set: string, state: string, year: string, fullness: number];
const facets = jsonOf<readonly Facets[]>("facets");
const list = byId("garments");
const cards = [...list.children] as HTMLElement[];
const cardAt = (i: number): HTMLElement => cards[i] as HTMLElement;
const facetsOf = (card: HTMLElement): Facets => facets[Number(card.dataset.i)] as Facets;
const plain = (text: string): string => text.toLowerCase().normalize("NFD").replace(/\p{M}/gu, "");
/** What is sought in; made when something is first sought. */
let texts: readonly string[] | undefined;

const words = byId<HTMLInputElement>("words");
const chosen = ["fibre", "set", "state"].map((id) => byId<HTMLSelectElement>(id));
const sort = byId<HTMLSelectElement>("sort");
const count = byId("count");

function filter(): void {
  const sought = plain(words.value).split(/\s+/).filter(Boolean);
  if (sought.length > 0) texts ??= cards.map((card) => plain(card.textContent ?? ""));
  let seen = 0;
  cards.forEach((card, i) => {
    const fits =
      chosen.every(({ value }, at) => value === "" || facets[i]?.[at] === value) &&
      sought.every((word) => texts?.[i]?.includes(word));
    if (fits) seen += 1;
    if (card.hidden === fits) card.hidden = !fits;
  });
  const all = `${cards.length} ${cards.length === 1 ? "garment" : "garments"}`;
  count.textContent = seen === cards.length ? all : seen === 0 ? `none of ${all}` : `${seen} of ${all}`;
}

function order(): void {
  const [at, down] = sort.selectedIndex === 1 ? [3, false] : [4, true];
  const sorted =
    sort.selectedIndex === 0
      ? cards
      : cards.toSorted((a, b) => {
          const [x, y] = [facetsOf(a)[at] as string, facetsOf(b)[at] as string];
          // What has no year, or no fullness, stands last.
          if (!x || !y) return (x ? 0 : 1) - (y ? 0 : 1);
          return x === y ? 0 : (x < y ? -1 : 1) * (down ? -1 : 1);
        });
  list.append(...sorted);
}

function element(tag: string, text = "", given: Readonly<Record<string, string>> = {}): HTMLElement {
  const made = document.createElement(tag);
  made.textContent = text;
  for (const [name, value] of Object.entries(given)) made.setAttribute(name, value);
  return made;
}

const comparison = byId("comparison");
const boxOf = (i: number): HTMLInputElement => cardAt(i).querySelector("input") as HTMLInputElement;
/** The garments ticked, the latest last; never more than two. */
let ticked: number[] = [];

interface Numbers {
  readonly names: readonly string[];
  readonly about: readonly string[];
  readonly rows: readonly string[];
}
let numbers: Numbers | undefined;

function tick(i: number): void {
  ticked = boxOf(i).checked ? [...ticked, i] : ticked.filter((one) => one !== i);
  // A third takes the place of the first.
  while (ticked.length > 2) boxOf(ticked.shift() as number).checked = false;
  void compare();
}

async function unpacked(): Promise<Numbers> {
  const bytes = Uint8Array.from(atob(byId("numbers").textContent ?? ""), (letter) => letter.charCodeAt(0));
  const stream = new Blob([bytes]).stream().pipeThrough(new DecompressionStream("deflate-raw"));
  return new Response(stream).json() as Promise<Numbers>;
}

async function compare(): Promise<void> {
  comparison.hidden = ticked.length === 0;
  const titles = ticked.map((i) => cardAt(i).querySelector("h2")?.textContent ?? "");
  if (ticked.length < 2) {
    comparison.replaceChildren(element("p", `${titles[0] ?? ""}: tick a second garment to compare.`));
    return;
  }
  numbers ??= await unpacked();
  if (ticked.length < 2) return;
  const { names, about, rows } = numbers;
  const [left, right] = ticked.map((i) => (rows[i] ?? "").split("\n").map((cell) => cell.split("\t"))) as [
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
    words.focus();
  });
  const tools = element("p");
  tools.append(label, " ", end);
  const head = element("tr");
  head.append(
    element("th", "Number", { scope: "col" }),
    ...titles.map((title) => element("th", title, { scope: "col" })),
  );
  const top = element("thead");
  top.append(head);
  const table = element("table");
  table.append(top, body);
  const frame = element("div", "", {
    class: "table",
    tabindex: "0",
    role: "group",
    "aria-label": "Numbers of both",
  });
  frame.append(table);
  comparison.replaceChildren(element("h2", "Two garments, number by number"), tools, frame);
  comparison.scrollIntoView({ block: "start" });
}

words.addEventListener("input", filter);
for (const one of chosen) one.addEventListener("change", filter);
sort.addEventListener("change", order);
list.addEventListener("change", ({ target }) => {
  if (target instanceof HTMLInputElement) tick(Number(target.value));
});
list.classList.add("live");
byId("find").hidden = false;
// What the browser kept of the fields when it was here last.
if (words.value !== "" || chosen.some(({ value }) => value !== "")) filter();
if (sort.selectedIndex > 0) order();
