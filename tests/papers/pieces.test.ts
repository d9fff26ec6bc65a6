/** The pieces of recipes in README.md's list of blocks: each stands in the five-minute recipe, and that builds. */
import { expect, it } from "vitest";
import { parse, stringify } from "yaml";
import { main } from "../../src/main.ts";
import { memoryWorld } from "../shelf/memory.ts";
import { fencesOf, textOf } from "./papers.ts";

const recipe = fencesOf("README.md").find(({ kind }) => kind === "yaml")?.text ?? "";

const pieces = [
  ...textOf("README.md").matchAll(/^- \*\*`(\w+)`\*\*(?: and \*\*`\w+`\*\*)?:.*(?:\n {2}.*)*/gm),
].flatMap(([item, block = ""]) =>
  [...item.matchAll(/`([^`]+)`/g)]
    .map(([, piece = ""]) => [block, piece.replace(/\s+/g, " ")] as const)
    .filter(([, piece]) => piece.includes(": ")),
);

type Block = Record<string, unknown>;

/** The recipe with a piece in its block; what it takes the place of goes. */
function withPiece(block: string, piece: string): string {
  const whole = parse(recipe.replace(/^---$/gm, "")) as Record<string, Block | unknown[]>;
  const own = (whole[block] ?? {}) as Block;
  const value = parse(piece.startsWith("- ") ? piece : `{${piece}}`) as Block | unknown[];
  if (Array.isArray(value)) whole[block] = value;
  else if ("left" in value) {
    const { side: _, ...lengths } = own["waist-to-floor"] as Block;
    whole[block] = { ...own, "waist-to-floor": { ...lengths, ...value } };
  } else whole[block] = { ...own, ...value };
  const cloth = whole.cloth as Block;
  if ("ten-layers" in cloth) delete cloth.thickness;
  const skirt = whole.skirt as Block;
  if ("round" in skirt) delete skirt.breadths;
  return `---\n${stringify(whole)}---\n`;
}

it("there are pieces for every block of measures", () => {
  expect([...new Set(pieces.map(([block]) => block))]).toEqual([
    "wearer",
    "cloth",
    "skirt",
    "fullness",
    "attach",
    "sizes",
  ]);
});

it.each(pieces)("in %s may stand %s", async (block, piece) => {
  const world = memoryWorld({ "/w/my-skirt/recipe.md": withPiece(block, piece) });
  expect([await main(["build", "my-skirt"], world), world.said.err.match(/^.* error \[.*$/gm)]).toEqual([
    0,
    null,
  ]);
});
