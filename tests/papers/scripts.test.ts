/** DEVELOPERS.md explains every script of package.json, and none that is not there. */
import { expect, it } from "vitest";
import { textOf } from "./papers.ts";

/** Run by npm itself, round the script whose name they have; the table tells of them in its row. */
const AROUND: Readonly<Record<string, string>> = {
  prepare: "build",
  pretest: "test",
  "pretest:long": "test:long",
};

const scripts = Object.keys(JSON.parse(textOf("package.json")).scripts);
const rows = new Map(
  [...textOf("DEVELOPERS.md").matchAll(/^\| `npm (?:run )?([\w:]+)` \| (.+) \|$/gm)].map(
    ([, name = "", words = ""]) => [name, words] as const,
  ),
);

it("every script has its row, and every row its script", () => {
  expect([...rows.keys()].sort()).toEqual(scripts.filter((name) => !(name in AROUND)).sort());
  for (const [name, words] of rows) expect([name, words.length > 20]).toEqual([name, true]);
});

it("what npm runs round a script is told in that script's row", () => {
  for (const [name, round] of Object.entries(AROUND)) {
    expect(scripts).toContain(name);
    expect(rows.get(round)).toContain(`\`${name}\``);
  }
});

it("check runs format, lint, types and tests", () => {
  const { check, lint } = JSON.parse(textOf("package.json")).scripts;
  expect(check).toBe("npm run lint && npm run types && npm test");
  // biome's own check is format and lint in one.
  expect(lint).toBe("biome check .");
});
