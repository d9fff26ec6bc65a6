/** What fuzz is made of, and what must hold of it: whole demos spoilt, bodies, formulas, templates, lists and records. */
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import fc from "fast-check";
import { makeBooklet } from "../../src/booklet/booklet.ts";
import { examine } from "../../src/booklet/examine.ts";
import { readNotebook } from "../../src/booklet/notebook/read.ts";
import { readRecord } from "../../src/page/record.ts";
import { FormulaError, readFormula } from "../../src/quantity/formula.ts";
import { inches } from "../../src/quantity/quantity.ts";
import { readAsMadeFile } from "../../src/recipe/as-made/file.ts";
import { readEvidence } from "../../src/recipe/evidence.ts";
import type { Message } from "../../src/recipe/message.ts";
import { readRecipe } from "../../src/recipe/read.ts";
import { readRecordFile } from "../../src/shelf/record-file.ts";
import { pageFaults } from "./page-faults.ts";

const DEMOS = process.env.PLAINWORK_DEMOS ?? "demo-projects";
const files = readdirSync(DEMOS, { recursive: true, encoding: "utf8" });
const texts = (ending: string): string[] =>
  files.filter((file) => file.endsWith(ending)).map((file) => readFileSync(join(DEMOS, file), "utf8"));
const RECIPES = texts("recipe.md");
const PLAIN = RECIPES.filter((text) => text.length < 3000);
const RECORD = JSON.stringify({
  "plainwork-record": 1,
  garment: "A",
  date: "2026-11-25",
  notebook: "a",
  changes: { "wearer.waist": "27 in" },
  ticked: ["hem/1"],
  notes: { "hem/1": "x" },
  seconds: { hem: 60 },
  said: { lessons: "y" },
});

/** Pieces that break things elsewhere. */
const PIECES = [
  "\u0000",
  "\ufeff",
  "\r",
  "\r\n",
  "\n",
  "\u202e",
  "\u2028",
  "👗🏽",
  "\ud800",
  "\udfff",
  "\ue000",
  "\ue001",
  "\ue010",
  "__proto__",
  "constructor",
  "toString",
  "</script>",
  "<script>alert(1)</script>",
  "<!--",
  "-->",
  "]]>",
  "<svg onload=x>",
  "javascript:alert(1)",
  "data:text/html,x",
  "[x](javascript:1)",
  "![x](photos/../../a.png)",
  "{{",
  "}}",
  "{{{",
  "{{#if is.gauged}}",
  "{{else}}",
  "{{/if}}",
  "{{#each stations}}",
  "{{/each}}",
  "{{skirt.round}}",
  "{{> the-rest}}",
  "{{> hem}}",
  '{{figure "balance"}}',
  "```workings\n",
  "```\n",
  "a = 1 in\n",
  "a = b\nb = a\n",
  "---\n",
  "...\n",
  "? ",
  "- ",
  "&a ",
  "*a ",
  "<<: ",
  "!!js ",
  ": ",
  "#",
  "|",
  "> ",
  "1/0",
  "9".repeat(400),
  "9^9^9",
  "1:1e9",
  "1e999",
  "-",
  "0 in",
  "1000000 in",
  "1/1000000 in",
  "0.0000001 mm",
  "NaN",
  "٣",
  '"',
  "'",
  "\\",
  "[",
  "]",
  "(",
  ")",
  "{",
  "}",
  "*",
  "**",
  "_",
  "`",
  "~",
  "$",
  "%",
  ",",
  ";",
  "=",
  "\t",
];
const piece = fc.oneof(fc.constantFrom(...PIECES), fc.string({ unit: "binary", maxLength: 6 }));
const many = fc.oneof(
  { weight: 20, arbitrary: piece },
  {
    weight: 1,
    arbitrary: fc.tuple(piece, fc.integer({ min: 2, max: 400 })).map(([text, n]) => text.repeat(n)),
  },
);

/** A text with up to four places changed. */
const spoilt = (from: readonly string[]): fc.Arbitrary<string> =>
  fc
    .tuple(
      fc.constantFrom(...from),
      fc.array(fc.tuple(fc.nat(), fc.nat({ max: 9 }), many), { minLength: 1, maxLength: 4 }),
    )
    .map(([text, changes]) =>
      changes.reduce((now, [at, drop, put]) => {
        const place = at % (now.length + 1);
        return now.slice(0, place) + put + now.slice(place + drop);
      }, text),
    );

