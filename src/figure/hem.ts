/** Section through the hem, layers drawn apart: facing, its seam rolled inside, braid; or the turned-up fold. */
import type { Plan } from "../solve/plan.ts";
import { Drawing } from "./drawing.ts";
import type { Figure } from "./figure.ts";
import { drawFaced, drawTurned, drawWoven } from "./hem-edges.ts";
import { drawBacking, hemRules, SKIRT, v } from "./hem-layers.ts";
import { penOf, shownOf } from "./measure.ts";
import { torn } from "./torn.ts";

/** How tall the hem's depth is drawn, and how much of the skirt stands above it. */
const TALL = 150;
const ABOVE = 44;
export function drawHem(plan: Plan): Drawing {
  const drawing = new Drawing("hem");
  const faced = plan.recipe.skirt.hem.kind === "faced";
  const woven = plan.recipe.skirt.hem.edge === "selvedge";
  const { braid } = plan.recipe.skirt;
  drawing.heading("Section through the hem. Inside at the left, outside at the right, waist upwards.");
  drawing.note(
    `The layers lie close; they are drawn apart, and far thicker than they are. Heights are in proportion${faced ? (woven ? ", but for what the selvedge stands below the facing" : ", but for the roll of the seam") : ""}${braid ? `${faced ? " and" : ", but for"} what shows of the braid` : ""}.`,
  );
  const top = drawing.bottom + 14;
  const edge = top + ABOVE + TALL;
  const scale = TALL / penOf(plan, "skirt.hem.depth");
  drawing.line("cloth", [v(SKIRT, top), v(SKIRT, woven ? edge : edge - 7)]);
  drawing.line("break", torn(v(SKIRT - 10, top), v(SKIRT + 10, top)));
  const right = { x: SKIRT + 2, width: 110 };
  drawing.label(plan.recipe.garment, v(SKIRT, top + 26), { sides: ["right"], gap: 8, leader: "never" });
  drawing.label(woven ? "hem edge: the selvedge" : "hem edge: a fold along one thread", v(SKIRT - 2, edge), {
    stand: v(right.x + 16, edge - 8),
    sides: ["right"],
    width: right.width,
    leader: "always",
  });
  drawBacking(drawing, plan, { top, edge, scale });
  if (woven) drawWoven(drawing, plan, edge, scale);
  else if (faced) drawFaced(drawing, plan, edge, scale);
  else drawTurned(drawing, plan, edge, scale);
  drawing.settle();
  drawing.note(words(plan));
  return drawing;
}

/** What the figure says in words. */
function words(plan: Plan): string {
  const { kind, edge } = plan.recipe.skirt.hem;
  const braid = plan.recipe.skirt.braid
    ? ` The braid is sewn along its upper edge through the ${kind === "faced" ? "facing" : "turned-up layer"} only.`
    : "";
  const behind = plan.recipe.lining;
  const lined =
    behind && behind.to !== "separate"
      ? kind === "faced" && edge === "cut"
        ? " The lining's lower edge is caught in the same seam."
        : edge === "selvedge"
          ? " The lining ends under the facing."
          : " The lining ends in the fold."
      : "";
  if (edge === "selvedge")
    return `The selvedge is the hem edge, as it is woven: nothing is turned up. The facing, cut ${shownOf(plan, "facing.depth")} deep, lies flat inside, both edges turned in by ${shownOf(plan, "skirt.seam")}.${lined}${braid}`;
  if (kind === "faced")
    return `The facing, cut ${shownOf(plan, "facing.depth")} deep, hangs on a seam of ${shownOf(plan, "skirt.seam")} that lies ${hemRules(plan).roll} up inside, so that it does not show.${lined}${braid}`;
  return `${shownOf(plan, "hem.allowance")} is turned up in all: the depth of ${shownOf(plan, "skirt.hem.depth")} and the turn-in of ${shownOf(plan, "skirt.hem.turnIn")}.${lined}${braid}`;
}

export function hem(plan: Plan): Figure {
  const faced = plan.recipe.skirt.hem.kind === "faced";
  const what =
    plan.recipe.skirt.hem.edge === "selvedge"
      ? `From outside to inside: the ${plan.recipe.garment}'s cloth, ending in its selvedge, and the facing, its upper and lower edges turned in`
      : faced
        ? `From outside to inside: the ${plan.recipe.garment}'s cloth, folded at the hem edge, its turning, the facing's turning, the facing with its top turned in`
        : "The cloth folded up to the inside at the hem edge, its raw edge turned in at the top";
  return drawHem(plan).finish(
    "Section through the hem",
    `${what}${plan.recipe.skirt.braid ? `, and inside it the braid, which stands ${hemRules(plan).braid} below the edge` : ""}. ${words(plan)}`,
  );
}
