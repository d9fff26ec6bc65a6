/** The maker's map: two rulers, the waist seam above and the flat cut top below, each place of the one joined to its place on the other. */
import type { Plan } from "../solve/plan.ts";
import { Drawing } from "./drawing.ts";
import type { Figure } from "./figure.ts";
import { drawMapHalf, lettered } from "./map-half.ts";
import { printer, shownOf } from "./measure.ts";

export function drawMap(plan: Plan): Drawing {
  const drawing = new Drawing("map");
  const unit = plan.recipe.show === "cm" ? "centimetres" : "inches";
  drawing.heading("Right side of the cloth. The waist seam above, the flat cut top below.");
  drawing.note(
    `Both are numbered in ${unit} from centre front; each ruler has a scale of its own, the top drawn far smaller.`,
  );
  for (const side of ["left", "right"] as const) {
    drawing.note(`The wearer's ${side} half:`, { above: 10 });
    drawMapHalf(drawing, plan, side);
  }
  drawing.note(
    lettered(plan)
      .map(({ letter, place }) => `${letter} ${place.place}`)
      .join("; "),
    { above: 10 },
  );
  return drawing;
}

export function map(plan: Plan): Figure {
  const { tape } = printer(plan);
  const stations = plan.map
    .filter(({ kinds }) => kinds.includes("station"))
    .map(
      ({ place, waist, alongTop, turnDownMark }) =>
        `${place.split(":")[0]} at ${tape(waist)} of waist and ${tape(alongTop)} along the top, ${tape(turnDownMark)} turned down`,
    );
  const others = plan.map.length - stations.length;
  const more = others > 0 ? `, and ${others} more places` : "";
  return drawMap(plan).finish(
    "The map: from the waist seam to the cut top",
    `Two rulers for each half, from centre front to centre back: the waist seam of ${shownOf(plan, "waist.seam")} above, the cut top of ${shownOf(plan, "skirt.round")} below. Lines join each place of the one to its place on the other. Counted from centre front by the wearer's left: ${stations.join("; ")}${more}. The opening is left unsewn ${shownOf(plan, "placket.unsewn")} down from the cut top.`,
  );
}
