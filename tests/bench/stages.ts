/** Where the time goes in a warm build: each stage of a booklet by itself. */
import { readFileSync } from "node:fs";
import { planFile } from "../../src/booklet/booklet.ts";
import { readAll } from "../../src/booklet/examine.ts";
import { writeSections } from "../../src/booklet/notebook/compose.ts";
import { ownContext } from "../../src/booklet/notebook/own-context.ts";
import { work } from "../../src/booklet/notebook/work.ts";
import { bookletPage } from "../../src/booklet/page.ts";
import { bookletParts } from "../../src/booklet/parts.ts";
import { PartsMemory } from "../../src/booklet/parts-memory.ts";
import type { Figure } from "../../src/figure/figure.ts";
import { drawFigure, figuresOf } from "../../src/figure/index.ts";
import { svgFile } from "../../src/figure/serialize.ts";
import { guidesOf } from "../../src/guide/index.ts";
import type { Plan } from "../../src/solve/plan.ts";
import { solve } from "../../src/solve/solve.ts";

/**
 * Each stage by itself, one after the other, as a build goes through them: milliseconds, after ten to warm up. Files are not
 * written, photographs not read.
 */
export function stages(project: string): Record<string, number[]> {
  const source = readFileSync(`${project}/recipe.md`, "utf8");
  const found: Record<string, number[]> = {};
  const timed = <T>(name: string, work: () => T): T => {
    const start = performance.now();
    const made = work();
    found[name] ??= [];
    found[name].push(performance.now() - start);
    return made;
  };
  for (let i = 0; i < 30; i += 1) {
    const { read, own } = timed("reading the recipe and its notebook", () =>
      readAll("recipe.md", source, { templates: [], messages: [] }),
    );
    const { recipe } = read;
    const { notebook } = own;
    if (!recipe) throw new Error(`${project} cannot be read`);
    const plan = timed("solving", () => solve(recipe)).plan as Plan;
    const worked = work(plan, notebook);
    const figures = timed(
      "drawing the figures",
      () => new Map(figuresOf(plan).map((name): [string, Figure] => [name, drawFigure(name, plan)])),
    );
    const guides = timed(
      "drawing the guides",
      () =>
        new Map(
          guidesOf(plan).map((guide): [string, Figure] => [guide.name, { ...guide, svg: guide.draw() }]),
        ),
    );
    const titles = Object.fromEntries([...figures].map(([name, { title }]) => [name, title]));
    const context = timed("the chapters' words and numbers", () => ownContext(worked, titles));
    const memory = new PartsMemory();
    memory.drawn(worked, () => ({ figures, guides, context }));
    const parts = timed("the chapters as nodes of the page", () =>
      bookletParts(worked, undefined, { notebook, pictures: new Map() }, memory),
    );
    timed("the page as text", () => bookletPage(plan, parts, "0", { notebook, pictures: new Map() }));
    timed("the chapters as Markdown", () => writeSections(worked, notebook, context));
    timed("drawings as files", () => [...figures, ...guides].map(([, { svg }]) => svgFile(svg)));
    timed("plan.json", () => planFile(plan));
  }
  return Object.fromEntries(Object.entries(found).map(([name, times]) => [name, times.slice(10)]));
}
