/** Evening the pleats: between each two pins of the edge as many, first as they come, then shared out. */
import type { GaugedSection, Plan } from "../../solve/plan.ts";
import { betweenPins } from "../between-pins.ts";
import { Drawing } from "../drawing.ts";
import { chiefSection, printer } from "../measure.ts";
import { level, needle, p, pins, say, upright, way } from "./parts.ts";
import { isGauged, type Step } from "./step.ts";

const [LEFT, RIGHT] = [14, 346];
const QUARTERS = 4;
const DOWN = 26;
/** So many pleats at most are drawn: half the section, or a quarter of it. */
const MOST = 44;
/** How far the pleats of the first row are pushed out of their places, as a share of the stretch. */
const CROWDED = 0.13;

interface Stretch {
  readonly section: GaugedSection;
  readonly spaces: number;
  readonly pleats: number;
}

function stretchOf(plan: Plan): Stretch {
  const section = chiefSection(plan);
  const spaces = section.pleats / 2 <= MOST ? 2 : 1;
  return { section, spaces, pleats: (section.pleats * spaces) / QUARTERS };
}

function draw(plan: Plan): Drawing {
  const drawing = new Drawing("step-even");
  const stretch = stretchOf(plan);
  drawing.note("From the inside, edge upwards. As it comes:");
  drawRow(drawing, stretch, drawing.bottom + 20, CROWDED);
  drawing.settle();
  drawing.note("Upright, and shared out:", { above: 6 });
  const y = drawing.bottom + 20;
  drawRow(drawing, stretch, y, 0);
  const space = (RIGHT - LEFT) / stretch.spaces;
  for (let i = 0; i < stretch.spaces; i += 1)
    say(drawing, betweenPins(stretch.section.pleats), p(LEFT + (i + 0.5) * space, y - 3), {
      sides: ["above"],
      gap: 1,
      width: space - 8,
    });
  const stroke = RIGHT - space / 2;
  needle(drawing, p(stroke, y + DOWN - 2), p(stroke + 12, y + DOWN + 34));
  way(drawing, p(stroke - 12, y + DOWN + 30), p(stroke - 12, y + DOWN + 4));
  say(drawing, "stroke each one up with the needle's eye", p(stroke - 20, y + DOWN + 20), {
    sides: ["left"],
    width: 150,
  });
  drawing.reach(y + DOWN + 34);
  return drawing;
}

/** Pleats hanging from the edge between its pins; `crowded` pushes them out of their places. */
function drawRow(drawing: Drawing, { spaces, pleats }: Stretch, y: number, crowded: number): void {
  const wide = RIGHT - LEFT;
  const place = (share: number): number => LEFT + wide * (share + crowded * Math.sin(2 * Math.PI * share));
  drawing.lines("finished", [level(y, LEFT - 6, RIGHT + 6)], { soft: true });
  drawing.lines(
    "body",
    Array.from({ length: Math.round(pleats) }, (_, i) => {
      const x = place((i + 0.5) / pleats);
      const lean = crowded === 0 ? 0 : 3 * Math.sin(i * 1.7);
      return [p(x, y + 2), p(x + lean, y + DOWN)];
    }),
    { soft: true },
  );
  pins(
    drawing,
    Array.from({ length: spaces + 1 }, (_, i) => p(LEFT + (i * wide) / spaces, y - 10)),
    22,
  );
  drawing.avoid(upright(LEFT, y, y + DOWN));
}

export const stepEven: Step = {
  title: "Step: the pleats shared out between the pins",
  applies: isGauged,
  draw,
  describe(plan) {
    const { section, spaces } = stretchOf(plan);
    const { fine, part } = printer(plan);
    return `The ${section.name}${spaces === 2 ? ", half of it" : ", a quarter of it"}, between the pins that part its ${part(section.waist)} of edge into four. Above, crowded and leaning; below, ${betweenPins(section.pleats)} between each two pins, ${fine(section.spacing)} from pleat to pleat, stroked upright with a needle's eye.`;
  },
};
