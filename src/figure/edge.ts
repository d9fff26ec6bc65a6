/** Section through the waist: lining, band or bodice, cord, ridge, depth inside, turn-down, stay; and of flat and pleated parts. */
import type { GaugedSection, Plan } from "../solve/plan.ts";
import { dimension, extension } from "./dimension.ts";
import { Drawing } from "./drawing.ts";
import { drawOneLayer, MOST_LAYERS } from "./edge-one-layer.ts";
import { CORD_SIZE, drawEdge, measureBand, type Standing } from "./edge-parts.ts";
import type { Figure } from "./figure.ts";
import { LETTERING } from "./language.ts";
import { chiefSection, pen, penOf, printer, shownOf, turnDownNear } from "./measure.ts";
import { type Column, type ColumnName, nameColumn } from "./name-column.ts";
import { edgeAt, partBandOf, type SewnEdge } from "./sewn-edge.ts";
import { arc, type Point, rectangle } from "./svg.ts";
import { torn } from "./torn.ts";

/** The outer face of the edge on the page, with the body at the left. */
const X = 222;
const UP = 66;
/** The turn-down is drawn in proportion up to this height; a deeper one is broken. */
const DEEPEST = 150;
const p = (x: number, y: number): Point => ({ x, y });
/** Where names stand, outside the skirt. */
const outside = ({ top }: Standing): Column => ({ x: X + 32, bend: X + 22, top: top - 8 });

export function drawEdgeSection(plan: Plan): Drawing {
  const drawing = new Drawing("edge");
  drawing.heading(
    "Section through the finished waist. Inside, next the body, at the left; outside at the right; upwards as worn.",
  );
  drawing.note("Layers are drawn apart and far thicker than they are.");
  const [section] = plan.gauged;
  if (section) {
    const chief = chiefSection(plan);
    drawing.note(`Where it is gauged: the ${chief.name}, cut between two pleats.`, { bold: true });
    drawGauged(drawing, plan, chief);
  }
  const flat = plan.sections.find(({ set }) => set !== "gauged");
  if (flat) {
    drawing.note(plainWords(plan), { bold: true, above: 12 });
    drawPlain(drawing, plan);
  }
  if (partBandOf(plan)) {
    drawing.note("The part band, from centre front to the opening:", { bold: true, above: 12 });
    drawPartBand(drawing, plan);
  }
  return drawing;
}

/** The kinds of part that are not gauged. */
function plainWords(plan: Plan): string {
  const flat = plan.sections.some(({ set }) => set === "flat");
  const pleated = plan.sections.some(({ set }) => set !== "flat" && set !== "gauged");
  return `Where it is ${flat && pleated ? "flat or pleated" : flat ? "flat" : "pleated"}:`;
}

/** How much is drawn above the seam: a band in proportion, of a bodice a piece. */
function standing(drawing: Drawing, plan: Plan, edge: SewnEdge, scale: number): Standing {
  const top = drawing.bottom + 16;
  const up = edge.above === "bodice" ? UP : Math.max(48, penOf(plan, "attach.band.depth") * scale);
  return { x: X, top, seam: top + up + (edge.piped ? CORD_SIZE : 0) };
}

/** The whip stitch: over from the outer turn or from the casing beside the cord, into the ridge at the fold. Returns its name. */
function whip(drawing: Drawing, edge: SewnEdge, at: Point, ridge: Point): ColumnName {
  const from = edge.piped ? p(at.x - CORD_SIZE / 2 - 1.5, at.y) : p(at.x - 4, at.y - 2);
  const low = Math.max(at.y + CORD_SIZE / 2, ridge.y) + 3;
  drawing.line("thread", [from, p(from.x + 1, low - 1), p(ridge.x - 3, low + 2)]);
  const text = edge.piped
    ? "whip stitch: the casing beside the cord, and the ridge"
    : "whip stitch: the outer turn, and the ridge";
  return { text, at: p(from.x + 1, low - 1), middle: low + 20 };
}

