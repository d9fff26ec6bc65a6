/** What the READMEs and DEVELOPERS.md lead to is there: files, headings, names of source files. */
import { existsSync, readdirSync } from "node:fs";
import { basename, dirname, join } from "node:path";
import { describe, expect, it } from "vitest";
import { FILES, PAPERS, proseOf, ROOT } from "./papers.ts";

/** A heading's anchor, as code hosts make it. */
const anchorOf = (heading: string): string =>
  heading
    .trim()
    .toLowerCase()
    .replace(/[^\p{L}\p{N}\s_-]/gu, "")
    .replace(/\s/g, "-");

const anchors = (file: string): string[] =>
  [...proseOf(file).matchAll(/^#+ (.+)$/gm)].map(([, heading = ""]) => anchorOf(heading));

/** Links and pictures in the prose, not in code. */
const linksOf = (file: string): string[] =>
  [
    ...proseOf(file)
      .replace(/`[^`\n]*`/g, "")
      .matchAll(/\]\(([^)\s]+)\)/g),
  ].map(([, to = ""]) => to);

function fault(file: string, link: string): string | undefined {
  const [path = "", anchor] = link.split("#");
  const at = path === "" ? file : join(dirname(file), path);
  if (!existsSync(join(ROOT, at))) return `${link}: there is no ${at}`;
  // Letter for letter: some disks do not tell capitals apart.
  if (!readdirSync(join(ROOT, dirname(at))).includes(basename(at)))
    return `${link}: written otherwise on the disk`;
  if (anchor !== undefined && !anchors(at).includes(anchor)) return `${link}: ${at} has no such heading`;
  return undefined;
}

/** Names of files that the program or its user makes: they are no part of the repository, or not everywhere. */
const MADE = new Set(
  `recipe.md evidence.csv as-made.yaml original.yaml original.md original.html original.json original-sheet.html record.json booklet.html
  booklet.md index.html index.md plan.json sizes.html sizes.md sizes.json measure-your-own.html commission.html class.html
  .made.json photos/bow.jpg photos/inside.jpg figures/picture.svg sheet.html tests/figure/changed/`.split(
    /\s+/,
  ),
);
const ENDINGS = FILES.map((file) => `/${file}`);

/** Is it a file of the repository, from its top, from the paper's folder, or by the end of its path? */
const isThere = (paper: string, name: string): boolean =>
  MADE.has(basename(name)) ||
  MADE.has(name) ||
  existsSync(join(ROOT, dirname(paper), name)) ||
  ENDINGS.some((file) => file.endsWith(`/${name}`));

describe.each(PAPERS)("%s", (file) => {
  it("leads only to what is there", () => {
    expect(linksOf(file).filter((link) => /^[a-z]+:/.test(link) && !link.startsWith("https://"))).toEqual([]);
    const own = linksOf(file).filter((link) => !/^[a-z]+:/.test(link));
    expect(own.map((link) => fault(file, link)).filter(Boolean)).toEqual([]);
  });

  it("names only files and folders that are there", () => {
    const named = [
      ...proseOf(file).matchAll(/`([\w./-]+\.(?:ts|mjs|cjs|json|md|css|csv|yaml|svg|html))(?::\d+)?`/g),
    ];
    const gone = named.map(([, name = ""]) => name).filter((name) => !isThere(file, name));
    const folders = [...proseOf(file).matchAll(/`((?:src|tests|templates|demo-projects)\/[\w/-]*)`/g)];
    expect([
      ...gone,
      ...folders
        .map(([, name = ""]) => name)
        .filter((name) => !MADE.has(name) && !existsSync(join(ROOT, name))),
    ]).toEqual([]);
  });
});

it("a heading that is linked to is found, and one that is not there is told", () => {
  expect(fault("README.md", "#every-command")).toBeUndefined();
  expect(fault("README.md", "#every-comand")).toBe("#every-comand: README.md has no such heading");
  expect(fault("README.md", "src/recipe/reference.md")).toBe(
    "src/recipe/reference.md: there is no src/recipe/reference.md",
  );
});
