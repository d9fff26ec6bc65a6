/** Two paper strips to rehearse the dog-leg closing with: the bodice's edge and the part band, at a part of true size. */
import { rectangle, written } from "../figure/svg.ts";
import { printPart } from "../quantity/print.ts";
import { add, type Quantity } from "../quantity/quantity.ts";
import type { Plan } from "../solve/plan.ts";
import type { Cut } from "./guide.ts";
import { dots, lines, mm, paragraph, SHEET, TEXT, upright, words } from "./paper.ts";

const GROUP = "paper ring for the dog-leg closing";
const HIGH = 14;
/** Paper beyond the end of the bodice's edge, to paste the part band to. */
const TAB = 8;

/** The least whole number of times that the waist is drawn smaller, so that it fits the page; four at least. */
function timesSmaller(waist: Quantity): number {
  let times = 4;
  while (mm(waist) / times + TAB > SHEET.width) times += 1;
  return times;
}

/** The strips, only where the skirt hangs on a part band. */
export function dogLegRing(plan: Plan): Cut[] {
  if (plan.recipe.attach.to !== "part-band") return [];
  const value = (name: string): Quantity => (plan.values.get(name) as { quantity: Quantity }).quantity;
  const showing = { show: plan.recipe.show, tape: plan.recipe.tape };
  const waist = value("waist.seam");
  const open = value("opening.fromFront");
  const lap = value("attach.band.lap");
  const times = timesSmaller(waist);
  const side = plan.opening.share.value.compare("1/2") > 0 ? "right" : "left";
  const other = side === "left" ? "right" : "left";
  const text = `To rehearse the closing on paper: both strips at 1/${times} of true size, ${printPart(waist, showing)} and ${printPart(add(open, lap), showing)} long on the garment. Cut both out. The long one is the bodice's edge, its free front (nothing hangs on it) from the left-hand end to the opening. Snip the opening half through from below. Bend it to a ring, printed side outwards; paste the part band's end "centre front" behind the tab. Now close it: the band across beneath the free front, its end through the snip from the inside and under; then the free front over it, to centre front.`;
  const lead = paragraph(text, SHEET.width);
  return [
    { group: GROUP, height: lead.height + 1, leads: true, words: text, draw: (top) => lead.draw(0, top) },
    {
      group: GROUP,
      height: HIGH + 4,
      leads: true,
      words: `The bodice's edge: free from centre front to the opening at ${printPart(open, showing)}, then round by the back.`,
      draw: (top) =>
        strip(
          top,
          mm(waist) / times,
          mm(open) / times,
          [
            "free front",
            `${plan.recipe.garment} hangs here, round by the back to the ${other} front`,
            "opening",
          ],
          TAB,
        ),
    },
    {
      group: GROUP,
      height: HIGH + 4,
      words: `The part band: ${printPart(open, showing)} to the closing mark, and the lap of ${printPart(lap, showing)}.`,
      draw: (top) =>
        strip(top, mm(add(open, lap)) / times, mm(open) / times, ["part band", "lap", "closing mark"], 0),
    },
  ];
}

/** One strip: its outline, the mark across it with its name below, what each side of the mark is. */
function strip(top: number, long: number, mark: number, [before, after, at]: readonly string[], tab: number) {
  const foot = top + HIGH;
  return [
    lines(rectangle(0, top, long + tab, HIGH), { width: "cut" }),
    lines(upright(mark, top, foot), { dash: "3 1.2", width: "cut" }),
    ...(tab > 0
      ? [
          lines(upright(long, top, foot), { dash: "1 1" }),
          words(long + 0.6, top + 5, "tab", { size: TEXT.small }),
        ]
      : []),
    dots(`M${written(2)} ${written(foot - 2)}h0`, 1.2),
    words(3.4, foot - 1.4, "centre front", { size: TEXT.small }),
    words(1, top + 4, before ?? "", { size: TEXT.small, bold: true }),
    words(mark + 1, top + 4, after ?? "", { size: TEXT.small }),
    words(mark + 0.8, foot + 2.6, at ?? "", { size: TEXT.small }),
  ];
}
