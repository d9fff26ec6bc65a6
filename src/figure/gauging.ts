/** Gauging close up: a stretch lying flat, seen from the inside, in true proportion. */
import type { Quantity } from "../quantity/quantity.ts";
import type { Plan } from "../solve/plan.ts";
import { arrow } from "./dimension.ts";
import { Drawing } from "./drawing.ts";
import type { Figure } from "./figure.ts";
import { drawCloth, drawStay } from "./gauging-cloth.ts";
import { drawBites, drawRows } from "./gauging-thread.ts";
import { chiefSection, pen, penOf, placeName, printer } from "./measure.ts";
import { RIGHT, stretchOf } from "./stretch.ts";

export function drawGauging(plan: Plan): Drawing {
  const drawing = new Drawing("gauging");
  const section = chiefSection(plan);
  const share = pen(section.from) / penOf(plan, "waist.seam");
  const start = placeName(plan, share) ?? "its beginning";
  drawing.heading(`Inside of the ${plan.recipe.garment}, lying flat. Fold and top upwards.`);
  const { pleats } = stretchOf(section, 0);
  drawing.note(
    `The ${section.name}: the first ${pleats} of its ${section.pleats} pleats, from ${start}, in true proportion.`,
  );
  const stretch = stretchOf(section, drawing.bottom + 60);
  // Sizes and rows first: they have only one place each, the names of the layers have more.
  drawBites(drawing, plan, stretch);
  const foot = drawCloth(drawing, plan, stretch);
  drawRows(drawing, plan, stretch);
  if (plan.recipe.fullness.stay) drawStay(drawing, plan, stretch);
  drawing.settle();
  const way = Math.max(foot, drawing.bottom) + 12;
  arrow(drawing, { x: RIGHT, y: way }, { x: RIGHT - 60, y: way });
  drawing.label("way of sewing", { x: RIGHT - 60, y: way }, { sides: ["left"], leader: "never" });
  drawing.settle();
  drawing.note(
    section.style === "even"
      ? "All rows go through the same marks, two to a pleat. The knots are inside, over a scrap of tape. The section's last mark stays empty: the next begins there."
      : "All rows go through the same marks, two to a pleat. Long stitch outside, short stitch inside: nearly all the depth will stand inside. The knots are inside, over a scrap of tape. The section's last mark stays empty: the next begins there.",
  );
  return drawing;
}

/** Where the needle goes in and out, drawn from the plan's own marks and rows. */
export function gauging(plan: Plan): Figure {
  const section = chiefSection(plan);
  const { tape, part } = printer(plan);
  const rows = plan.rows.map(tape).join(", ");
  const [first, second] = section.bites as [Quantity, Quantity];
  return drawGauging(plan).finish(
    "Gauging, close up from the inside",
    `A flat stretch of the ${section.name} seen from the inside, the fold at the top. ${plan.rows.length} rows of thread run ${rows} below the fold, all through the same needle marks. From the knot at the right the first bite, ${part(first)}, lies outside, the next, ${part(second)}, inside, and so on by turns: two bites make one pleat, ${section.pleats} pleats the section. The thread is drawn solid where it lies inside, dashed where it lies outside.`,
  );
}
