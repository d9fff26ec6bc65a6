/** What waists the gauging can be set to without its rows being sewn anew: a bar along the waist seam, this waist marked. */
import { compare, type Quantity } from "../quantity/quantity.ts";
import type { OtherWaist, Plan } from "../solve/plan.ts";
import { Drawing } from "./drawing.ts";
import type { Figure } from "./figure.ts";
import { LETTERING, PICTURE } from "./language.ts";
import { pen, penOf, printer, shownOf } from "./measure.ts";
import type { Point } from "./svg.ts";

const [LEFT, RIGHT] = [PICTURE.margin + 6, PICTURE.width - PICTURE.margin - 6];
const BAR = 18;
/** Between two strokes of a shaded stretch. */
const STROKE = 7;

interface Stretch {
  readonly from: number;
  readonly to: number;
  readonly what: OtherWaist["verdict"];
  readonly words: string;
}

const words = (what: OtherWaist["verdict"], { recipe }: Plan): string =>
  ({
    cannot: "too tight: cannot be drawn so close",
    tight: recipe.fullness.trial ? "hard to even and to whip" : "not sure: sew the trial first",
    serves: "serves",
    gapes: "gapes",
  })[what];

/** The stretches in inches of waist seam, from the smallest shown to the largest; what is empty is left out. */
function stretchesOf(plan: Plan): Stretch[] {
  const [packed, least, most, seam] = ["waistPacked", "waistLeast", "waistMost"]
    .map((name) => penOf(plan, `gauging.${name}`))
    .concat(penOf(plan, "waist.seam")) as [number, number, number, number];
  const asked = othersOf(plan).map(pen);
  const low = Math.min(packed, seam, ...asked) * 0.88;
  const high = Math.max(most, least, seam, ...asked) * 1.1;
  const ends = [low, packed, least, Math.max(least, most), high] as const;
  return (["cannot", "tight", "serves", "gapes"] as const)
    .map((what, i) => ({
      from: ends[i] as number,
      to: ends[i + 1] as number,
      what,
      words: words(what, plan),
    }))
    .filter(({ from, to }) => to - from > 1e-6);
}

export function drawRange(plan: Plan): Drawing {
  const drawing = new Drawing("range");
  drawing.heading("Waist seams for this gauging, the smallest at the left.");
  drawing.note(`${shownOf(plan, "gauging.pleats")} pleats, their rows left in. To scale.`);
  const stretches = stretchesOf(plan);
  const [low, high] = [(stretches[0] as Stretch).from, (stretches.at(-1) as Stretch).to];
  const across = (inches: number): number => LEFT + ((inches - low) / (high - low)) * (RIGHT - LEFT);
  const top = drawing.bottom + 50;
  drawing.keepClear({ x: 0, y: top - 2, width: PICTURE.width, height: BAR + 4 });
  for (const stretch of stretches) drawStretch(drawing, stretch, across, top);
  for (const name of ["gauging.waistPacked", "gauging.waistLeast", "gauging.waistMost"]) {
    if (name === "gauging.waistMost" && penOf(plan, name) <= penOf(plan, "gauging.waistLeast")) continue;
    const x = across(penOf(plan, name));
    drawing.line("body", upright(x, top, top + BAR + 6), { soft: true });
    drawing.label(
      shownOf(plan, name),
      { x, y: top + BAR + 6 },
      {
        sides: ["below"],
        gap: 1,
        size: LETTERING.small,
        leader: "moved",
      },
    );
  }
  drawing.reach(top + BAR + 8);
  const { part } = printer(plan);
  const here = across(penOf(plan, "waist.seam"));
  head(drawing, here, top, true);
  drawing.label(
    `this waist ${shownOf(plan, "waist.seam")}`,
    { x: here, y: top - 13 },
    {
      stand: { x: Math.min(Math.max(here, 70), PICTURE.width - 70), y: top - 18 },
      sides: ["above"],
      gap: 0,
      bold: true,
      size: LETTERING.small,
      width: 140,
      leader: "moved",
    },
  );
  const others = othersOf(plan);
  for (const waist of others) head(drawing, across(pen(waist)), top, false);
  drawing.settle();
  if (others.length > 0) drawing.note(`Open heads, from the left: ${others.map(part).join(", ")}.`);
  drawing.note(note(plan));
  return drawing;
}

