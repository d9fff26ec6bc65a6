/**
 * Lengths estimated over a hoop (trade: lengths and balance, the last rule). Two paths from waist to lowest steel: a
 * straight one, and a quarter ellipse for a domed hoop, which needs more. Both end on the nearest tape mark; the skirt
 * is cut for the longer. This project's own modelling choice throughout: the waist a circle, the hoop an ellipse of its
 * depth : width, set back by its offset.
 */
import {
  atLeastNothing,
  type Enclosure,
  ellipseGirth,
  enclosed,
  middle,
  minus,
  nearestSteps,
  over,
  PI,
  plus,
  root,
  times,
} from "../quantity/enclosure.ts";
import { type Fraction, fraction, LENGTH, quantity } from "../quantity/quantity.ts";
import type { Hoop } from "../recipe/recipe.ts";
import type { Work } from "./context.ts";

export const MEASURED_STATIONS = ["front", "left", "right", "back"] as const;
export type MeasuredStation = (typeof MEASURED_STATIONS)[number];

const TWO = enclosed(fraction(2n));

/** Decimal places of a millimetre to which what only serves to explain is kept. */
const PLACES = 6;

/** How far the hoop's edge stands from the plumb line through the waist's middle, at the front, a side and the back. */
interface HoopRadii {
  readonly front: Enclosure;
  readonly side: Enclosure;
  readonly back: Enclosure;
}

/** Half the hoop's width and depth: an ellipse of the given shape whose girth is its round. */
function halves({ round, shape }: Hoop): { halfWidth: Enclosure; halfDepth: Enclosure } {
  const depth = enclosed(shape.value);
  const halfWidth = over(enclosed(round.value), ellipseGirth(enclosed(fraction(1n)), depth));
  return { halfWidth, halfDepth: times(halfWidth, depth) };
}

/** Undefined when the hoop is set so far back that the waist's middle stands outside it. */
function radii(hoop: Hoop): HoopRadii | undefined {
  const { halfWidth, halfDepth } = halves(hoop);
  const back = enclosed(hoop.offset.value);
  if (back.high >= halfDepth.low) return undefined;
  const share = over(back, halfDepth);
  const inner = atLeastNothing(minus(enclosed(fraction(1n)), times(share, share)));
  return {
    front: minus(halfDepth, back),
    side: times(halfWidth, root(inner)),
    back: plus(halfDepth, back),
  };
}

/** Sets the reach, the straight and the domed path at every station. False, with an error said, where they cannot be. */
export function solveOverHoop({ recipe, sheet, say }: Work): boolean {
  const { hoop } = recipe.wearer;
  if (!hoop?.height) throw new Error("a length is estimated over a hoop that has no height");
  const found = radii(hoop);
  if (!found) {
    say({
      code: "hoop-behind",
      level: "error",
      path: "wearer.hoop.offset",
      text: `a hoop set back by ${sheet.shown("wearer.hoop.offset")} stands wholly behind the middle of the waist`,
      hint: "give a smaller offset, or measure waist-to-floor over the hoop",
    });
    return false;
  }
  const { halfWidth, halfDepth } = halves(hoop);
  const inWords =
    "the ellipse of that depth : width whose girth is the hoop's round (by the arithmetic-geometric mean)";
  sheet.choose("hoop.width", millimetres(times(halfWidth, TWO)), `twice the half width of ${inWords}`);
  sheet.choose("hoop.depth", millimetres(times(halfDepth, TWO)), `twice the half depth of ${inWords}`);
  const waist = over(enclosed(sheet.get("waist.seam").value), times(TWO, PI));
  const fall = enclosed(sheet.evaluate("wearer.waistHeight - wearer.hoop.height").value);
  const tape = sheet.showing.tape.value;
  const lowest = hoop.height.value;
  const hangsPlumb: MeasuredStation[] = [];
  for (const station of MEASURED_STATIONS) {
    const edge = station === "front" ? found.front : station === "back" ? found.back : found.side;
    if (edge.high < waist.low) hangsPlumb.push(station);
    const reach = atLeastNothing(minus(edge, waist));
    const straight = root(plus(times(reach, reach), times(fall, fall)));
    const domed = over(ellipseGirth(reach, fall), enclosed(fraction(4n)));
    sheet.choose(
      `reach.${station}`,
      millimetres(reach),
      "the hoop's edge there less waist.seam / (2 x pi), both from the middle of the waist; nothing where the hoop is inside",
    );
    sheet.choose(
      `straight.${station}`,
      quantity(onTape(straight, lowest, tape), LENGTH),
      `the square root of reach.${station} squared + (wearer.waistHeight - wearer.hoop.height) squared, + wearer.hoop.height, to the nearest tape mark`,
    );
    sheet.choose(
      `domed.${station}`,
      quantity(onTape(domed, lowest, tape), LENGTH),
      `a quarter of the girth of an ellipse with the semi-axes reach.${station} and wearer.waistHeight - wearer.hoop.height, + wearer.hoop.height, to the nearest tape mark`,
    );
  }
  sayEstimated({ recipe, sheet, say }, hangsPlumb);
  return true;
}

const millimetres = (e: Enclosure) => quantity(middle(e, PLACES), LENGTH);

/** The path and the height below it, on the nearest tape mark. */
function onTape(path: Enclosure, below: Fraction, tape: Fraction): Fraction {
  return nearestSteps(plus(path, enclosed(below)), tape).mul(tape);
}

function sayEstimated({ sheet, say }: Work, hangsPlumb: readonly MeasuredStation[]): void {
  const range = (station: MeasuredStation): string =>
    `${sheet.shown(`straight.${station}`)} to ${sheet.shown(`domed.${station}`)}`;
  const alike = MEASURED_STATIONS.every(
    (station) =>
      sheet.get(`straight.${station}`).value.equals(sheet.get("straight.front").value) &&
      sheet.get(`domed.${station}`).value.equals(sheet.get("domed.front").value),
  );
  const ranges = alike
    ? `${range("front")} all round`
    : `front ${range("front")}, sides ${range("left")}, back ${range("back")}`;
  say({
    code: "estimated-lengths",
    level: "warning",
    path: "wearer.waist-height",
    text: `the lengths to the floor are estimated over the hoop (${ranges}: the longer for a domed hoop, and it is cut for the longer); estimate: measure before cutting`,
    hint: "dress the hoop, measure waist-to-floor at the four places and give it in place of waist-height; never finish a hem on an estimate",
  });
  if (hangsPlumb.length === 0) return;
  const where = hangsPlumb.length === MEASURED_STATIONS.length ? "anywhere" : `at the ${words(hangsPlumb)}`;
  say({
    code: "hoop-inside-waist",
    level: "warning",
    path: "wearer.hoop",
    text: `the hoop does not stand out beyond the waist ${where}: the length there is the height of the waist`,
    hint: "check the hoop's round, shape and offset",
  });
}

const words = (stations: readonly MeasuredStation[]): string =>
  stations
    .map((station) => (station === "front" || station === "back" ? station : `${station} side`))
    .join(" and ");
