/** Every figure by name, each a pure function of the plan: same plan, same drawing. */
import type { Plan } from "../solve/plan.ts";
import { balance } from "./balance.ts";
import { drawnUp } from "./drawn-up.ts";
import { edge } from "./edge.ts";
import { evidence, hasEvidence } from "./evidence.ts";
import { FIGURE_NAMES, type Figure, type FigureName } from "./figure.ts";
import { finished } from "./finished.ts";
import { gauging } from "./gauging.ts";
import { hem } from "./hem.ts";
import { layout } from "./layout.ts";
import { pleatedLeft, pleats } from "./pleats.ts";
import { waistRing } from "./waist-ring.ts";
import { whipping } from "./whipping.ts";

export const FIGURES: Readonly<Record<FigureName, (plan: Plan) => Figure>> = {
  finished,
  evidence,
  layout,
  hem,
  balance,
  edge,
  gauging,
  pleats,
  "drawn-up": drawnUp,
  "waist-ring": waistRing,
  whipping,
};

/** Draws one figure of a garment. */
export const drawFigure = (name: FigureName, plan: Plan): Figure => FIGURES[name](plan);

const gauged = (plan: Plan): boolean => plan.gauged.length > 0;

/** Figures that not every garment has, and when it has them. */
const APPLIES: Partial<Record<FigureName, (plan: Plan) => boolean>> = {
  evidence: hasEvidence,
  gauging: gauged,
  pleats: (plan) => pleatedLeft(plan).length > 0,
  "drawn-up": gauged,
  whipping: gauged,
};

/** The figures that this plan has, in the order of the booklet. */
export const figuresOf = (plan: Plan): readonly FigureName[] =>
  FIGURE_NAMES.filter((name) => APPLIES[name]?.(plan) ?? true);
