/** The vocabulary knows every name of every context, and every standard chapter passes the static check. */
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { contextOf } from "../../src/booklet/context.ts";
import { Printed } from "../../src/booklet/printed.ts";
import { checkTemplate } from "../../src/booklet/template/check.ts";
import { readTemplate } from "../../src/booklet/template/read.ts";
import { isList, isNames, type Named, named } from "../../src/booklet/template/shape.ts";
import { VALUES, VOCABULARY } from "../../src/booklet/template/vocabulary.ts";
import { FIGURE_NAMES } from "../../src/figure/figure.ts";
import type { Plan } from "../../src/solve/plan.ts";
import { randomRecipe } from "../random.ts";
import { tried } from "../recipes.ts";
import { recordedPlan } from "./recorded.ts";

const ROOT = fileURLToPath(new URL("../../", import.meta.url));
const demos = readdirSync(join(ROOT, "demo-projects")).map((name) =>
  readFileSync(join(ROOT, "demo-projects", name, "recipe.md"), "utf8"),
);

/** What a context holds and the vocabulary does not, each as "path: kind". */
function unknownIn(plan: Plan): string[] {
  const own = new Set(
    [...plan.values.values()].flatMap(({ source, name }) => (source === "workings" ? [name] : [])),
  );
  const found: string[] = [];
  const walk = (path: string, value: unknown, known: Named | undefined): void => {
    if (own.has(path) || value === undefined) return;
    if (known === undefined) found.push(`${path}: unknown`);
    else if (value instanceof Printed) {
      if (known !== "value") found.push(`${path}: a value`);
    } else if (typeof value === "boolean") {
      if (known !== "flag" && !path.endsWith(".half")) found.push(`${path}: yes or no`);
    } else if (typeof value === "string") {
      if (known !== "words" && known !== "flag") found.push(`${path}: words`);
    } else if (Array.isArray(value)) {
      if (!isList(known)) found.push(`${path}: a list`);
      else value.forEach((item, i) => void walk(`${path}.${i}`, item, known.item));
    } else if (!isNames(known)) found.push(`${path}: names`);
    else
      for (const [name, inner] of Object.entries(value as object))
        walk(`${path}.${name}`, inner, named(known, name));
  };
  for (const [name, value] of Object.entries(contextOf(plan))) walk(name, value, VOCABULARY.names.get(name));
  return found;
}

describe("the vocabulary", () => {
  it("knows every name of every demo's context", () => {
    for (const source of demos) {
      const { plan } = tried(source);
      expect(plan && unknownIn(plan)).toEqual([]);
    }
  });

  it("knows every name of a recorded garment's context", () => {
    expect(unknownIn(recordedPlan())).toEqual([]);
  });

  it("knows every name of random garments' contexts", () => {
    fc.assert(
      fc.property(randomRecipe, (source) => {
        const { plan } = tried(source);
        if (plan) expect(unknownIn(plan)).toEqual([]);
      }),
      { numRuns: 80 },
    );
  });

  it("knows every flag, and no flag that is none", () => {
    const { plan } = tried(demos[0] as string);
    const flags = Object.keys(contextOf(plan as Plan).is as object).sort();
    const is = VOCABULARY.names.get("is");
    expect(is && isNames(is) ? [...is.names.keys()].sort() : []).toEqual(flags);
  });

  it("has no value whose name begins another's", () => {
    expect(VALUES.filter((name) => VALUES.some((other) => other.startsWith(`${name}.`)))).toEqual([]);
  });

  it.each(
    readdirSync(join(ROOT, "templates"), { recursive: true })
      .map(String)
      .filter((file) => file.endsWith(".md") && file !== "README.md"),
  )("templates/%s passes the static check", (file) => {
    const text = readFileSync(join(ROOT, "templates", file), "utf8");
    const faults = checkTemplate(readTemplate(text), { names: VOCABULARY, figures: FIGURE_NAMES, text });
    expect(faults.map(({ message, at }) => `${at?.join(":")} ${message}`)).toEqual([]);
  });
});
