/** Every figure by name, each a pure function of the plan: same plan, same drawing. */
import type { Plan } from "../solve/plan.ts";
import { balance } from "./balance.ts";
import { drawnUp } from "./drawn-up.ts";
import { evidence, hasEvidence } from "./evidence.ts";
import { FIGURE_NAMES, type Figure, type FigureName } from "./figure.ts";
import { finished } from "./finished.ts";
import { gauging } from "./gauging.ts";
import { layout } from "./layout.ts";
import { whipping } from "./whipping.ts";

export const FIGURES: Readonly<Record<FigureName, (plan: Plan) => Figure>> = {
  finished,
  evidence,
  layout,
  balance,
  gauging,
  "drawn-up": drawnUp,
  whipping,
};

/** Draws one figure of a garment. */
export const drawFigure = (name: FigureName, plan: Plan): Figure => FIGURES[name](plan);

/** Figures of gauging: drawn only where something is gauged. */
const OF_GAUGING: readonly FigureName[] = ["gauging", "drawn-up", "whipping"];

/** The figures that this plan has. */
export const figuresOf = (plan: Plan): readonly FigureName[] =>
  FIGURE_NAMES.filter(
    (name) =>
      (plan.gauged.length > 0 || !OF_GAUGING.includes(name)) && (name !== "evidence" || hasEvidence(plan)),
  );
