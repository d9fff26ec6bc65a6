/** sizes.json: the sizes of a garment and every number that differs, as data. */
import { numbersOf } from "./numbers.ts";
import type { SizeSet } from "./set.ts";

/** Keys in a fixed order; `folder` is null for a size that does not work out. Numbers are exact, as in plan.json. */
export function setJson(set: SizeSet, version: string) {
  return {
    plainwork: version,
    recipe: set.title,
    sizes: [
      ...set.sizes.map(({ name, folder }) => ({ name, folder })),
      ...set.faults.map(({ name }) => ({ name, folder: null })),
    ],
    numbers: numbersOf(set.sizes).flatMap(({ title, rows }) =>
      rows.map(({ about, name, cells }) => ({
        group: title,
        name: name ?? null,
        about,
        sizes: Object.fromEntries(
          set.sizes.map((size, i) => {
            const cell = cells[i];
            return [size.name, cell ? { exact: cell.exact, shown: cell.shown } : null];
          }),
        ),
      })),
    ),
  };
}