/** A recipe with values of its measures replaced. */
const revalued: fc.Arbitrary<string> = fc
  .tuple(
    fc.constantFrom(...PLAIN),
    fc.array(
      fc.tuple(
        fc.nat(),
        fc.oneof(
          piece,
          fc
            .tuple(fc.integer({ min: 0, max: 3000 }), fc.constantFrom(" in", "/16 in", " mm", "", " %"))
            .map(([n, unit]) => `${n}${unit}`),
        ),
      ),
      {
        minLength: 1,
        maxLength: 3,
      },
    ),
  )
  .map(([text, changes]) =>
    changes.reduce((now, [which, put]) => {
      const spots = [...now.slice(0, now.indexOf("\n---", 4)).matchAll(/: (?=[^{|\s[])([^,}#\n]*)/g)];
      const spot = spots[which % Math.max(1, spots.length)];
      return spot
        ? now.slice(0, spot.index + 2) + put + now.slice(spot.index + 2 + (spot[1] ?? "").length)
        : now;
    }, text),
  );

const soup = fc.array(many, { maxLength: 16 }).map((all) => all.join(" "));

/** A message's words and place are fit to be shown. */
function sound(messages: readonly Message[]): void {
  for (const { text, hint = "", expected = "", place } of messages) {
    if (/undefined|\[object|\n/.test(text + hint.replace(/undefined/g, "") + expected))
      throw new Error(`a message says ${text}`);
    if (place && (place.line < 1 || place.column < 1 || place.length < 1))
      throw new Error(`a place is ${JSON.stringify(place)}`);
  }
}

const beside = { templates: [], messages: [] };

/** Reads, works out, and makes the booklet and reads its page. */
function whole(text: string): void {
  const { plan, own, messages } = examine("recipe.md", text, beside, () => "missing");
  sound(messages);
  if (!plan || !own) {
    if (!messages.some(({ level }) => level === "error") && !readRecipe("recipe.md", text).sizes)
      throw new Error("neither a booklet nor a message");
    return;
  }
  const made = makeBooklet(plan, own);
  const faults = pageFaults(made.get("booklet.html") ?? "");
  if (faults.length > 0) throw new Error(faults.join("; "));
  JSON.parse(made.get("plan.json") ?? "");
}

function formula(text: string): void {
  try {
    readFormula(text).evaluate(() => inches("27"));
  } catch (error) {
    if (!(error instanceof FormulaError)) throw error;
  }
}

const notebook = (text: string): void => {
  sound(readNotebook("recipe.md", { text, line: 1 }).messages);
};

export interface Kind {
  readonly share: number;
  readonly texts: fc.Arbitrary<string>;
  readonly held: (text: string) => void;
}

/** Each kind of input: its share of a hundred, how it is made, and what must hold. */
export const KINDS: Readonly<Record<string, Kind>> = {
  "front matter, spoilt": {
    share: 25,
    texts: spoilt(PLAIN),
    held: (text) => sound(readRecipe("recipe.md", text).messages),
  },
  "front matter of pieces": {
    share: 10,
    texts: soup.map((text) => `---\n${text}\n---\n`),
    held: (text) => sound(readRecipe("recipe.md", text).messages),
  },
  "bodies of pieces": { share: 18, texts: soup, held: notebook },
  formulas: {
    share: 20,
    texts: fc.oneof(
      soup,
      fc
        .array(
          fc.constantFrom(
            "1",
            "1 in",
            "a.b",
            "+",
            "-",
            "*",
            "/",
            "(",
            ")",
            "max(",
            "floor(",
            ",",
            "<",
            "1/3",
            "diagonal(",
          ),
          { maxLength: 30 },
        )
        .map((all) => all.join(" ")),
    ),
    held: formula,
  },
  templates: {
    share: 2,
    texts: spoilt(texts(".md").filter((text) => !text.startsWith("---"))),
    held: (text) =>
      sound(readNotebook("recipe.md", { text: "", line: 1 }, [{ file: "templates/hem.md", text }]).messages),
  },
  "lists of originals": {
    share: 10,
    texts: spoilt(texts("evidence.csv")),
    held: (text) => sound(readEvidence("evidence.csv", text).messages),
  },
  records: {
    share: 10,
    texts: spoilt([RECORD]),
    held: (text) => {
      readRecord(text, "A");
      const read = readRecordFile("r.json", text, "A", "a");
      if ("messages" in read) sound(read.messages);
    },
  },
  "records of the work": {
    share: 3,
    texts: spoilt(texts("as-made.yaml")),
    held: (text) => sound(readAsMadeFile("as-made.yaml", text).messages),
  },
  "whole recipes, spoilt, and their pages": { share: 1, texts: spoilt(RECIPES), held: whole },
  "whole recipes with other measures, and their pages": { share: 1, texts: revalued, held: whole },
};
