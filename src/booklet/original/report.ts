/** An original's report: what was measured, what it comes to, what does not agree, and the answers side by side. */
import type { Original } from "../../recipe/original/schema.ts";
import { exact, unitOf } from "../../solve/json.ts";
import type { Answer, Worked } from "../../solve/original/answers.ts";
import { KEPT } from "../../solve/original/recipe-text.ts";
import { shapeChapter } from "../chapter-shape.ts";
import { escapeMarkdown } from "../escape.ts";
import { parseToHtml } from "../parse.ts";
import { barePage } from "../sheets.ts";
import { nodesToHtml } from "../stringify.ts";

/** Rows of the comparison: a value of each answer's plan. */
const ROWS: readonly (readonly [string, string])[] = [
  ["waist seam", "waist.seam"],
  ["breadths", "breadths.count"],
  ["each seam takes", "skirt.seam"],
  ["round of the hem", "skirt.round"],
  ["fullness", "skirt.fullness"],
  ["gauged pleats", "gauging.pleats"],
  ["pleats along the waist", "gauging.perInch"],
  ["mean bite", "gauging.bite"],
  ["a breadth cut", "breadths.cut"],
  ["turned down in front", "turnDown.front"],
  ["turned down behind", "turnDown.back"],
  ["cloth to buy", "cloth.buy"],
  ["hand work, quicker", "work.low"],
  ["hand work, slower", "work.high"],
];

const SOURCES = { measured: "measured", derived: "", assumed: "assumed: " } as const;

const row = (cells: readonly string[]): string => `| ${cells.join(" | ")} |`;
const cell = (text: string): string => escapeMarkdown(text).replaceAll("|", "\\|");

const nameOf = ({ keep }: Answer): string => (keep === undefined ? "as it was" : `keep: ${keep}`);

/** The report as Markdown. */
export function originalMarkdown(
  original: Original,
  { found, messages, own, carried, chosen }: Worked,
): string {
  const answers = [own, ...carried];
  const parts = [
    `# ${cell(original.title)}: measured`,
    [original.seen, String(original.year), original.note]
      .filter((text) => text !== undefined)
      .map(cell)
      .join("; "),
    "## What it comes to",
    [
      row(["What", "Value", "How"]),
      row(["---", "---", "---"]),
      ...[...found.values.values()].map(({ about, shown, source, how, inNumbers }) =>
        row([
          cell(about),
          cell(shown),
          source === "derived"
            ? cell(`${how} = ${inNumbers}`)
            : `${SOURCES[source]}${source === "assumed" ? cell(how) : ""}`,
        ]),
      ),
    ].join("\n"),
    ...(original.set === "pleated" ? [] : ["## The likely thread", schemeOf(original, found)]),
    "## What does not agree",
    messages.length === 0
      ? "Everything that can be held against something else agrees."
      : messages.map(({ text, hint }) => `- ${cell(text)}${hint ? `: ${cell(hint)}` : ""}`).join("\n"),
  ];
  if (own.text)
    parts.push(
      carried.length > 0 ? "## On another body" : "## The garment, planned again",
      [
        row(["", ...answers.map(nameOf)]),
        row(["---", ...answers.map(() => "---")]),
        ...ROWS.filter(([, name]) => answers.some(({ plan }) => plan?.values.has(name))).map(
          ([words, name]) =>
            row([words, ...answers.map(({ plan }) => cell(plan?.values.get(name)?.shown ?? "-"))]),
        ),
      ].join("\n"),
      ...answers.flatMap((answer) => toldOf(answer)),
      answers.some(({ plan }) => plan?.values.has("gauging.pleats"))
        ? "Pleats are whole in every section, so a garment made again may have a few more or fewer than were counted; pitch and bite follow its own."
        : "",
      chosen.keep === undefined
        ? "The recipe is the garment as it was."
        : `The recipe is the answer that keeps ${KEPT[chosen.keep]}. Another is chosen by \`keep\` in the sheet's \`wearer\`.`,
    );
  return `${parts.filter((part) => part !== "").join("\n\n")}\n`;
}

function toldOf(answer: Answer): string[] {
  const faults = answer.plan ? answer.messages.filter(({ level }) => level === "warning") : answer.messages;
  const said = faults.map(({ text }) => `- ${cell(text)}`);
  if (!answer.plan && said.length === 0) said.push("- no number of breadths is enough for it");
  if (said.length === 0) return [];
  return [`${answer.plan ? "To know of" : "Cannot be made:"} ${nameOf(answer)}:`, said.join("\n")];
}

/** How the threads probably run: which stitch is the long one, and how many rows. */
function schemeOf(original: Original, found: Worked["found"]): string {
  const rows = original.rows ? `${found.shown("rows.count")} rows` : "rows not counted, two assumed";
  if (!found.has("bite.inside", "bite.outside"))
    return `${rows}; no stitch was seen: even bites of ${found.shown("pleat.bite")} are the likeliest up to ${original.show === "in" ? "1/2 in" : "12 mm"}, longer outside and short inside above that (common practice, no source).`;
  const [inside, outside] = [found.get("bite.inside"), found.get("bite.outside")];
  const off = outside.value.sub(inside.value);
  const even = off.abs().compare(original.tape.value.mul(2)) <= 0;
  const scheme = even
    ? "even bites"
    : off.compare(0) > 0
      ? "long outside, short inside"
      : "long inside, short outside";
  return `${rows}, ${scheme}: ${found.shown("bite.inside")} inside and ${found.shown("bite.outside")} outside. The stitch that is seen may be drawn up: take it as likely, not as proved.`;
}

/** The report as a page to print. */
export function originalPage(title: string, markdown: string, version: string): string {
  const nodes = parseToHtml(markdown.replace(/^# /, "## ").replace(/^## (?=What|The|On)/gm, "### ")).children;
  return barePage(title, nodesToHtml([shapeChapter("measured", nodes as never)]), version);
}

/** The report as data: findings with their formulas, and the three answers by their values' names. Lengths in inches. */
export function originalJson(
  original: Original,
  { found, messages, own, carried, chosen }: Worked,
  version: string,
): string {
  const answer = (each: Answer) => ({
    keep: each.keep ?? null,
    chosen: each === chosen,
    made: each.plan !== undefined,
    values: Object.fromEntries(
      ROWS.flatMap(([, name]) => {
        const value = each.plan?.values.get(name);
        return value
          ? [[name, { exact: exact(value.quantity), unit: unitOf(value.quantity), shown: value.shown }]]
          : [];
      }),
    ),
    messages: each.messages.map(({ code, level, text }) => ({ code, level, text })),
  });
  const data = {
    plainwork: version,
    original: original.title,
    values: Object.fromEntries(
      [...found.values.values()].map(({ name, quantity, shown, source, how }) => [
        name,
        { exact: exact(quantity), unit: unitOf(quantity), shown, source, how },
      ]),
    ),
    contradictions: messages.map(({ code, level, text }) => ({ code, level, text })),
    answers: [own, ...carried].map(answer),
  };
  return `${JSON.stringify(data, null, 1)}\n`;
}
