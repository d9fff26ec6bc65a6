/** Strips for pleated parts: every fold and the line it is laid to, at true size along the flat cloth. */
import type { Element } from "hast";
import { printPart } from "../quantity/print.ts";
import { compare, equal, type Quantity } from "../quantity/quantity.ts";
import type { Plan, PleatedSection } from "../solve/plan.ts";
import { pleatLines } from "../solve/pleat-lines.ts";
import type { Cut } from "./guide.ts";
import { lines, paragraph, SHEET, TEXT, upright, words } from "./paper.ts";
import { bareName, pleatedParts } from "./pleat-gauge.ts";
import { across, LONGEST, named, numberAt, outline, type StripTile, wayArrow, wordsFrom } from "./strip.ts";
import { tilesOf } from "./tiles.ts";

const HEIGHT = 26;

/** A line of the strip: a fold (A) or the line a fold is laid to (C). */
export interface PleatMark {
  readonly at: Quantity;
  readonly kind: "A" | "C";
}

/** Every line of a pleated part from its end nearer centre front, each once. */
export function pleatMarks(section: PleatedSection): PleatMark[] {
  const all = pleatLines(section).flatMap(({ folds }) =>
    folds.flatMap(({ at, to }): PleatMark[] => [
      { at, kind: "A" },
      { at: to, kind: "C" },
    ]),
  );
  return all
    .filter(({ at, kind }, i) => all.findIndex((other) => equal(other.at, at) && other.kind === kind) === i)
    .sort((a, b) => compare(a.at, b.at));
}

/** One strip a pleated part, for the wearer's left half; face down it serves the right. */
export function pleatStrips(plan: Plan): Cut[] {
  return pleatedParts(plan).flatMap((section, i) => {
    const letter = `P${i + 1}`;
    const marks = pleatMarks(section);
    const tiles = tilesOf(
      marks.map(({ at }) => at),
      section.cloth,
      LONGEST,
    );
    return [
      serving(section, letter, tiles.length, plan),
      ...tiles.map((tile, index) =>
        tileCut({ tile, index, count: tiles.length, letter, way: "right", height: HEIGHT }, marks, section),
      ),
    ];
  });
}

const groupOf = (letter: string): string => `pleat strip ${letter}`;

function serving(section: PleatedSection, letter: string, tiles: number, plan: Plan): Cut {
  const cloth = printPart(section.cloth, { show: plan.recipe.show, tape: plan.recipe.tape });
  const head = paragraph(
    `Strip ${letter}, ${bareName(section)}: ${cloth} from end line to end line${tiles > 1 ? `, ${tiles} tiles` : ""}`,
    SHEET.width,
    { size: TEXT.heading, bold: true },
  );
  const body = paragraph(
    `Outside of the ${plan.recipe.garment} up, the waist away from you; the heavy edge along the fold or the balance line. A: fold here; C, dashed: where that fold is laid to. Wearer's left half: as printed, the left-hand end nearer centre front. Right half: prick the lines through and turn the strip over sideways, the heavy edge still uppermost.`,
    SHEET.width,
  );
  return {
    group: groupOf(letter),
    height: head.height + body.height + 1,
    leads: true,
    words: `Strip ${letter} for the ${bareName(section)}, ${cloth} long: folds A and the lines C that they are laid to.`,
    draw: (top) => [...head.draw(0, top), ...body.draw(0, top + head.height)],
  };
}

function tileCut(strip: StripTile, marks: readonly PleatMark[], section: PleatedSection): Cut {
  const { tile, index, count, letter } = strip;
  const which = count > 1 ? `${letter} ${index + 1} of ${count}` : letter;
  return {
    group: groupOf(letter),
    height: strip.height + 3,
    words: `Tile ${which}: ${tile.marks.length} lines.`,
    draw: (top) => [
      ...outline(strip, top),
      ...foldLines(strip, marks, top),
      ...numbers(strip, section, top),
      ...named(strip, top, ["OUTSIDE · left half, from centre front to the back", "OUTSIDE", ""]),
      ...wayArrow(wordsFrom(strip) + 3, top + HEIGHT - 1.7, "right"),
    ],
  };
}

function foldLines(strip: StripTile, marks: readonly PleatMark[], top: number): Element[] {
  const here = strip.tile.marks.map(({ n }) => marks[n - 1] as PleatMark);
  const of = (kind: PleatMark["kind"]): string =>
    here
      .filter((mark) => mark.kind === kind)
      .map(({ at }) => upright(across(strip, at), top, top + 13))
      .join("");
  return [
    lines(of("A"), { width: "cut" }),
    lines(of("C"), { width: "cut", dash: "1 1" }),
    ...here.map(({ at, kind }) =>
      words(numberAt(strip, at), top + 15.8, kind, { size: TEXT.small, anchor: "middle" }),
    ),
  ];
}

/** Each pleat's number, on its face. */
function numbers(strip: StripTile, section: PleatedSection, top: number): Element[] {
  const { tile } = strip;
  return pleatLines(section).flatMap(({ faceFrom, faceTo }, i) => {
    const middle = { ...faceFrom, value: faceFrom.value.add(faceTo.value).div(2) };
    if (compare(middle, tile.from) < 0 || compare(tile.to, middle) <= 0) return [];
    return [words(across(strip, middle), top + 5, String(i + 1), { bold: true, anchor: "middle" })];
  });
}