function drawGauged(drawing: Drawing, plan: Plan, section: GaugedSection): void {
  const edge = edgeAt(plan, section);
  const { tape } = printer(plan);
  const depth = penOf(plan, "gauging.depth");
  const turnDown = turnDownNear(plan, section.clothFrom);
  const scale = Math.min(52, 108 / depth, 90 / penOf(plan, "attach.band.depth"));
  const place = standing(drawing, plan, edge, scale);
  const above = drawEdge(drawing, plan, edge, place);
  if (edge.above !== "bodice") measureBand(drawing, plan, place);
  // The wall of one pleat, seen from its side: ridge at the right under the edge, free fold inside.
  const ridge = p(X + 1, place.seam + 5);
  const inside = ridge.x - Math.max(16, depth * scale);
  const fold = ridge.y;
  const deep = Math.min(DEEPEST, Math.max(40, pen(turnDown) * scale));
  const foot = fold + deep + 30;
  drawing.line("fold", [p(inside, fold), p(ridge.x, fold)]);
  for (const x of [inside, ridge.x]) drawing.line("body", [p(x, fold), p(x, foot)]);
  drawing.fill("turn-down", rectangle(inside, fold, ridge.x - inside, deep));
  drawing.line("cut", [p(inside, fold + deep), p(ridge.x, fold + deep)]);
  drawing.line("break", torn(p(inside, foot), p(ridge.x, foot)));
  const names = [
    ...above.names,
    whip(drawing, edge, above.at, ridge),
    drawRows(drawing, plan, section, { inside, ridge: ridge.x, fold, scale }),
    { text: `ridge: the outside of the ${plan.recipe.garment}`, at: p(ridge.x, fold + deep * 0.7) },
  ];
  nameColumn(drawing, names, outside(place));
  const left = inside - 46;
  extension(drawing, p(inside, fold), p(left - 4, fold));
  extension(drawing, p(inside, fold + deep), p(left - 4, fold + deep));
  dimension(drawing, p(left, fold), p(left, fold + deep), `turned down ${tape(turnDown)}`, {
    sides: ["left"],
    width: 62,
  });
  dimension(drawing, p(inside, foot + 10), p(ridge.x, foot + 10), `depth ${shownOf(plan, "gauging.depth")}`, {
    sides: ["below"],
    width: 110,
  });
  drawing.settle();
  const broken = pen(turnDown) * scale > DEEPEST ? " It is drawn shorter than it is." : "";
  drawing.note(
    `The depth stands inside, under the ${edge.above}. The turn-down here is ${tape(turnDown)}; it differs round the waist.${broken}${behindWords(plan)}`,
  );
}

/** What lies behind the cloth in a wall, in words. */
function behindWords({ recipe }: Plan): string {
  const behind = (["lining", "interlining"] as const).filter((which) => {
    const to = recipe[which]?.to;
    return to === "fold" || to === "turned";
  });
  return behind.length > 0 ? ` Within each pleat lies the ${behind.join(" and the ")}, not drawn here.` : "";
}

/** Rows of gauging cross the wall; the stay lies within the turn-down. Returns the threads' name. */
function drawRows(
  drawing: Drawing,
  plan: Plan,
  section: GaugedSection,
  { inside, ridge, fold, scale }: { inside: number; ridge: number; fold: number; scale: number },
): ColumnName {
  // The thread stands half the outer bite from the ridge.
  const outer =
    pen(section.bites[1] ?? section.cloth) /
    (pen(section.bites[0] ?? section.cloth) + pen(section.bites[1] ?? section.cloth));
  const x = ridge - (ridge - inside) * outer;
  const deepest = Math.max(...plan.rows.map(pen)) * scale;
  for (const row of plan.rows) drawing.dot(p(x, fold + pen(row) * scale), 2.2);
  const name = {
    text: plan.rows.length > 1 ? "gauging threads" : "gauging thread",
    at: p(x, fold + pen(plan.rows[0] ?? section.waist) * scale),
    middle: fold + deepest + 30,
  };
  const { stay } = plan.recipe.fullness;
  if (!stay) return name;
  const foot = fold + deepest + 8;
  drawing.line(
    "hidden",
    [p(inside + 2, fold + 4), p(ridge - 3, fold + 4), p(ridge - 3, foot), p(inside + 2, foot)],
    { closed: true, soft: true },
  );
  drawing.label("stay, in the turn-down", p(inside + 5, foot), {
    stand: p(inside - 92, foot + 4),
    sides: ["left"],
    width: 70,
    size: LETTERING.small,
    leader: "always",
  });
  return name;
}

