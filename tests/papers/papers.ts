/** Every README.md and DEVELOPERS.md of the repository, with their fenced examples. */
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";

export const ROOT = fileURLToPath(new URL("../../", import.meta.url));
const FOLDERS = ["src", "templates", "tests", "demo-projects"];

/** Every file of a folder and of those in it. */
export const under = (folder: string): string[] =>
  readdirSync(join(ROOT, folder), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name).slice(ROOT.length));

export const FILES: readonly string[] = [
  ...readdirSync(ROOT, { withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map(({ name }) => name),
  ...FOLDERS.flatMap(under),
];

export const textOf = (file: string): string => readFileSync(join(ROOT, file), "utf8");

/** Paths from the repository's top, with `/`. */
export const PAPERS: readonly string[] = FILES.filter((file) =>
  /(?:^|\/)(?:README|DEVELOPERS)\.md$/.test(file),
);

export interface Fence {
  /** What stands behind its opening: `sh`, `yaml`, `md example`; "" for a drawing or what a program prints. */
  readonly kind: string;
  readonly text: string;
  readonly line: number;
}

export const fencesOf = (file: string): readonly Fence[] => {
  const text = textOf(file);
  return [...text.matchAll(/^(`{3,})([^`\n]*)\n([\s\S]*?)^\1$/gm)].map(
    ({ 2: kind = "", 3: inside = "", index }) => ({
      kind,
      text: inside,
      line: text.slice(0, index).split("\n").length,
    }),
  );
};

/** The text of a paper without its fenced examples, lines kept. */
export const proseOf = (file: string): string =>
  textOf(file).replace(/^(`{3,})[^`\n]*\n[\s\S]*?^\1$/gm, (fence) => fence.replace(/[^\n]/g, ""));
