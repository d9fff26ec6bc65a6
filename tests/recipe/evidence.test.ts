/** The list of dated originals beside a recipe: rows, places of what is wrong, and the recipe's say in it. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readCsv } from "../../src/recipe/csv.ts";
import { readEvidence } from "../../src/recipe/evidence.ts";
import { withRow } from "../../src/recipe/evidence-add.ts";
import { messageText } from "../../src/recipe/message.ts";
import { readRecipe } from "../../src/recipe/read.ts";
import { recipeText } from "../recipes.ts";

const cells = (text: string) => readCsv(text).rows.map((row) => row.map((cell) => cell.text));

describe("comma-separated text", () => {
  it.each([
    [
      "a,b\nc,d\n",
      [
        ["a", "b"],
        ["c", "d"],
      ],
    ],
    ["a, b ,\r\n\r\n  \r\nc", [["a", "b", ""], ["c"]]],
    ['"a, with ""quotes""",b', [['a, with "quotes"', "b"]]],
    [
      '"two\nlines",x\ny,z',
      [
        ["two\nlines", "x"],
        ["y", "z"],
      ],
    ],
    ["\uFEFFyear,set", [["year", "set"]]],
    ["", []],
  ])("%j", (text, wanted) => {
    expect(cells(text)).toEqual(wanted);
  });
  it("keeps where a cell stands, and where a quote was left open", () => {
    expect(readCsv("a,  bc \n").rows[0]?.[1]).toEqual({ text: "bc", start: 4, length: 2 });
    expect(readCsv('a,"b\nc').open).toBe(2);
  });
  it("never throws, and ends", () => {
    fc.assert(
      fc.property(
        fc.string({ unit: fc.constantFrom('"', ",", "\n", "\r", "a", " ", "\t"), maxLength: 40 }),
        (text) => {
          readEvidence("evidence.csv", text);
          readEvidence("evidence.csv", `year,set\n${text}`);
        },
      ),
    );
  });
});

const read = (text: string, skip = false) => readEvidence("evidence.csv", text, skip);
const said = (text: string, skip = false) =>
  read(text, skip).messages.map(
    ({ code, level, place }) => `${level} ${code} ${place?.line}:${place?.column}`,
  );

describe("rows", () => {
  it("in any order of columns, with what is not known left empty", () => {
    const { rows, messages, skipped } = read(
      'set,year,note,fibre,sheer,seen\ngauged,1846,"one, two",cotton,no,A museum\nPleated,1859,,,,\n',
    );
    expect(messages).toEqual([]);
    expect(skipped).toBe(0);
    expect(rows).toEqual([
      { year: 1846, set: "gauged", fibre: "cotton", sheer: false, seen: "A museum", note: "one, two" },
      { year: 1859, set: "pleated" },
    ]);
  });
  it.each([
    ["year,set\nabout 1850,gauged", "error bad-row 2:1"],
    ["year,set\n1850,\n1851,gauged", "error bad-row 2:6"],
    ["year,set\n1850,guaged", "error bad-row 2:6"],
    ["year,set,fibre\n1850,gauged,coton", "error bad-row 2:13"],
    ["year,set,sheer\n1850,gauged,perhaps", "error bad-row 2:13"],
    ["year,set\n1850,gauged,too much", "error bad-row 2:13"],
    ["year,set,note\n1850,gauged,\uE000", "error bad-row 2:13"],
    ["year,fibre\n1850,cotton", "error no-columns 1:1"],
    ["yaer,set\n1850,gauged", "error unknown-column 1:1"],
    ["year,set,year\n1850,gauged,1", "error column-twice 1:10"],
    ['year,set\n1850,"gauged', "error csv-quote 2:6"],
    ["", "error no-columns 1:1"],
  ])("%j: %s", (text, wanted) => {
    expect(said(text)).toEqual([wanted]);
    for (const { hint, expected } of read(text).messages) expect(hint ?? expected).toBeTruthy();
  });
  it("every bad row is told; the rest counts only when the recipe says so", () => {
    const list = "year,set\n1850,guaged\n1851,gauged\nold,pleated\n";
    expect(said(list)).toEqual(["error bad-row 2:6", "error bad-row 4:1"]);
    expect(said(list, true)).toEqual(["warning bad-row 2:6", "warning bad-row 4:1"]);
    expect(read(list, true)).toMatchObject({ rows: [{ year: 1851, set: "gauged" }], skipped: 2 });
    expect(messageText(read(list).messages[0] as never, list)).toBe(
      [
        'evidence.csv:2:6: error [bad-row] "guaged" cannot stand under set',
        "  2 | 1850,guaged",
        "    |      ^^^^^^",
        "  expected: gauged, flat-front-gauged, pleated-gauged-back, pleated, knife, box, double-box, gathered, flat, other",
        "  do: did you mean gauged?",
      ].join("\n"),
    );
  });
});

describe("with a recipe", () => {
  const list = { file: "evidence.csv", text: "year,set\n1850,gauged\nold,pleated\n" };
  it("a bad row is an error of the whole", () => {
    const { recipe, messages } = readRecipe("recipe.md", recipeText(), list);
    expect(recipe).toBeUndefined();
    expect(messages.map(({ place }) => place?.file)).toEqual(["evidence.csv"]);
  });
  it("unless the recipe says to leave it out; the window has a default that is listed only then", () => {
    const { recipe } = readRecipe("recipe.md", recipeText({ evidence: { "skip-bad-rows": "true" } }), list);
    expect(recipe?.evidence).toMatchObject({ skipped: 1, rows: [{ year: 1850, set: "gauged" }] });
    expect(recipe?.given.filter(({ path }) => path.startsWith("evidence"))).toMatchObject([
      { path: "evidence.window", text: "5", source: "default" },
    ]);
    const good = { ...list, text: "year,set\n1850,gauged\n" };
    const without = readRecipe("recipe.md", recipeText(), good).recipe;
    expect(without?.evidence?.window.value.toFraction()).toBe("5");
    expect(without?.chosenByDefault).toContainEqual({ path: "evidence.skip-bad-rows", text: "false" });
    expect(readRecipe("recipe.md", recipeText()).recipe?.evidence).toBeUndefined();
  });
});

describe("a row is added", () => {
  const row = {
    year: 1846,
    set: "gauged",
    fibre: "cotton",
    sheer: true,
    seen: "museum, hall 2",
    note: "mended",
  } as const;
  const bare = { year: 1850, set: "pleated", sheer: false } as const;
  it.each([
    [
      "to no list",
      undefined,
      row,
      'year,fibre,sheer,set,seen,note\n1846,cotton,yes,gauged,"museum, hall 2",mended\n',
    ],
    ["with little known", "", bare, "year,fibre,sheer,set,seen,note\n1850,,no,pleated,,\n"],
    [
      "with less",
      "year,sheer,set,seen\n1840,no,flat,\n",
      { year: 1851, set: "flat" },
      "year,sheer,set,seen\n1840,no,flat,\n1851,,flat,\n",
    ],
    ["in the list's own order", "set,year\nflat,1840\n", row, "set,year\nflat,1840\ngauged,1846\n"],
    ["behind a last line without an end", "year,set\n1840,flat", bare, "year,set\n1840,flat\n1850,pleated\n"],
    [
      "by the list's own line ends",
      "year,set\r\n1840,flat\r\n",
      bare,
      "year,set\r\n1840,flat\r\n1850,pleated\r\n",
    ],
  ] as const)("%s", (_, text, added, wanted) => {
    expect(withRow("evidence.csv", text, added)).toEqual({ text: wanted });
  });
  it("but not twice, and not to a list that cannot be read", () => {
    expect(withRow("evidence.csv", "year,set\n1850,pleated\n", bare)).toEqual({ same: true });
    expect(withRow("evidence.csv", "yaer,set\n1850,pleated\n", bare)).toMatchObject({
      messages: [{ code: "unknown-column" }],
    });
  });
});

it("a first line of more cells than columns can be is refused", () => {
  expect(said(`year,set${",x".repeat(60)}\n`)).toEqual(["error too-many 1:106"]);
});
