/** Every limit on both sides: what just fits is read, what is one past it is refused with the limit in the message. */
import { expect, it } from "vitest";
import { examine } from "../../src/booklet/examine.ts";
import * as limits from "../../src/recipe/limits.ts";
import { LONGEST_ENTRY } from "../../src/recipe/limits.ts";
import { LIMITS } from "../../src/recipe/reference/limits.ts";
import { readRecordFile } from "../../src/shelf/record-file.ts";
import { recipeText } from "../recipes.ts";

interface Given {
  readonly text?: string;
  readonly evidence?: string;
  readonly templates?: Readonly<Record<string, string>>;
  readonly photographs?: Readonly<Record<string, number>>;
  readonly asMade?: string;
}

const PNG = [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a];

/** What is refused of a project, as "code: text (expected; what to do)". */
function refusals({
  text = recipeText(),
  evidence,
  templates = {},
  photographs = {},
  asMade,
}: Given): string[] {
  const find = (path: string) => {
    const size = photographs[path];
    if (size === undefined) return "missing";
    const bytes = new Uint8Array(size);
    bytes.set(PNG);
    return bytes;
  };
  const beside = {
    ...(evidence === undefined ? {} : { evidence: { file: "evidence.csv", text: evidence } }),
    ...(asMade === undefined ? {} : { asMade: { file: "as-made.yaml", text: asMade } }),
    templates: Object.entries(templates).map(([name, words]) => ({
      file: `templates/${name}.md`,
      text: words,
    })),
    messages: [],
  };
  return examine("recipe.md", text, beside, find)
    .messages.filter(({ level }) => level === "error")
    .map(({ code, text: said, expected = "", hint = "" }) => `${code}: ${said} (${expected}; ${hint})`);
}

const body = (text: string): Given => ({ text: `${recipeText()}${text}` });
const front = (lines: string): Given => ({ text: recipeText().replace(/\n---\n$/, `\n${lines}\n---\n`) });
const nested = (levels: number, inside: string): string =>
  `${"[".repeat(levels)}${inside}${"]".repeat(levels)}`;
const many = (n: number, line: (i: number) => string): string =>
  Array.from({ length: n }, (_, i) => line(i)).join("\n");
const wide = { wearer: { waist: "100 in" }, skirt: { breadths: "60" }, tape: "1/128 in" };
const gauged = (fullness: Record<string, string>): Given => ({
  text: recipeText({
    ...wide,
    cloth: { thickness: "0.01 mm" },
    fullness: { "finest-bite": "1/64 in", ...fullness },
  }),
});
const laid = (count: string): Given => ({
  text: recipeText({
    ...wide,
    cloth: { thickness: "0.01 mm" },
    fullness: { zones: `[{set: knife, count: "${count}"}]` },
  }),
});
const faced = (face: string): Given => ({
  text: recipeText({
    ...wide,
    cloth: { thickness: "0.01 mm" },
    fullness: { zones: `[{set: knife, face: "${face}"}]` },
  }),
});
const zones = (n: number): Given => ({
  text: recipeText({
    wearer: { waist: "40 in" },
    fullness: {
      zones: `[${many(n, (i) => (i === n - 1 ? "{set: gauged}" : '{set: flat, waist: "1/2 in"}')).replace(/\n/g, ", ")}]`,
    },
  }),
});
const sizes = (n: number): Given => ({
  text: recipeText({ sizes: `[${many(n, (i) => `{name: S${i}}`).replace(/\n/g, ", ")}]` }),
});
const rows = (n: number): Given => ({ evidence: `year,set\n${many(n, () => "1850,gauged")}\n` });
const pictures = (sized: readonly number[]): Given => ({
  ...body(sized.map((_, i) => `![A](photos/p${i}.png)`).join("\n\n")),
  photographs: Object.fromEntries(sized.map((size, i) => [`photos/p${i}.png`, size])),
});
const workings = (lines: string): Given => body(`\`\`\`workings\n${lines}\n\`\`\`\n`);
const padded = (start: string, length: number, letter = "x"): string =>
  start + letter.repeat(length - start.length);
const comments = (bytes: number): Given => {
  const given = front("").text ?? "";
  const left = bytes - given.length - "\n".length;
  const line = `# ${"x".repeat(97)}\n`;
  const whole = line.repeat(Math.floor(left / line.length));
  return { text: given.replace(/\n---\n$/, `\n${whole}${padded("# ", left - whole.length)}\n---\n`) };
};
/** The front matter of such a recipe, in bytes. */
const fronted = (bytes: number): Given => comments(bytes + "---\n---\n".length);

