/** Whipping close up: from the inside while the work is sewn, and opened out, from the outside. */
import type { Plan } from "../solve/plan.ts";
import { Drawing } from "./drawing.ts";
import type { Figure } from "./figure.ts";
import { chiefSection, pen, penOf, shownOf } from "./measure.ts";
import { drawOpenedOut } from "./opened-out.ts";
import { drawRidges, type Ridges, standRidges } from "./ridges.ts";
import { edgeAt } from "./sewn-edge.ts";
import { drawNeedle, drawStitches } from "./whip-stitches.ts";

/** Pleats drawn, and from one to the next in units. */
const EVERY = { pleats: 9, spacing: 30 } as const;
const EVERY_OTHER = { pleats: 11, spacing: 25 } as const;
const RIGHT = 334;
const ABOVE = { plain: 92, piped: 116 } as const;

/** How far below the fold the stitch goes: the rule of the whipping chapter, no value of the plan. */
export const stitchDepth = ({ recipe }: Plan): { readonly inches: number; readonly shown: string } =>
  recipe.show === "cm" ? { inches: 1.5 / 25.4, shown: "1.5 mm" } : { inches: 1 / 16, shown: "1/16 in" };

export function drawWhipping(plan: Plan): Drawing {
  const drawing = new Drawing("whipping");
  const section = chiefSection(plan);
  const other = plan.recipe.attach.whip === "every-other";
  const wide = other ? EVERY_OTHER : EVERY;
  const pleats = Math.min(wide.pleats, section.pleats);
  const scale = wide.spacing / pen(section.spacing);
  const edge = edgeAt(plan, section);
  drawing.heading(
    `Inside of the ${plan.recipe.garment} towards you, ${edge.above} behind it, both edges upwards.`,
  );
  drawing.note("While you sew: right sides together, seen a little from above, from right to left.");
  const ridges: Ridges = standRidges({
    right: RIGHT,
    edge: drawing.bottom + (edge.piped ? ABOVE.piped : ABOVE.plain),
    spacing: wide.spacing,
    bites: section.bites.slice(0, 2 * pleats).map((bite) => pen(bite) * scale),
    wall: (penOf(plan, "gauging.packed") / 2) * scale,
    rows: plan.rows.slice(0, 1).map((row) => pen(row) * scale),
    sewnTo: edge,
  });
  drawRidges(drawing, ridges);
  const below = stitchDepth(plan);
  const stitches = { ridges, depth: below.inches * scale, stride: other ? 2 : 1 } as const;
  drawStitches(drawing, stitches);
  drawNeedle(
    drawing,
    stitches,
    `needle: ${edge.piped ? "through the casing beside the cord, then" : `through the ${edge.name}'s turn and`} the ridge, ${below.shown} below its fold`,
  );
  drawing.settle();
  drawing.note(
    other
      ? "Every other ridge, one stitch each; every fourth stitch twice."
      : `One ridge, one stitch, none left out; every fourth twice. The stitch takes the ridge that lies against the ${edge.name}, through both its layers, not the free fold and not the gauging row.`,
  );
  if (edge.piped)
    drawing.note(
      "The cord is never pierced: the stitch lies over it, and the dots on its far side are in the casing.",
    );
  if (plan.recipe.attach.to === "part-band")
    drawing.note(
      `On the part band, which has no cord, take the turned edge of the face that touches the ${plan.recipe.garment}.`,
    );

  drawing.heading(
    `Outside of the ${plan.recipe.garment}, opened out. ${edge.above === "bodice" ? "Bodice" : "Band"} upwards.`,
  );
  drawOpenedOut(drawing, plan, { pleats, spacing: wide.spacing, right: RIGHT, edge });
  drawing.settle();
  drawing.note(
    `Even ridges close under the ${edge.piped ? "cord, which hides the stitches" : `${edge.name}, almost no stitch`}; the depth stands inside. In all ${shownOf(plan, "whip.stitches")} stitches, ${shownOf(plan, "whip.doubled")} of them the doubled ones.`,
  );
  return drawing;
}

export function whipping(plan: Plan): Figure {
  const { shown } = stitchDepth(plan);
  const edge = edgeAt(plan, chiefSection(plan));
  const takes = edge.piped
    ? "the casing beside the cord, never the cord,"
    : `the outer turn of the ${edge.name}'s edge`;
  const pleats = plan.recipe.attach.whip === "every-other" ? "every other pleat" : "every pleat";
  return drawWhipping(plan).finish(
    "Whipping, close up",
    `Above, the work while it is sewn: ${plan.recipe.garment} and ${edge.above} right sides together, the inside of the ${plan.recipe.garment} towards you, edges upwards. The needle comes from behind through ${takes} and through the ridge that lies against the ${edge.name}, ${shown} below its fold, both layers; ${pleats}, from right to left, every fourth stitch twice. Below, opened out and seen from the outside: even ridges under the ${edge.piped ? "cord" : edge.name}, the depth of the pleats inside. ${shownOf(plan, "whip.stitches")} stitches in all, ${shownOf(plan, "whip.doubled")} of them doubled.`,
  );
}
