/** Four faults of gauging beside the right thing: leaning, staggered, crowded, a ridge left out. Spaces are drawn larger than they are. */
import type { Plan } from "../solve/plan.ts";
import { betweenPins } from "./between-pins.ts";
import { Drawing } from "./drawing.ts";
import type { Figure } from "./figure.ts";
import { LETTERING, PICTURE } from "./language.ts";
import { chiefSection, printer, shownOf } from "./measure.ts";
import { arc, type Point } from "./svg.ts";

/** The two panels: where each begins, and how wide it is. */
const PANELS = [PICTURE.margin + 4, 186] as const;
const WIDE = 160;
const HIGH = 46;
/** Pleats drawn in a panel, and how far the leaning ones are out at the foot. */
const PLEATS = 16;
const LEAN = 16;

const at = (x: number, y: number): Point => ({ x, y });
const level = (y: number, from: number, to: number): Point[] => [at(from, y), at(to, y)];

/** One side of one fault: draws into a panel whose top left corner is given. */
type Panel = (drawing: Drawing, x: number, top: number, wrong: boolean) => void;

const leaning: Panel = (drawing, x, top, wrong) => {
  edge(drawing, x, top);
  drawing.lines(
    "body",
    spread(x).map((from) => [at(from, top), at(from + (wrong ? LEAN : 0), top + HIGH)]),
    { soft: true },
  );
};

/** Dashes on the side you see; on the wrong panel the lower row is half a bite along. */
const staggered: Panel = (drawing, x, top, wrong) => {
  drawing.line("fold", level(top, x, x + WIDE), { soft: true });
  const bite = 14;
  for (const row of [0, 1]) {
    const y = top + 16 + row * 18;
    const off = wrong && row === 1 ? bite / 2 : 0;
    drawing.lines(
      "over",
      Array.from({ length: 5 }, (_, i) =>
        level(y, x + 8 + off + 2 * i * bite, x + 8 + off + (2 * i + 1) * bite),
      ),
      { soft: true },
    );
  }
  const plumb = Array.from({ length: 5 }, (_, i) => x + 8 + 2 * i * bite);
  drawing.lines(
    "leader",
    plumb.map((mark) => [at(mark, top + 8), at(mark, top + HIGH - 2)]),
    { soft: true },
  );
};

/** Three pins, two spaces between them: shared out, or all but a few in the first. */
const crowded: Panel = (drawing, x, top, wrong) => {
  edge(drawing, x, top);
  const half = PLEATS / 2;
  const places = wrong
    ? [
        ...Array.from({ length: PLEATS - 4 }, (_, i) => x + 5 + (i * (WIDE / 2 - 10)) / (PLEATS - 5)),
        ...Array.from({ length: 4 }, (_, i) => x + WIDE / 2 + 14 + i * 19),
      ]
    : Array.from({ length: PLEATS }, (_, i) => x + ((i + 0.5) * WIDE) / PLEATS).slice(0, 2 * half);
  drawing.lines(
    "body",
    places.map((from) => [at(from, top), at(from, top + HIGH)]),
    { soft: true },
  );
  for (const pin of [x, x + WIDE / 2, x + WIDE]) {
    drawing.line("body", [at(pin, top - 10), at(pin, top + 8)], { soft: true });
    drawing.dot(at(pin, top - 10), 2);
  }
};

/** The seam bent back: a stitch over every ridge, or one ridge that has dropped without any. */
const skipped: Panel = (drawing, x, top, wrong) => {
  edge(drawing, x, top);
  const pitch = WIDE / 8;
  for (let i = 0; i < 8; i += 1) {
    const loose = wrong && i === 4;
    const [a, b] = [x + i * pitch + 3, x + (i + 1) * pitch - 3];
    const head = top + (loose ? 17 : 4);
    const round = arc(at((a + b) / 2, head + 7), (b - a) / 2, 7, 180, 360);
    drawing.line("body", [at(a, top + HIGH), ...round, at(b, top + HIGH)], { soft: true });
    if (!loose)
      drawing.line("over", [at((a + b) / 2 + 3, top - 3), at((a + b) / 2 - 2, top + 10)], { soft: true });
  }
};

function edge(drawing: Drawing, x: number, top: number): void {
  drawing.line("finished", level(top, x, x + WIDE), { soft: true });
}

const spread = (x: number): number[] =>
  Array.from({ length: PLEATS }, (_, i) => x + ((i + 0.5) * (WIDE - LEAN)) / PLEATS);

interface Fault {
  readonly name: string;
  readonly view: string;
  readonly right: string;
  readonly wrong: string;
  readonly panel: Panel;
}

function faultsOf(plan: Plan): readonly Fault[] {
  const { fine } = printer(plan);
  const section = chiefSection(plan);
  const between = betweenPins(section.pleats);
  return [
    {
      name: "Leaning",
      view: "outside, set",
      right: `upright, ${fine(section.spacing)} apart`,
      wrong: "leaning: rows drawn unequally",
      panel: leaning,
    },
    {
      name: "Staggered",
      view: "inside, flat, before drawing up",
      right: "every row in the same marks",
      wrong: "a row half a bite along: the heads zigzag",
      panel: staggered,
    },
    {
      name: "Crowded",
      view: "outside, between three pins of the edge",
      right: `${between} between two pins`,
      wrong: "crowded, then bare",
      panel: crowded,
    },
    {
      name: "A ridge left out",
      view: "outside, the seam bent back",
      right: "a stitch at every ridge",
      wrong: "one ridge loose: it drops",
      panel: skipped,
    },
  ];
}

export function drawFaults(plan: Plan): Drawing {
  const drawing = new Drawing("faults");
  drawing.heading("Right at the left, wrong at the right. Waist upwards.");
  drawing.note("Pleats are drawn fewer and wider than they are.");
  for (const { name, view, right, wrong, panel } of faultsOf(plan)) {
    drawing.note(`${name} (${view})`, { above: 10, bold: false });
    const top = drawing.bottom + 18;
    for (const [i, text] of [right, wrong].entries()) {
      const x = PANELS[i] as number;
      panel(drawing, x, top, i === 1);
      drawing.label(text, at(x + WIDE / 2, top + HIGH), {
        sides: ["below"],
        gap: 4,
        width: WIDE,
        size: LETTERING.small,
        leader: "never",
        bold: i === 1,
      });
    }
    drawing.settle();
  }
  return drawing;
}

/** What each pair shows, for who cannot see it. */
export function faults(plan: Plan): Figure {
  const section = chiefSection(plan);
  const { part } = printer(plan);
  const pairs = faultsOf(plan).map(({ name, right, wrong }) => `${name}: right, ${right}; wrong, ${wrong}`);
  return drawFaults(plan).finish(
    "Four faults, and the right thing beside them",
    `${pairs.join(". ")}. The ${section.name} has ${section.pleats} pleats in ${part(section.waist)} of ${shownOf(plan, "waist.seam")}.`,
  );
}
