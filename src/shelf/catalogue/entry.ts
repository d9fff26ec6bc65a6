/** One garment of the catalogue, read from its plan.json, whoever built it. */
import { join } from "node:path";
import { SHEETS } from "../../booklet/sheet-list.ts";
import { isWithin } from "../project-files.ts";
import { readText } from "../texts.ts";
import type { World } from "../world.ts";

/** What plan.json holds of a value. */
interface PlanValue {
  readonly exact: string;
  readonly unit: string;
  readonly shown: string;
}

/** One booklet. Words are "" where the plan does not say. */
export interface Entry {
  /** Its folder under the catalogue's, with `/` between: `my-skirt`, `my-skirt/B`. */
  readonly folder: string;
  readonly title: string;
  readonly size: string;
  readonly kind: string;
  readonly year: string;
  readonly fibre: string;
  readonly method: string;
  readonly state: string;
  /** Does its folder hold the drawing of the finished garment? */
  readonly drawing: boolean;
  /** The picture for a list, under its folder: the small one, in an older booklet the drawing. "" where there is none. */
  readonly picture: string;
  /** Pages beside its booklet, by their path under the catalogue's folder. */
  readonly pages: readonly { readonly words: string; readonly path: string }[];
  /** The values that the page says of it. */
  readonly values: ReadonlyMap<SaidName, PlanValue>;
  /** All its values, a line each: name, as it is printed, exactly with its unit, with tabs between. One text takes little room. */
  readonly numbers: string;
}

/** Values that stand on a garment's card. */
const SAID = [
  "finished.front",
  "finished.back",
  "skirt.round",
  "skirt.fullness",
  "waist.seam",
  "cloth.buy",
] as const;
export type SaidName = (typeof SAID)[number];

export interface Found {
  readonly entries: readonly Entry[];
  /** plan.json files that cannot be read, by their path under the folder. */
  readonly skipped: readonly string[];
}

/** A plan with every page of marks is far smaller. */
const LARGEST_PLAN = 16 * 1024 * 1024;

const DRAWING = "figures/finished.svg";
export const PICTURE = "figures/picture.svg";

const NAMES = new Intl.Collator("en-GB", { numeric: true });

const byName = (a: Entry, b: Entry): number =>
  NAMES.compare(`${a.title} ${a.size}`, `${b.title} ${b.size}`) || (a.folder < b.folder ? -1 : 1);

/** Every garment in a folder, and every size of one in a folder inside; in the order of their titles. */
export function findEntries(world: World, out: string): Found {
  const entries: Entry[] = [];
  const skipped: string[] = [];
  const look = (folder: string, deeper: boolean, above: Entry["pages"] = []): void => {
    const names = listed(world, join(out, folder));
    const pages = folder === "" ? [] : [...above, ...pagesOf(folder, names)];
    if (folder !== "" && names.includes("plan.json")) {
      const entry = entryOf(world, out, folder, names.includes("figures"), pages);
      if (entry) entries.push(entry);
      // A booklet that is being replaced at this moment is listed by who replaces it.
      else if (world.kind(join(out, folder, "plan.json")) === "file") skipped.push(`${folder}/plan.json`);
    }
    if (!deeper) return;
    for (const name of names) {
      if (name.startsWith(".") || NOT_SIZES.has(name)) continue;
      if (world.kind(join(out, folder, name)) === "folder")
        look(folder === "" ? name : `${folder}/${name}`, folder === "", pages);
    }
  };
  look("", true);
  return { entries: entries.sort(byName), skipped };
}

const NOT_SIZES = new Set(["figures", "guides", "photos"]);

/** Pages that are not one garment's booklet: those of all sizes, the one with a buyer's own measures, sheets of one page. */
function pagesOf(folder: string, names: readonly string[]): Entry["pages"] {
  const inSizes = names.includes("sizes.html");
  const pages = [
    ["all sizes in one booklet", "booklet.html", inSizes],
    ["table of the sizes", "sizes.html", inSizes],
    ["with your own measures", "measure-your-own.html", names.includes("measure-your-own.html")],
    ...SHEETS.map(({ title, file }) => [title.toLowerCase(), file, names.includes(file)] as const),
  ] as const;
  return pages.filter(([, , there]) => there).map(([words, name]) => ({ words, path: `${folder}/${name}` }));
}

function listed(world: World, folder: string): readonly string[] {
  try {
    return world.list(folder);
  } catch {
    return [];
  }
}

function entryOf(
  world: World,
  out: string,
  folder: string,
  figures: boolean,
  pages: Entry["pages"],
): Entry | undefined {
  const has = (path: string): boolean => figures && world.kind(join(out, folder, path)) === "file";
  try {
    if (!isWithin(world, out, join(out, folder, "plan.json"))) return undefined;
    const text = readText(world, join(out, folder, "plan.json"), "plan", "", LARGEST_PLAN);
    if (typeof text !== "string") return undefined;
    const plan = JSON.parse(text) as Record<string, unknown>;
    const { values, recipe, size } = plan;
    if (typeof recipe !== "string" || typeof values !== "object" || values === null) return undefined;
    const garment = (plan.garment ?? {}) as Record<string, unknown>;
    const word = (key: string): string =>
      typeof garment[key] === "string" || typeof garment[key] === "number" ? String(garment[key]) : "";
    return {
      folder,
      title: recipe,
      size: typeof size === "string" ? size : "",
      kind: word("kind"),
      year: word("year"),
      fibre: word("fibre"),
      method: word("method"),
      state: word("state"),
      drawing: has(DRAWING),
      picture: [PICTURE, DRAWING].find(has) ?? "",
      pages,
      ...valuesOf(Object.entries(values)),
    };
  } catch {
    return undefined;
  }
}

function valuesOf(all: readonly (readonly [string, unknown])[]): Pick<Entry, "values" | "numbers"> {
  const known = all.filter((pair): pair is [string, PlanValue] => isValue(pair[1]));
  const said = new Map(
    known.filter((pair): pair is [SaidName, PlanValue] => SAID.some((name) => name === pair[0])),
  );
  const line = (text: string): string => text.replace(/[\t\n]/g, " ");
  const lines = known.map(([name, { shown, exact, unit }]) =>
    [name, shown, `${exact} ${unit}`].map(line).join("\t"),
  );
  return { values: said, numbers: lines.join("\n") };
}

function isValue(value: unknown): value is PlanValue {
  const { exact, unit, shown } = (value ?? {}) as Record<string, unknown>;
  return typeof exact === "string" && typeof unit === "string" && typeof shown === "string";
}
