/** evidence.csv beside a recipe, through the shelf. */
import { describe, expect, it } from "vitest";
import { checkProject } from "../../src/shelf/build.ts";
import { findProjects } from "../../src/shelf/find.ts";
import { outcomeText } from "../../src/shelf/report.ts";
import { recipeText } from "../recipes.ts";
import { memoryWorld } from "./memory.ts";

function checked(list: string) {
  const world = memoryWorld({ "/w/skirt/recipe.md": recipeText(), "/w/skirt/evidence.csv": list });
  const [project] = findProjects(world, ["skirt"]);
  if (!project) throw new Error("no project");
  return checkProject(world, project);
}

describe("a list of originals beside the recipe", () => {
  it("is read and counted", () => {
    const { plan } = checked("year,set\n1850,gauged\n1851,pleated\n");
    expect(plan?.values.get("evidence.items")?.shown).toBe("2");
  });
  it("tells what is wrong by its own name and its own line", () => {
    const outcome = checked("year,set\n1850,guaged\n");
    expect(outcome.plan).toBeUndefined();
    expect(outcomeText(outcome)).toContain(
      'skirt/evidence.csv:2:6: error [bad-row] "guaged" cannot stand under set\n  2 | 1850,guaged\n    |      ^^^^^^',
    );
  });
  it("is refused when it is no text a list could be", () => {
    expect(outcomeText(checked("x".repeat(1024 * 1024 + 1)))).toContain(
      "skirt/evidence.csv:1:1: error [too-large]",
    );
  });
});