/** What just fits, what does not, and the code and number of the message; by the words of the list of limits. */
const CASES: Record<string, readonly [fits: Given, past: Given, code: string, most: number]> = {
  "the front matter": [
    fronted(limits.LARGEST_FRONT),
    fronted(limits.LARGEST_FRONT + 1),
    "too-long",
    limits.LARGEST_FRONT,
  ],
  "one line of front matter, body or wording": [
    body("x".repeat(limits.LONGEST_LINE)),
    body("x".repeat(limits.LONGEST_LINE + 1)),
    "long-line",
    limits.LONGEST_LINE,
  ],
  "one value of the front matter": [
    { text: recipeText({ title: "x".repeat(limits.LONGEST_FIELD) }) },
    { text: recipeText({ title: "x".repeat(limits.LONGEST_FIELD + 1) }) },
    "too-long",
    limits.LONGEST_FIELD,
  ],
  "digits of one number": [
    { text: recipeText({ wearer: { waist: "25.5000000000 in" } }) },
    { text: recipeText({ wearer: { waist: "25.50000000000 in" } }) },
    "not-a-length",
    limits.MOST_DIGITS,
  ],
  "the body, or one wording": [
    body(many(limits.LONGEST_BODY / 60, () => "x".repeat(59))),
    body(`${many(limits.LONGEST_BODY / 60, () => "x".repeat(59))}\nxx`),
    "too-long",
    limits.LONGEST_BODY,
  ],
  "lines of the body, or of one wording": [
    body(many(limits.MOST_BODY_LINES, () => "x")),
    body(many(limits.MOST_BODY_LINES + 1, () => "x")),
    "too-long",
    limits.MOST_BODY_LINES,
  ],
  "quotes and lists inside each other": [
    body(`${"> ".repeat(limits.DEEPEST_LISTS)}x`),
    body(`${"> ".repeat(limits.DEEPEST_LISTS + 1)}x`),
    "too-deep",
    limits.DEEPEST_LISTS,
  ],
  "quotes and list items in one text, each counted with those it stands in": [
    body(many(limits.MOST_LIST_MARKS, () => "- x")),
    body(many(limits.MOST_LIST_MARKS + 1, () => "- x")),
    "too-many",
    limits.MOST_LIST_MARKS,
  ],
  "stars, underscores, brackets, backticks and bars in one text": [
    body(many(limits.MOST_MARKS / 6, () => "*a* _b_ `c`")),
    body(`${many(limits.MOST_MARKS / 6, () => "*a* _b_ `c`")}*`),
    "too-many",
    limits.MOST_MARKS,
  ],
  "`{{#if}}` and `{{#each}}` inside each other": [
    body(
      `${"{{#if is.gauged}}".repeat(limits.DEEPEST_TEMPLATE)}x${"{{/if}}".repeat(limits.DEEPEST_TEMPLATE)}`,
    ),
    body(
      `${"{{#if is.gauged}}".repeat(limits.DEEPEST_TEMPLATE + 1)}x${"{{/if}}".repeat(limits.DEEPEST_TEMPLATE + 1)}`,
    ),
    "template",
    limits.DEEPEST_TEMPLATE,
  ],
  "lines of workings": [
    workings(many(limits.MOST_WORKINGS, (i) => `a${i} = 1 in`)),
    workings(many(limits.MOST_WORKINGS + 1, (i) => `a${i} = 1 in`)),
    "too-many",
    limits.MOST_WORKINGS,
  ],
  "one formula": [
    workings(`a = 1 in ${"+ 1 in ".repeat(70)}`),
    workings(`a = 1 in ${"+ 1 in ".repeat(72)}`),
    "formula",
    limits.LONGEST_FORMULA,
  ],
  "brackets inside each other in a formula": [
    workings(`a = ${"(".repeat(limits.DEEPEST_FORMULA - 1)}1 in${")".repeat(limits.DEEPEST_FORMULA - 1)}`),
    workings(`a = ${"(".repeat(limits.DEEPEST_FORMULA + 1)}1 in${")".repeat(limits.DEEPEST_FORMULA + 1)}`),
    "formula",
    limits.DEEPEST_FORMULA,
  ],
  breadths: [
    { text: recipeText({ ...wide, cloth: { thickness: "0.01 mm" } }) },
    { text: recipeText({ ...wide, cloth: { thickness: "0.01 mm" }, skirt: { breadths: "61" } }) },
    "limit",
    limits.MOST_BREADTHS,
  ],
  "pleats laid in one zone of a half": [
    laid(`${limits.MOST_LAID}`),
    laid(`${limits.MOST_LAID + 1}`),
    "limit",
    limits.MOST_LAID,
  ],
  "pleats gauged in the whole garment": [
    gauged({ "pleats-per-inch": "60" }),
    gauged({ trial: '{cloth: 250 in, pleats: "1000", closes-to: 1 in}' }),
    "too-many-pleats",
    limits.MOST_GAUGED,
  ],
  "zones of one half": [
    zones(limits.MOST_ZONES),
    zones(limits.MOST_ZONES + 1),
    "too-many",
    limits.MOST_ZONES,
  ],
  sizes: [sizes(limits.MOST_SIZES), sizes(limits.MOST_SIZES + 1), "too-many", limits.MOST_SIZES],
  "rows of `evidence.csv`": [
    rows(limits.MOST_EVIDENCE),
    rows(limits.MOST_EVIDENCE + 1),
    "too-many",
    limits.MOST_EVIDENCE,
  ],
  "one photograph": [
    pictures([limits.LARGEST_PHOTOGRAPH]),
    pictures([limits.LARGEST_PHOTOGRAPH + 1]),
    "photograph-size",
    limits.LARGEST_PHOTOGRAPH / 1024,
  ],
  "all photographs together": [
    pictures(Array(4).fill(limits.LARGEST_PHOTOGRAPH)),
    pictures([...Array(4).fill(limits.LARGEST_PHOTOGRAPH), 8]),
    "photograph-size",
    limits.LARGEST_TOGETHER / 1024,
  ],
  photographs: [
    pictures(Array(limits.MOST_PHOTOGRAPHS).fill(8)),
    pictures(Array(limits.MOST_PHOTOGRAPHS + 1).fill(8)),
    "too-many",
    limits.MOST_PHOTOGRAPHS,
  ],
  "blocks and lists inside each other in the front matter": [
    front(`skirt: ${nested(limits.DEEPEST_YAML - 1, "x")}`),
    front(`x: ${nested(limits.DEEPEST_YAML, "x")}`),
    "too-deep",
    limits.DEEPEST_YAML,
  ],
  "keys and values of the front matter": [
    front(`evidence: {${many(880, (i) => `k${i}: 1`).replace(/\n/g, ", ")}}`),
    front(`evidence: {${many(1100, (i) => `k${i}: 1`).replace(/\n/g, ", ")}}`),
    "too-many",
    limits.MOST_NODES,
  ],
};

