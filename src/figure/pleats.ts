/** Pleat lay: the flat strip with its folds, and the pleats as they lie, on both halves; what covers the opening. */
import type { Plan, PleatedSection } from "../solve/plan.ts";
import { PLEAT_NAMES } from "../solve/pleat.ts";
import { Drawing } from "./drawing.ts";
import type { Figure } from "./figure.ts";
import { LETTERING, PICTURE } from "./language.ts";
import { printer } from "./measure.ts";
import { drawRow, overhang, type Row } from "./pleat-end-on.ts";
import { fromFront, halfAt, type LaidPleat, laidPleats } from "./pleat-fold.ts";
import { drawOpeningPleat, openingPleat } from "./pleat-opening.ts";
import { drawnPleats, drawStrip, stripsOf } from "./pleat-strip.ts";

const MIDDLE = PICTURE.width / 2;
/** Room for one half, and the widest that one face is drawn. */
const HALF = 158;
const FACE = 56;
/** Between the halves where the pleats do not begin at the centre line. */
const APART = 26;

/** The pleated sections of the wearer's left half, from centre front. */
export const pleatedLeft = (plan: Plan): readonly PleatedSection[] =>
  plan.sections.filter(
    (section): section is PleatedSection =>
      section.half === "left" && section.set !== "flat" && section.set !== "gauged",
  );

