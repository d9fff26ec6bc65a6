/**
 * Every name that a template may use, whatever the garment: so that a mistyped name is found even where it is not
 * reached. A test holds it against the contexts of all demos and of random recipes.
 */
import { MEASURE_PATHS } from "../../recipe/keys.ts";
import { NAMES } from "../../solve/names.ts";
import { nameOfPath } from "../../solve/sheet.ts";
import { FLAGS, GARMENT, LISTS, WORDS } from "./names.ts";
import { type Named, type Names, treeOf } from "./shape.ts";

const RATES = ["running", "marking", "gauging", "whip"] as const;
/** Assumptions of the program's own that are no keys of the recipe. */
const ASSUMED = [
  "cost.cent",
  "evidence.z",
  ...RATES.flatMap((rate) => [`rate.${rate}.low`, `rate.${rate}.high`]),
];
/** One length for both sides is known as left and right. */
const TOLD_APART = "wearer.waist-to-floor.side";

/** The name of every value that a plan may have; `*` stands for a number of a list's entry. */
export const VALUES: readonly string[] = [
  ...new Set([
    ...Object.keys(NAMES),
    ...MEASURE_PATHS.filter((path) => path !== TOLD_APART).map(nameOfPath),
    ...ASSUMED,
  ]),
];

const words = (list: string): string[] => list.trim().split(/\s+/);

/** `name` is words, `name?` a flag, `name[]` a list that has its own line. */
function itemOf(list: string): Names {
  const entries = words(LISTS[list] ?? "").map((word): [string, Named] => {
    if (word.endsWith("?")) return [word.slice(0, -1), "flag"];
    if (word.endsWith("[]")) return [word.slice(0, -2), { item: itemOf(`${list}.${word.slice(0, -2)}`) }];
    return [word, "words"];
  });
  return { names: new Map(entries) };
}

/** Every name of the standard chapters. */
export const VOCABULARY: Names = treeOf([
  ...VALUES.map((name): [string, Named] => [name, "value"]),
  ...words(WORDS).map((name): [string, Named] => [name, "words"]),
  ...words(GARMENT).map((name): [string, Named] => [`garment.${name}`, "words"]),
  ...words(FLAGS).map((name): [string, Named] => [`is.${name}`, "flag"]),
  ...Object.keys(LISTS)
    .filter((list) => !list.includes("."))
    .map((list): [string, Named] => [list, { item: itemOf(list) }]),
]);