const note = (plan: Plan): string =>
  plan.sections.length > plan.gauged.length
    ? "Flat and pleated parts keep the waist they have; the gauged parts give and take."
    : "Closer than it serves the pleats crowd; wider they stand apart and the thread shows.";

const upright = (x: number, from: number, to: number): Point[] => [
  { x, y: from },
  { x, y: to },
];

/** What serves is solid; what does not is open, and the more strokes the less it goes. */
function drawStretch(
  drawing: Drawing,
  { from, to, what, words }: Stretch,
  across: (inches: number) => number,
  top: number,
): void {
  const [a, b] = [across(from), across(to)];
  const box = [
    { x: a, y: top },
    { x: b, y: top },
    { x: b, y: top + BAR },
    { x: a, y: top + BAR },
  ];
  if (what === "serves") drawing.solid(box);
  drawing.line("body", box, { closed: true, soft: true });
  const apart = what === "cannot" ? STROKE : what === "tight" ? STROKE * 2 : Number.POSITIVE_INFINITY;
  for (let x = a + apart; x < b; x += apart)
    drawing.line(
      "ease",
      [
        { x, y: top },
        { x: Math.max(a, x - STROKE), y: top + BAR },
      ],
      { soft: true },
    );
  drawing.label(
    words,
    { x: (a + b) / 2, y: top + BAR + 24 },
    {
      sides: ["below"],
      gap: 2,
      width: Math.max(62, b - a - 8),
      size: LETTERING.small,
      leader: "never",
      bold: what === "serves",
    },
  );
}

/** A head above the bar that points at one waist: solid for this one, open for others. */
function head(drawing: Drawing, x: number, top: number, solid: boolean): void {
  const corners = [
    { x: x - 5, y: top - 13 },
    { x: x + 5, y: top - 13 },
    { x, y: top - 3 },
  ];
  if (solid) drawing.solid(corners);
  drawing.line("body", corners, { closed: true, soft: true });
  drawing.keepClear({ x: x - 6, y: top - 14, width: 12, height: 12 });
}

/** The waists the recipe asks for besides, of other edges and of further hooks, in order of size. */
function othersOf({ otherWaists, hookSets }: Plan): Quantity[] {
  const asked = otherWaists.filter((row) => row.asked && !row.asPlanned).map(({ waist }) => waist);
  return [...asked, ...hookSets.map(({ waist }) => waist)]
    .sort(compare)
    .filter((waist, i, all) => i === 0 || compare(waist, all[i - 1] as Quantity) !== 0);
}

/** Every number of the bar in words, for who cannot see it. */
export function range(plan: Plan): Figure {
  const serves = stretchesOf(plan).some(({ what }) => what === "serves");
  const from = shownOf(plan, "gauging.waistLeast");
  const others = othersOf(plan);
  const { part } = printer(plan);
  const kept = serves
    ? `It serves from ${from} to ${shownOf(plan, "gauging.waistMost")}; wider it gapes.`
    : `From ${from} on it can be set, but it gapes: it has too little cloth for so wide a waist.`;
  return drawRange(plan).finish(
    "What waists this gauging serves",
    `A bar of waist seams, the smallest at the left. Under ${shownOf(plan, "gauging.waistPacked")} the ${shownOf(plan, "gauging.pleats")} pleats cannot be drawn so close; from there to ${from}: ${words("tight", plan)}. ${kept} This waist is ${shownOf(plan, "waist.seam")}${others.length > 0 ? `; besides it ${others.map(part).join(", ")}` : ""}.`,
    { key: false },
  );
}
