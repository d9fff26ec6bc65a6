/** Marking strips for the bites: the plan's own marks at true size, in every row, one strip for each different section. */
import type { Element } from "hast";
import { written } from "../figure/svg.ts";
import { printOnTape, printPart } from "../quantity/print.ts";
import { add, type Quantity } from "../quantity/quantity.ts";
import { placeName } from "../solve/place-name.ts";
import type { GaugedSection, Plan } from "../solve/plan.ts";
import type { Cut } from "./guide.ts";
import { dots, level, lines, mm, paragraph, SHEET, TEXT, upright, words } from "./paper.ts";
import { across, LONGEST, named, numberAt, outline, type StripTile, wayArrow, wordsFrom } from "./strip.ts";
import { tilesOf } from "./tiles.ts";

/** The lowest row that a page can hold beneath what is written of a strip. */
const LOWEST_ROW = 140;

/** Sections that have the very same marks: one strip serves them all. */
export interface StripKind {
  readonly letter: string;
  readonly sections: readonly GaugedSection[];
  readonly marks: readonly Quantity[];
}

/**
 * The different strips of a plan. None where the cloth's own lines are the ruler, nor where the rows reach lower than a page
 * can hold beside its words.
 */
export function stripKinds(plan: Plan): StripKind[] {
  const lowest = plan.rows.at(-1);
  if (!lowest || mm(lowest) > LOWEST_ROW) return [];
  const kinds = new Map<string, GaugedSection[]>();
  for (const section of plan.gauged) {
    if (section.lines !== undefined) continue;
    const key = section.marks.map(({ value }) => value.toFraction()).join(" ");
    const known = kinds.get(key);
    if (known) known.push(section);
    else kinds.set(key, [section]);
  }
  return [...kinds.values()].map((sections, i) => ({
    letter: letterOf(i),
    sections,
    marks: (sections[0] as GaugedSection).marks,
  }));
}

/** A, B, … Z, then A2, B2, … */
const letterOf = (i: number): string =>
  `${String.fromCharCode(65 + (i % 26))}${i < 26 ? "" : Math.floor(i / 26) + 1}`;

/** Every strip, each with what it serves, then its tiles. */
export function markingStrips(plan: Plan): Cut[] {
  return stripKinds(plan).flatMap((kind) => {
    const cloth = (kind.sections[0] as GaugedSection).cloth;
    const tiles = tilesOf(kind.marks, cloth, LONGEST);
    return [
      serving(kind, tiles.length, plan),
      ...tiles.map((tile, index) =>
        tileCut(
          { tile, index, count: tiles.length, letter: kind.letter, way: "left", height: heightOf(plan) },
          kind,
          plan,
        ),
      ),
    ];
  });
}

const groupOf = ({ letter }: StripKind): string => `marking strip ${letter}`;

const heightOf = ({ rows }: Plan): number => Math.ceil(mm(rows.at(-1) as Quantity)) + 12;

/** For which sections the strip is, which end goes where, how long it must come out. */
function serving(kind: StripKind, tiles: number, plan: Plan): Cut {
  const showing = { show: plan.recipe.show, tape: plan.recipe.tape };
  const waist = (plan.values.get("waist.seam") as { quantity: Quantity }).quantity;
  const cloth = printPart((kind.sections[0] as GaugedSection).cloth, showing);
  const head = paragraph(
    `Strip ${kind.letter}: ${cloth} from end line to end line, ${kind.marks.length} marks${tiles > 1 ? `, ${tiles} tiles` : ""}`,
    SHEET.width,
    { size: TEXT.heading, bold: true },
  );
  const rows = plan.rows.map((row, i) => `row ${i + 1} at ${printOnTape(row, showing)}`).join(", ");
  const where = (at: Quantity): string => {
    const name = placeName(at, waist, plan);
    return /^(about|\d)/.test(name) ? `${name} from centre front` : name;
  };
  const ends = kind.sections.map((section) => {
    const [right, left] = [section.from, add(section.from, section.waist)].map(where);
    return `${section.name}: right-hand end to ${right}, left-hand end to ${left}`;
  });
  const body = [
    `Inside of the ${plan.recipe.garment} up, the fold away from you; the heavy edge along the fold: ${rows} below it.`,
    ...ends,
  ].map((text) => paragraph(text, SHEET.width));
  const height = body.reduce((sum, part) => sum + part.height, head.height);
  return {
    group: groupOf(kind),
    height: height + 1,
    leads: true,
    words: `Strip ${kind.letter}, ${cloth} long with ${kind.marks.length} marks, for the ${kind.sections.map(({ name }) => name).join(", ")}; ${rows} below the fold.`,
    draw: (top) => {
      let y = top + head.height;
      const below = body.flatMap((part) => {
        const drawn = part.draw(0, y);
        y += part.height;
        return drawn;
      });
      return [...head.draw(0, top), ...below];
    },
  };
}

