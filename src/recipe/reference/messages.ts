/** src/recipe/messages/README.md: every message that the program can say, made from the lists beside it. */
import { GROUPS, type Group } from "../messages/list.ts";
import type { Said } from "../messages/said.ts";

const HEAD = `# Every message, and what to do

Made by \`npm run reference\` out of the lists in this folder: change them, not this file. A message says what was found and where, and
carries a name in square brackets; under that name it stands here.

\`\`\`
my-skirt/recipe.md:5:12: error [not-a-length] "27" has no unit
\`\`\`

An **error** stops the booklet: the older one stays as it was. A **warning** stands in the booklet, and the maker decides. A **note** only
tells. The message itself has the garment's own numbers, and often says more of what to do than this list can.`;

/** A bar would end a cell; a picture as it is written would be one. */
const cell = (text: string): string =>
  text.replaceAll("|", "\\|").replace(/!\[[^\]]*\]\([^)]*\)/g, (picture) => `\`${picture}\``);

const row = ([code, { levels, means, do: instead }]: readonly [string, Said]): string =>
  `| \`${code}\` | ${(levels ?? ["error"]).join(" or ")} | ${cell(means)} | ${cell(instead)} |`;

const group = ({ title, about, codes }: Group): string =>
  [
    `## ${title}\n\n${about}\n`,
    "| Message | Level | What it means | What to do |",
    "| --- | --- | --- | --- |",
    ...Object.entries(codes)
      .sort(([a], [b]) => (a < b ? -1 : 1))
      .map(row),
  ].join("\n");

/** The whole file. */
export const messagesReadme = (): string => `${[HEAD, ...GROUPS.map(group)].join("\n\n")}\n`;
