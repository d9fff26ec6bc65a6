/** What runs in the catalogue: search, filters, order, and two garments compared. */
import { cardsOf, plain } from "./cards.ts";
import { comparing } from "./compare.ts";

const byId = <T extends HTMLElement>(id: string): T => document.getElementById(id) as T;
const textOf = (id: string): string => document.getElementById(id)?.textContent ?? "";

type Facets = readonly [fibre: string, set: string, state: string, year: string, fullness: number];
const facets = JSON.parse(textOf("facets")) as readonly Facets[];
const garments = byId("garments");
const words = byId<HTMLInputElement>("words");
const chosen = ["fibre", "set", "state"].map((id) => byId<HTMLSelectElement>(id));
const sort = byId<HTMLSelectElement>("sort");
const cards = cardsOf(garments, byId("more"), textOf("rest"));

function fits(i: number, sought: readonly string[]): boolean {
  if (!chosen.every(({ value }, at) => value === "" || facets[i]?.[at] === value)) return false;
  return sought.length === 0 || sought.every((word) => cards.texts()[i]?.includes(word));
}

/** All garments in the order that is asked for; what has no year, or no fullness, stands last. */
function inOrder(): readonly number[] {
  const all = facets.map((_, i) => i);
  if (sort.selectedIndex === 0) return all;
  const [at, up] = sort.selectedIndex === 1 ? [3, 1] : [4, -1];
  return all.sort((a, b) => {
    const [x, y] = [facets[a]?.[at], facets[b]?.[at]];
    if (!x || !y) return (x ? 0 : 1) - (y ? 0 : 1);
    return x === y ? 0 : (x < y ? -1 : 1) * up;
  });
}

function show(): void {
  const sought = plain(words.value).split(/\s+/).filter(Boolean);
  const found = inOrder().filter((i) => fits(i, sought));
  cards.list(found);
  const all = `${cards.size} ${cards.size === 1 ? "garment" : "garments"}`;
  byId("count").textContent =
    found.length === cards.size ? all : found.length === 0 ? `none of ${all}` : `${found.length} of ${all}`;
}

words.addEventListener("input", show);
for (const one of [...chosen, sort]) one.addEventListener("change", show);
const ticked = comparing(
  byId("comparison"),
  cards,
  () => textOf("numbers"),
  () => words.focus(),
);
garments.addEventListener("change", ({ target }) => {
  if (target instanceof HTMLInputElement) ticked(Number(target.value));
});
garments.classList.add("live");
byId("find").hidden = false;
// What the browser kept of the fields when it was here last.
if (words.value !== "" || chosen.some(({ value }) => value !== "") || sort.selectedIndex > 0) show();