/** A flat part is one layer turned down; pleats are their layers, each turned down, the seam through them all. */
function drawPlain(drawing: Drawing, plan: Plan): void {
  const parts = plan.sections.filter(({ set }) => set !== "gauged");
  const layers = Math.max(
    ...parts.map((part) => (part.set === "flat" || part.set === "gauged" ? 1 : part.layers)),
  );
  const edge = edgeAt(plan, parts[0] as (typeof parts)[number]);
  const scale = Math.min(52, 90 / penOf(plan, "attach.band.depth"));
  const place = standing(drawing, plan, edge, scale);
  const above = drawEdge(drawing, plan, edge, place);
  if (plan.flatParts === "seam") {
    const sewn = drawOneLayer(drawing, plan, edge, place, above, layers);
    nameColumn(drawing, [...above.names, ...sewn], outside(place));
    drawing.settle();
    const most =
      layers > 1
        ? ` ${layers} layers at the thickest${layers > MOST_LAYERS ? `, ${MOST_LAYERS} of them drawn` : ""}.`
        : "";
    drawing.note(
      `One layer, not turned down: trimmed above the balance line, it goes up into the seam of the ${edge.name}.${most}`,
    );
    return;
  }
  const shown = Math.min(layers, 5);
  const fold = place.seam + 6;
  const foot = fold + 62;
  for (let i = 0; i < shown; i += 1) {
    const x = X + 1 - i * 11;
    drawing.line("cloth", [
      p(x, foot),
      p(x, fold + 4),
      ...arc(p(x - 2.5, fold + 4), 2.5, 4, 360, 180),
      p(x - 5, fold + 40),
    ]);
  }
  drawing.line("break", torn(p(X - 11 * shown, foot), p(X + 10, foot)));
  nameColumn(drawing, [...above.names, whip(drawing, edge, above.at, p(X + 1, fold))], outside(place));
  drawing.line("thread", [p(X + 3, fold + 9), p(X + 1 - (shown - 1) * 11 - 8, fold + 9)]);
  drawing.label("turned down, cut edge inside", p(X + 1 - (shown - 1) * 11 - 5, fold + 40), {
    stand: p(X - 11 * shown - 22, fold + 46),
    sides: ["left"],
    width: 80,
    size: LETTERING.small,
    leader: "always",
  });
  drawing.settle();
  const most =
    layers > 1
      ? ` At the thickest ${layers} layers${layers > shown ? `, of which ${shown} are drawn` : ""}: turned down, ${2 * layers} cloths.`
      : "";
  const thick = plan.messages.some(({ code }) => code === "thick-at-seam")
    ? " That is too thick to whip: flat-parts: seam sets them in one layer."
    : "";
  const flat = parts.some(({ set }) => set === "flat") ? "A flat part is one layer, turned down." : "";
  drawing.note(`${flat}${most} The stitch goes through all the cloth at the fold.${thick}`.trim());
}

/** The part band has no cord; the bodice's free front, faced, lies over it. */
function drawPartBand(drawing: Drawing, plan: Plan): void {
  const scale = Math.min(52, 90 / penOf(plan, "attach.band.depth"));
  const edge: SewnEdge = { name: "part band", above: "part band", piped: false };
  const place = standing(drawing, plan, edge, scale);
  const above = drawEdge(drawing, plan, edge, place);
  measureBand(drawing, plan, place);
  const front = X + 20;
  drawing.line("body", [
    p(front, place.top - 8),
    p(front, place.seam),
    p(front - 5, place.seam),
    p(front - 5, place.seam - 18),
  ]);
  const fold = place.seam + 5;
  drawing.line("fold", [p(X - 26, fold), p(X + 1, fold)]);
  for (const x of [X - 26, X + 1]) drawing.line("body", [p(x, fold), p(x, fold + 40)]);
  drawing.line("break", torn(p(X - 26, fold + 40), p(X + 1, fold + 40)));
  const names = [
    ...above.names,
    { text: "the bodice's free front, its edge plain and faced", at: p(front, place.seam - 20) },
    whip(drawing, edge, above.at, p(X + 1, fold)),
  ];
  nameColumn(drawing, names, outside(place));
  drawing.settle();
  drawing.note(
    `Only the part band is sewn to the ${plan.recipe.garment} here; the free front hooks over it.`,
  );
}

export function edge(plan: Plan): Figure {
  const [first] = plan.gauged;
  const sewn = edgeAt(plan, first ? chiefSection(plan) : (plan.sections[0] as Plan["sections"][number]));
  const shown = (name: string): string => shownOf(plan, name);
  const above =
    sewn.above === "bodice"
      ? `lining, bodice, the cord ${shown("attach.piping.cord")} thick in its casing at the very edge, its turnings of ${shown("attach.piping.turning")} inside`
      : `the band ${shown("attach.band.depth")} deep, both edges turned in by ${shown("attach.band.turning")}${sewn.piped ? `, a cord ${shown("attach.piping.cord")} thick along its lower edge` : ""}`;
  const below = first
    ? ` Below, one pleat from its side: the ridge lies against the edge and is whipped to it at the very fold, the depth of ${shown("gauging.depth")} stands inside${plan.recipe.fullness.stay ? ", the stay lies in the turn-down" : ""}; ${shown("turnDown.front")} is turned down at centre front, ${shown("turnDown.back")} at centre back.`
    : plan.flatParts === "seam"
      ? ` Below, the flat or pleated layers, each trimmed to ${shown("plain.above")} above the balance line and sewn in the seam of the edge itself.`
      : ` Below, the flat or pleated layers, turned down ${shown("turnDown.front")} at centre front and ${shown("turnDown.back")} at centre back, whipped to the edge.`;
  const one =
    first && plan.flatParts === "seam"
      ? ` Flat and pleated parts are set in one layer, trimmed to ${shown("plain.above")} above the balance line, in the seam of the edge itself.`
      : "";
  return drawEdgeSection(plan).finish(
    "Section through the waist",
    `From the body outwards: ${above}.${below}${one}`,
  );
}