it.each(Object.entries(CASES))(
  "%s",
  (_, [fits, past, code, most]) => {
    const refused = refusals(past);
    expect(refused.join("\n")).toMatch(new RegExp(`^${code}: .*\\b${most}\\b`, "m"));
    expect(
      refusals(fits).filter((said) => said.startsWith(`${code}:`) && said.includes(String(most))),
    ).toEqual([]);
  },
  60_000,
);

it("what just fits is built, where it is a garment", () => {
  const built = [
    "the body, or one wording",
    "breadths",
    "pleats laid in one zone of a half",
    "pleats gauged in the whole garment",
    "photographs",
    "lines of workings",
  ];
  for (const name of built) expect([name, ...refusals(CASES[name]?.[0] as Given)]).toEqual([name]);
});

it("pleats that come of a narrow face are counted too", () => {
  expect(refusals(faced("1/128 in")).join()).toContain(`at most ${limits.MOST_LAID}`);
});

it("a recipe is refused as a whole past its bytes, and as many as that are read", () => {
  const letters = "é".repeat((limits.LARGEST_RECIPE - recipeText().length) / 2);
  expect(refusals(body(letters)).join()).not.toContain("too-large");
  expect(refusals(body(`${letters}xx`)).join()).toMatch(new RegExp(`^too-large: .*${limits.LARGEST_RECIPE}`));
});

it("a record's text is refused past its length", () => {
  const record = (length: number) =>
    JSON.stringify({
      "plainwork-record": 1,
      garment: "A",
      date: "2026-11-25",
      said: { lessons: "x".repeat(length) },
    });
  expect(readRecordFile("r.json", record(LONGEST_ENTRY), "A", "a")).not.toHaveProperty("messages");
  expect(JSON.stringify(readRecordFile("r.json", record(LONGEST_ENTRY + 1), "A", "a"))).toContain(
    `at most ${LONGEST_ENTRY}`,
  );
});

it("every limit of the reference that is found in reading is tried here", () => {
  const elsewhere = [
    "`recipe.md` as a whole",
    "`as-made.yaml`",
    "`evidence.csv`, or one wording",
    "a `record.json`",
    "one text in a record",
  ];
  expect(
    LIMITS.map(([what]) => what).filter((what) => !(what in CASES) && !elsewhere.includes(what)),
  ).toEqual([]);
});
