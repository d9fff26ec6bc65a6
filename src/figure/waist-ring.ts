/** The waist seam as a ring, seen from above: quarters, how each part is set, pleats, seams, opening, lap, hooks. */
import { toFloat } from "../quantity/quantity.ts";
import type { Plan, Section } from "../solve/plan.ts";
import { PLEAT_NAMES } from "../solve/pleat.ts";
import { Drawing } from "./drawing.ts";
import type { Figure } from "./figure.ts";
import { furtherEyes } from "./hook-words.ts";
import { LETTERING, PICTURE } from "./language.ts";
import { pen, penOf, printer, shownOf } from "./measure.ts";
import { along, at, DEEP, drawSeams, drawSection, openingOf, type Ring } from "./ring-parts.ts";
import { letterOf } from "./row.ts";
import { edgeAt, partBandOf } from "./sewn-edge.ts";

const RADIUS = 88;
/** Above and below the ring, for the words round it. */
const AROUND = 62;
/** The lap and a part band run outside the waist seam. */
const OUTER = 9;

/** Parts are named beside them; where the names would not all find room, letters stand for them and a list has the names. */
export function drawWaistRing(plan: Plan): Drawing {
  const drawing = drawRing(plan, false);
  return drawing.labels.lost > 0 ? drawRing(plan, true) : drawing;
}

function drawRing(plan: Plan, listed: boolean): Drawing {
  const drawing = new Drawing("waist-ring");
  drawing.heading("Seen from above. Centre front at the foot: the wearer's left is on your right.");
  drawing.note(
    `The waist seam, ${shownOf(plan, "waist.seam")} closed, a quarter ${shownOf(plan, "waist.quarter")}. The outside of the ${plan.recipe.garment} lies outwards; lengths go along the seam.`,
  );
  const ring: Ring = {
    middle: { x: PICTURE.width / 2, y: drawing.bottom + AROUND + RADIUS },
    radius: RADIUS,
    seam: penOf(plan, "waist.seam"),
  };
  const opening = openingOf(plan);
  drawing.line("finished", along(ring, 0, ring.seam));
  for (const section of plan.sections) {
    drawSection(drawing, ring, section);
    const end = pen(section.from) + pen(section.waist);
    drawing.line("body", [at(ring, end, 3), at(ring, end, -DEEP - 2)], { soft: true });
  }
  drawing.avoid(along(ring, 0, ring.seam, -DEEP));
  drawSeams(drawing, plan, ring);
  drawQuarters(drawing, ring);
  drawOpening(drawing, plan, ring, opening);
  drawLap(drawing, plan, ring, opening);
  for (const [i, section] of plan.sections.entries())
    nameSection(drawing, ring, section, listed ? letterOf(i) : sectionWords(plan, section), listed);
  drawing.reach(ring.middle.y + RADIUS + 26);
  drawing.settle();
  if (listed)
    for (const [i, section] of plan.sections.entries())
      drawing.note(`${letterOf(i)}: ${section.name}, ${sectionWords(plan, section)}`, { above: 3 });
  drawing.note(setWords(plan));
  drawing.note(closingWords(plan));
  return drawing;
}

/** Stations, which part the seam into quarters, named inside the ring. */
function drawQuarters(drawing: Drawing, ring: Ring): void {
  const { middle, seam } = ring;
  const inner = -DEEP - 2;
  for (const [place, words, side] of [
    [0, "centre front", "above"],
    [seam / 4, "left side", "left"],
    [seam / 2, "centre back", "below"],
    [(3 * seam) / 4, "right side", "right"],
  ] as const) {
    const end = at(ring, place, inner);
    drawing.line(
      "station",
      [at(ring, place, 6), { x: (end.x * 3 + middle.x) / 4, y: (end.y * 3 + middle.y) / 4 }],
      {
        soft: true,
      },
    );
    drawing.label(
      words,
      { x: (end.x * 3 + middle.x) / 4, y: (end.y * 3 + middle.y) / 4 },
      {
        sides: [side],
        gap: 2,
        width: 44,
        leader: "never",
        size: LETTERING.small,
      },
    );
  }
}

/** Which way a label stands from a place of the ring. */
function sidesAt(ring: Ring, place: number): readonly ("above" | "below" | "left" | "right")[] {
  const { x, y } = at(ring, place);
  const [dx, dy] = [x - ring.middle.x, y - ring.middle.y];
  if (Math.abs(dx) > 0.42 * ring.radius) return [dx > 0 ? "right" : "left"];
  return [dy > 0 ? "below" : "above"];
}

/** The words for a section beside it: how it is set, its length on the waist seam, its pleats; or its letter. */
function nameSection(drawing: Drawing, ring: Ring, section: Section, words: string, bold: boolean): void {
  const place = pen(section.from) + pen(section.waist) / 2;
  const outer = OUTER + 6;
  drawing.label(words, at(ring, place), {
    stand: at(ring, place, outer),
    sides: sidesAt(ring, place),
    gap: 2,
    width: 74,
    size: LETTERING.small,
    leader: "moved",
    bold,
  });
}