function tileCut(strip: StripTile, kind: StripKind, plan: Plan): Cut {
  const { tile, index, count, letter } = strip;
  const numbers = tile.marks.map(({ n }) => n);
  const which = count > 1 ? `${letter} ${index + 1} of ${count}` : letter;
  const held = numbers.length === 0 ? "no mark" : `marks ${numbers[0]} to ${numbers.at(-1)}`;
  return {
    group: groupOf(kind),
    height: strip.height + 3,
    words: `Tile ${which}: ${held}.`,
    draw: (top) => [
      ...outline(strip, top),
      ...marksOn(strip, kind, plan, top),
      ...lettering(strip, held, top),
    ],
  };
}

/** Nearer than this to the last mark the number of another would run into its own. */
const CROWDED = 8;

/** Ticks through all rows, a dot where the needle goes through, and the thread where it lies on the side you see. */
function marksOn(strip: StripTile, kind: StripKind, { rows }: Plan, top: number): Element[] {
  const { tile } = strip;
  const ys = rows.map((row) => top + mm(row));
  const [high, low] = [Math.min(...ys), Math.max(...ys)];
  const places = tile.marks.map(({ at, n }) => ({ x: across(strip, at), at, n }));
  const [from, to] = [across(strip, tile.from), across(strip, tile.to)];
  const last = mm(kind.marks.at(-1) as Quantity);
  const inside = insideBites(kind.marks).flatMap(([start, end]) => {
    const [a, b] = [across(strip, start), across(strip, end)].map((x) =>
      Math.min(Math.max(x, Math.min(from, to)), Math.max(from, to)),
    ) as [number, number];
    return a === b ? [] : [[a, b] as const];
  });
  return [
    lines(ys.map((y) => level(y, from, to)).join(""), { width: "row", dash: "0.3 0.9" }),
    lines(places.map(({ x }) => upright(x, high - 1.4, low + 1.4)).join("")),
    lines(ys.flatMap((y) => inside.map(([a, b]) => level(y, a, b))).join(""), { width: "cut" }),
    dots(ys.flatMap((y) => places.map(({ x }) => `M${written(x)} ${written(y)}h0`)).join(""), 0.9),
    ...places
      .filter(({ at, n }) => n === 1 || n === kind.marks.length || (n % 10 === 0 && mm(at) < last - CROWDED))
      .map(({ at, n }) =>
        words(numberAt(strip, at), low + 3.6, String(n), { size: TEXT.small, anchor: "middle" }),
      ),
  ];
}

/** The bites that lie inside, where the maker sees them: the second, the fourth and so on. */
const insideBites = (marks: readonly Quantity[]): (readonly [Quantity, Quantity])[] =>
  marks.flatMap((at, i) =>
    i % 2 === 1 && i + 1 < marks.length ? [[at, marks[i + 1] as Quantity] as const] : [],
  );

/** Which tile it is, which side it lies on, and which way the needle goes. */
function lettering(strip: StripTile, held: string, top: number): Element[] {
  const x = wordsFrom(strip) + 3;
  const y = top + strip.height - 1;
  return [
    ...named(strip, top, [`INSIDE · ${held} · heavy edge to the fold`, `INSIDE · ${held}`, "INSIDE"]),
    words(x, y, "needle", { size: TEXT.small }),
    ...wayArrow(x + 8.5, y - 0.7, "left"),
  ];
}