export function drawPleats(plan: Plan): Drawing {
  const drawing = new Drawing("pleats");
  const { tape } = printer(plan);
  for (const section of pleatedLeft(plan)) {
    const { faces } = section;
    const shown = drawnPleats(plan, section).length;
    const all =
      faces.length === 1
        ? "one"
        : shown === faces.length
          ? `all ${faces.length}`
          : `the first ${shown} of ${faces.length}`;
    const counted = halfAt(plan, section) ? `, the half one counted` : "";
    const starts =
      fromFront(plan, section).waist < 1e-9
        ? "centre front"
        : `${tape(section.clothFrom)} of cloth from centre front`;
    drawing.heading("Flat, right side of the cloth. Fold upwards.");
    drawing.note(
      `${capital(section.name)}: ${all}${counted}, from ${starts} at the left, in true proportion. On the wearer's right half the same, read from right to left.`,
    );
    for (const strip of stripsOf(plan, section)) drawStrip(drawing, plan, section, strip);
    drawing.note(wayWords(plan, section));
    drawing.heading("As they lie, seen from above. Outside at the foot.");
    drawHalves(drawing, plan, section, "front");
    drawing.note(
      `${section.layers} layers at the thickest, ${2 * section.layers} cloths where they are turned down. Drawn far thicker than it is.${fromFront(plan, section).waist < 1e-9 ? "" : ` Between centre front and the first pleat ${tape(section.from)} of waist, not drawn.`}`,
    );
    if (halfAt(plan, section) === "back") {
      drawing.heading("At centre back, seen from above. Outside at the foot.");
      drawHalves(drawing, plan, section, "back");
    }
  }
  drawOpeningPleat(drawing, plan, (section, end) => drawHalves(drawing, plan, section, end));
  return drawing;
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** Which way the pleats turn, and what that makes at the centre lines. */
function wayWords(plan: Plan, section: PleatedSection): string {
  const half = halfAt(plan, section);
  const centre = half
    ? ` The half pleat's middle lies on centre ${half}; with the other half's, drawn beside it, it makes one whole ${section.set === "knife" ? "fold astride the line" : "pleat"}.`
    : "";
  if (section.set !== "knife") return `Both edges A of a pleat turn away from its middle.${centre}`;
  const made = section.towards === "back" ? ["box", "inverted pleat"] : ["inverted pleat", "box"];
  const atFront =
    fromFront(plan, section).waist < 1e-9 && !half
      ? ` At centre front the two halves make ${article(made[0])}.`
      : "";
  return `Every edge A turns towards the ${section.towards}, on both halves.${atFront}${centre}`;
}

const article = (noun = ""): string => `${noun.startsWith("i") ? "an" : "a"} ${noun}`;

/** The pleats next to a centre line, both halves, the line in the middle of the page. */
function drawHalves(drawing: Drawing, plan: Plan, section: PleatedSection, end: "front" | "back"): void {
  const all = laidPleats(plan, section);
  const { pleats, scale, gap, crosses } = chosen(plan, section, all, end);
  const first = all.indexOf(pleats[0] as LaidPleat) + 1;
  const layers = Math.min(56, Math.max(20, 7 * section.layers));
  const face = drawing.bottom + 34 + layers;
  // Seen from the outside, centre front has the wearer's left at the right of the page; centre back, at the left.
  const width = (pleats.at(-1)?.marks.at(-1)?.waist ?? 0) - (pleats[0]?.marks[0]?.waist ?? 0);
  for (const side of [1, -1] as const) {
    const row: Row = {
      pleats,
      scale,
      start: end === "front" ? MIDDLE + side * gap : MIDDLE + side * (gap + width * scale),
      way: end === "front" ? side : side === 1 ? -1 : 1,
      face,
      behind: layers,
      first,
      box: section.set !== "knife",
    };
    drawRow(drawing, row);
    const half = (side === 1) === (end === "front") ? "left" : "right";
    drawing.label(
      `wearer's ${half}`,
      { x: MIDDLE + side * 110, y: face + 20 },
      { sides: ["below"], leader: "never", size: LETTERING.small, gap: 0 },
    );
  }
  // Where hidden folds reach across the centre line the halves are drawn apart, each with the line at its own end.
  for (const x of crosses ? [MIDDLE - gap, MIDDLE + gap] : [MIDDLE])
    drawing.line(
      "station",
      [
        { x, y: face - layers - 10 },
        { x, y: face + 20 },
      ],
      { soft: true },
    );
  drawing.label(
    `centre ${end}`,
    { x: MIDDLE, y: face - layers - 10 },
    { sides: ["above"], gap: 1, leader: "never", size: LETTERING.small },
  );
  drawing.settle();
  if (crosses)
    drawing.note(
      `The halves are drawn apart: at centre ${end} their first hidden folds lie across one another.`,
    );
}

/** As many pleats at one end of the section as a half of the page holds, and their scale. */
function chosen(plan: Plan, section: PleatedSection, all: readonly LaidPleat[], end: "front" | "back") {
  const at = fromFront(plan, section).waist;
  const away = end === "front" ? at : undefined;
  const cut = (n: number): readonly LaidPleat[] => (end === "front" ? all.slice(0, n) : all.slice(-n));
  for (let n = Math.min(5, all.length); n > 0; n -= 1) {
    const pleats = cut(n);
    const { before, after } = overhang(pleats);
    const inner = end === "front" ? before : after;
    const outer = end === "front" ? after : before;
    const waist = pleats.reduce((sum, { face }) => sum + face, 0);
    const widest = Math.max(...pleats.map(({ face }) => face));
    const lies = away === undefined ? 0 : away < 1e-9 ? 0 : APART;
    const scale = Math.min((HALF - lies) / (inner + waist + outer), FACE / widest);
    if (n > 1 && widest * scale < 24) continue;
    return { pleats, scale, gap: lies + inner * scale, crosses: lies === 0 && inner > 1e-9 };
  }
  throw new Error("the section has no pleats");
}

/** Folds, faces, depths and direction of every pleated part. */
export function pleats(plan: Plan): Figure {
  const { tape } = printer(plan);
  const parts = pleatedLeft(plan).map((section) => {
    const whole = Math.floor(section.count.value.valueOf());
    const half = halfAt(plan, section);
    const way = section.set === "knife" ? `, turned towards the ${section.towards}` : "";
    return `${whole}${half ? " and a half" : ""} ${PLEAT_NAMES[section.set]} on each half, face ${tape(section.face)}, depth ${tape(section.depth)}${way}${half ? `, the half astride centre ${half}` : ""}, ${section.layers} layers at the thickest`;
  });
  const opening = openingPleat(plan);
  return drawPleats(plan).finish(
    "Pleats: folds on the flat cloth, and as they lie",
    `The flat strip of the wearer's left half with the lines where it is folded over and under, and below it the folded pleats seen from above on both halves: ${parts.join("; ")}.${opening ? ` ${opening}` : ""}`,
  );
}