function sectionWords(plan: Plan, section: Section): string {
  const { part } = printer(plan);
  const waist = part(section.waist);
  if (section.set === "flat") return `flat ${waist}`;
  if (section.set === "gauged") return `gauged ${waist}: ${section.pleats} pleats`;
  const count = section.count.value;
  const whole = count.floor().n;
  const number = count.d === 1n ? `${whole}` : whole === 0n ? "1/2" : `${whole} 1/2`;
  return `${PLEAT_NAMES[section.set]} ${waist}: ${number} towards the ${section.towards}`.replace(
    section.set === "knife" ? "" : / towards the (front|back)/,
    "",
  );
}

/** The opening: a gap in the seam with its two edges. */
function drawOpening(drawing: Drawing, plan: Plan, ring: Ring, opening: number): void {
  const { x, y } = at(ring, opening);
  drawing.line("finished", [at(ring, opening, 13), at(ring, opening, -DEEP - 10)], { soft: true });
  drawing.dot({ x, y }, 3.4);
  const hooks = plan.recipe.attach.to === "bodice-edge" ? "" : `, ${shownOf(plan, "hooks.band")} hooks`;
  drawing.label(
    `opening${hooks}`,
    { x, y },
    {
      stand: at(ring, opening, 34),
      sides: sidesAt(ring, opening),
      gap: 2,
      size: LETTERING.small,
      bold: true,
      width: 64,
      leader: "always",
    },
  );
}

/** The lap, plain, outside the seam it passes over or under; and a part band from centre front to the opening. */
function drawLap(drawing: Drawing, plan: Plan, ring: Ring, opening: number): void {
  const { to } = plan.recipe.attach;
  if (to === "bodice-edge") return;
  const lap = penOf(plan, "attach.band.lap");
  const band = partBandOf(plan);
  const left = toFloat(plan.opening.share.value) <= 0.5;
  // A part band comes from centre front and runs on; a waistband's under end is drawn on the wearer's left.
  const way = band ? (left ? 1 : -1) : 1;
  const end = opening + way * lap;
  drawing.line("finished", along(ring, opening, end, OUTER));
  drawing.line("finished", [at(ring, end, OUTER - 3), at(ring, end, OUTER + 3)]);
  drawing.label(
    `lap ${shownOf(plan, "attach.band.lap")}, plain`,
    at(ring, opening + (way * lap) / 2, OUTER),
    {
      stand: at(ring, end + way * ring.seam * 0.03, 26),
      sides: sidesAt(ring, end + way * ring.seam * 0.03),
      gap: 1,
      width: 70,
      size: LETTERING.small,
      leader: "always",
    },
  );
  for (const { away, on } of plan.hookSets) {
    const place = opening + way * (on === "lap" ? 1 : -1) * pen(away);
    if (on === "garment") drawing.line("body", along(ring, opening, place, OUTER), { soft: true });
    drawing.line("finished", [at(ring, place, OUTER - 4), at(ring, place, OUTER + 4)], { soft: true });
  }
  if (!band) return;
  const front = left ? 0 : ring.seam;
  drawing.line("band", along(ring, front, opening, OUTER));
}

/** How the parts hang on the edge, and where pleats go. */
function setWords(plan: Plan): string {
  const band = partBandOf(plan);
  const others = plan.seams.filter(({ kind }) => kind === "seam").length;
  const words = `A double stroke stands at each of the ${plan.recipe.garment}'s ${others} seams${plan.opening.kind === "seam" ? " beside the one that opens" : ""}.`;
  if (!band) return words;
  return `${words} The part band carries the ${plan.recipe.garment} from centre front to the opening, ${shownOf(plan, "opening.fromFront")} on the wearer's ${band.half}; the bodice edge carries the rest.`;
}

/** Opening, lap, hooks. */
function closingWords(plan: Plan): string {
  const { to } = plan.recipe.attach;
  const placket = `${shownOf(plan, "hooks.placket")} on the placket`;
  if (to === "bodice-edge")
    return `Opening: ${plan.opening.station}. What the bodice has lying under there carries no fullness. Hooks: ${placket}; the bodice has its own.`;
  const hooks = `Hooks: ${shownOf(plan, "hooks.band")} at the end of the ${to === "part-band" ? "part band" : "band"}, ${placket}`;
  if (to === "part-band")
    return `Opening: ${plan.opening.station}. The lap passes on under the bodice and is never gauged. ${hooks}, ${shownOf(plan, "hooks.edge")} on the bodice edge.`;
  const further = furtherEyes(plan);
  const eyes = further ? ` Where a stroke crosses the lap's line, ${further}.` : "";
  return `Opening: ${plan.opening.station}. The lap passes under at either side, as you choose, and is never gauged. ${hooks}.${eyes}`;
}

export function waistRing(plan: Plan): Figure {
  const parts = plan.sections.map(
    (section) =>
      `${section.name}, ${sectionWords(plan, section)}${plan.recipe.attach.to === "part-band" && edgeAt(plan, section).name === "part band" ? ", on the part band" : ""}`,
  );
  return drawWaistRing(plan).finish(
    "The waist seam, seen from above",
    `The closed waist seam, ${shownOf(plan, "waist.seam")}, as a ring with centre front at the foot and the wearer's left on the right; a quarter is ${shownOf(plan, "waist.quarter")}. From centre front round by the wearer's left: ${parts.join("; ")}. ${setWords(plan)} ${closingWords(plan)}`,
  );
}
