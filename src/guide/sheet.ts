/** One page of guides: the squares to measure first, what garment and which page it is, then what is cut out. */
import type { Element } from "hast";
import { el, rectangle } from "../figure/svg.ts";
import type { Plan } from "../solve/plan.ts";
import type { Cut } from "./guide.ts";
import { lines, paragraph, SHEET, TEXT, words } from "./paper.ts";

/** Sides of the check squares. */
export const SQUARES = { inch: 25.4, centimetres: 20 } as const;

/** Height of the head of the page. */
export const HEAD = 33;

const GAP = 4;
const INCH_X = SHEET.width - SQUARES.inch - 0.2;
const CENTIMETRES_X = INCH_X - GAP - SQUARES.centimetres;

const MEASURE_FIRST =
  "Measure these two squares first: 1 in and 2 cm each way. If they are not, print again at 100 % (“actual size”), not fitted to the page; A4 and Letter both do.";

const square = (x: number, side: number): Element => lines(rectangle(x, 0.2, side, side), { width: "cut" });

/** The name of the garment, cut short where it would fill the page's head. */
const shortened = (text: string, most: number): string =>
  text.length > most ? `${text.slice(0, most).trimEnd()}…` : text;

/** For whom and of which size this garment is. */
function sizeOf({ recipe, values }: Plan): string {
  const wearer = recipe.wearer.name ? `${shortened(recipe.wearer.name, 40)}, ` : "";
  const size = recipe.size === undefined ? "" : `size ${recipe.size}, `;
  return `${size}${wearer}waist seam ${values.get("waist.seam")?.shown}`;
}

function head(plan: Plan, title: string, number: number, of: number): Element[] {
  const width = CENTIMETRES_X - GAP;
  const what = paragraph(title, width, { size: TEXT.title, bold: true });
  const garment = paragraph(`${shortened(plan.recipe.title, 90)} · ${sizeOf(plan)}`, width);
  const measure = paragraph(MEASURE_FIRST, width, { size: TEXT.small });
  const inside = (x: number, side: number, text: string): Element =>
    words(x + side / 2, side / 2 + 1.2, text, { size: TEXT.heading, bold: true, anchor: "middle" });
  return [
    square(CENTIMETRES_X, SQUARES.centimetres),
    square(INCH_X, SQUARES.inch),
    inside(CENTIMETRES_X, SQUARES.centimetres, "2 cm"),
    inside(INCH_X, SQUARES.inch, "1 in"),
    words(SHEET.width, 29.4, `guide ${number} of ${of}`, { size: TEXT.heading, bold: true, anchor: "end" }),
    ...what.draw(0, 0),
    ...garment.draw(0, what.height + 0.5),
    ...measure.draw(0, what.height + garment.height + 1.5),
    lines(`M0 ${HEAD - 2}H${SHEET.width}`),
  ];
}

/** The whole page as an `svg` of true size. */
export function drawSheet(
  plan: Plan,
  name: string,
  title: string,
  description: string,
  cuts: readonly Cut[],
  number: number,
  of: number,
): Element {
  let top: number = HEAD;
  const body = cuts.flatMap((cut) => {
    const drawn = cut.draw(top);
    top += cut.height;
    return drawn;
  });
  const ids = [`${name}-title`, `${name}-desc`] as const;
  return el(
    "svg",
    {
      viewBox: `0 0 ${SHEET.width} ${SHEET.height}`,
      width: `${SHEET.width}mm`,
      height: `${SHEET.height}mm`,
      role: "img",
      ariaLabelledBy: [...ids],
      fontFamily: "sans-serif",
    },
    [
      el("title", { id: ids[0] }, [title]),
      el("desc", { id: ids[1] }, [description]),
      el("g", { fill: "currentColor", fontSize: TEXT.label }, [...head(plan, title, number, of), ...body]),
    ],
  );
}
