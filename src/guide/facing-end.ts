/** A template for the end of the hem facing: its cut depth, both seams, the join of its strips. */
import type { Element } from "hast";
import { through } from "../figure/svg.ts";
import { torn } from "../figure/torn.ts";
import { printOnTape } from "../quantity/print.ts";
import type { Plan } from "../solve/plan.ts";
import type { Cut } from "./guide.ts";
import { level, lines, mm, paragraph, SHEET, TEXT, upright, words } from "./paper.ts";
import { HEAD } from "./sheet.ts";

/** How much of the strip is drawn. */
const LONG = 60;

/** The end of a facing strip. None for a turned hem, or where the page cannot hold the facing's depth. */
export function facingEnd(plan: Plan): Cut[] {
  const depth = plan.values.get("facing.depth");
  const { hem, seam } = plan.recipe.skirt;
  if (hem.kind !== "faced" || !depth) return [];
  const tall = mm(depth.quantity);
  const showing = { show: plan.recipe.show, tape: plan.recipe.tape };
  const turning = printOnTape(seam, showing);
  const lead = paragraph(
    `Hem facing, end of a strip: cut ${depth.shown} deep. Lay it on the end of every strip; strips are joined on the line across it, ${turning} in.`,
    SHEET.width,
  );
  const height = lead.height + 2 + tall + 4;
  if (height > SHEET.height - HEAD) return [];
  return [
    {
      group: "end of the facing",
      height,
      words: `Hem facing, cut ${depth.shown} deep; turning ${turning} on every side.`,
      draw: (top) => [...lead.draw(0, top), ...drawEnd(plan, top + lead.height + 2)],
    },
  ];
}

function drawEnd(plan: Plan, top: number): Element[] {
  const { seam, hem } = plan.recipe.skirt;
  const edge = mm(seam);
  const foot = top + mm(hem.depth) + 2 * edge;
  const small = { size: TEXT.small };
  return [
    lines(`${level(top, LONG, 0)}V${foot}H${LONG}`, { width: "cut" }),
    lines(through(torn({ x: LONG, y: top }, { x: LONG, y: foot }))),
    lines([level(top + edge, 0, LONG - 2.5), level(foot - edge, 0, LONG - 2.5)].join(""), { dash: "3 1.2" }),
    lines(upright(edge, top, foot), { dash: "3 1.2", width: "cut" }),
    words(edge + 2, (top + foot) / 2, "join", small),
    words(edge + 14, top + edge - 0.9, "upper edge, turned in", small),
    words(edge + 14, foot - edge + 3, "seam at the hem edge", small),
  ];
}
