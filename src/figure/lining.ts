/** Section through the turned-down top, before it is gauged or pleated: cloth, lining, interlining, and what the needle meets. */
import type { Plan } from "../solve/plan.ts";
import { dimension, extension } from "./dimension.ts";
import { Drawing } from "./drawing.ts";
import type { Figure } from "./figure.ts";
import type { LineKind } from "./language.ts";
import { pen, penOf, shownOf } from "./measure.ts";
import { type ColumnName, nameColumn } from "./name-column.ts";
import { arc, type Point } from "./svg.ts";
import { torn } from "./torn.ts";

/** The outside of the cloth on the page; how far layers stand apart. */
const X = 204;
const APART = 11;
const DEEP = 110;
const v = (x: number, y: number): Point => ({ x, y });

/** A layer: where its outer part stands, in steps from the outside. */
interface Layer {
  readonly kind: LineKind;
  readonly step: number;
  readonly to: "fold" | "turned" | "short" | "separate";
  readonly name: string;
}

/** From the outside: cloth, interlining, lining. */
function layersOf({ recipe }: Plan): readonly Layer[] {
  const { interlining, lining } = recipe;
  const layers: Layer[] = [{ kind: "cloth", step: 0, to: "turned", name: recipe.garment }];
  if (interlining)
    layers.push({ kind: "interlining", step: layers.length, to: interlining.to, name: "interlining" });
  if (lining) layers.push({ kind: "lining", step: layers.length, to: lining.to, name: "lining" });
  return layers;
}

export function drawLining(plan: Plan): Drawing {
  const drawing = new Drawing("lining");
  const gauged = plan.rows.length > 0;
  drawing.heading(
    "Section through the turned-down top. Inside at the left, outside at the right, waist upwards.",
  );
  drawing.note(
    `The layers lie close; they are drawn apart, and far thicker than they are.${gauged ? " Heights are in proportion." : ""}`,
  );
  const fold = drawing.bottom + 22;
  const down = penOf(plan, "turnDown.front");
  const scale = DEEP / Math.max(down, 1);
  const cut = fold + down * scale;
  const foot = cut + 58;
  const layers = layersOf(plan);
  const turned = layers.filter(({ to }) => to === "turned");
  const width = layers.filter(({ to }) => to !== "separate").length + turned.length;
  const right: ColumnName[] = [];
  for (const layer of layers)
    right.push(
      drawLayer(drawing, plan, layer, { fold, cut, foot, scale, width, within: turned.indexOf(layer) }),
    );
  if (gauged) {
    for (const row of plan.rows) {
      const y = fold + pen(row) * scale;
      drawing.line("thread", [v(X + 5, y), v(X - (width - 1) * APART - 5, y)]);
    }
    const [first] = plan.rows;
    if (first)
      right.push({
        text: plan.rows.length > 1 ? "the rows of gauging" : "the row of gauging",
        at: v(X + 5, fold + pen(first) * scale),
      });
  }
  nameColumn(drawing, right, { x: X + 34, bend: X + 24, top: fold - 14 });
  drawing.line("break", torn(v(X - (width + 1.5) * APART, foot), v(X + 10, foot)));
  const left = X - (width + 2) * APART - 26;
  extension(drawing, v(X - (width - 1) * APART, fold), v(left - 4, fold));
  extension(drawing, v(X - (width - 1) * APART, cut), v(left - 4, cut));
  dimension(drawing, v(left, fold), v(left, cut), `${shownOf(plan, "turnDown.front")} at centre front`, {
    sides: ["left"],
    width: 60,
  });
  drawing.settle();
  drawing.note(words(plan));
  return drawing;
}

interface Heights {
  readonly fold: number;
  readonly cut: number;
  readonly foot: number;
  readonly scale: number;
  /** How many layers lie side by side in the turned-down top. */
  readonly width: number;
  /** Of the turned-down layers, how many this one lies within. */
  readonly within: number;
}

/** One layer from below up to where it ends, and down again where it is turned. Returns its name. */
function drawLayer(drawing: Drawing, plan: Plan, layer: Layer, at: Heights): ColumnName {
  const { fold, cut, foot, width } = at;
  const { step, to, kind, name } = layer;
  const x = X - step * APART;
  const far = X - (width - 1 - at.within) * APART;
  const named = (text: string, y: number, px = x): ColumnName => ({ text, at: v(px, y) });
  if (to === "turned") {
    const r = (x - far) / 2;
    const high = fold + at.within * 5;
    drawing.line(kind, [v(x, foot), v(x, high + 8), ...arc(v(x - r, high + 8), r, 8, 360, 180), v(far, cut)]);
    return named(
      step === 0 ? `${name}, turned down inside` : `${name}, turned down with it`,
      cut - 14 - step * 18,
    );
  }
  if (to === "fold") {
    drawing.line(kind, [v(x, foot), v(x, fold + 6 + step * 3)]);
    return named(`${name}, up to the fold`, cut - 14 - step * 18);
  }
  if (to === "short") {
    const rows = plan.rows.length > 0 ? penOf(plan, "gauging.lastRow") * at.scale : 0;
    const head = Math.min(fold + rows + 14, foot - 20);
    drawing.line(kind, [v(x, foot), v(x, head)]);
    return named(
      `${name}: ends ${plan.rows.length > 0 ? "below the rows" : "short of the waist"}`,
      head + 10,
    );
  }
  // A lining joined only at the waist: its own fold, beside the rest.
  const own = X - (width + 0.6) * APART;
  drawing.line(kind, [
    v(own, foot),
    v(own, fold + 8),
    ...arc(v(own - 4, fold + 8), 4, 6, 360, 180),
    v(own - 8, cut - 24),
  ]);
  return named(`${name}, set to the waist by itself`, foot - 12, own);
}

/** How many layers the needle meets, in words. */
function words({ recipe, values }: Plan): string {
  const count = (which: string): number => Number(values.get(`${which}.layers`)?.quantity.value.n ?? 0n);
  const parts = ["two layers of the cloth"];
  for (const which of ["lining", "interlining"] as const) {
    const n = count(which);
    if (n > 0) parts.push(`${n === 1 ? "one" : "two"} of ${which}`);
  }
  if (recipe.fullness.stay && values.has("gauging.pleats")) parts.push("the stay");
  const list = parts.length > 1 ? `${parts.slice(0, -1).join(", ")} and ${parts.at(-1)}` : parts[0];
  const wall = values.get("gauging.wall")?.shown;
  return `In one wall of a pleat the needle meets ${list}${wall ? `, ${wall} in all` : ""}.`;
}

export function lining(plan: Plan): Figure {
  const names = layersOf(plan).map(({ name, to }, i) =>
    i === 0
      ? `the ${name}, turned down inside`
      : `the ${name}, ${{ fold: "which ends at the fold", turned: "turned down with it", short: "which ends short of the pleats", separate: "set to the waist by itself" }[to]}`,
  );
  return drawLining(plan).finish(
    "Section through the top, and what lies behind the cloth",
    `From outside to inside: ${names.join("; ")}. ${words(plan)}`,
  );
}
