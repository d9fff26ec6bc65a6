/** Every figure by name, each a pure function of the plan: same plan, same drawing. */
import type { Plan } from "../solve/plan.ts";
import { balance } from "./balance.ts";
import { breadths } from "./breadths.ts";
import { dogLeg } from "./dog-leg.ts";
import { drawnUp } from "./drawn-up.ts";
import { edge } from "./edge.ts";
import { evidence, hasEvidence } from "./evidence.ts";
import { faults } from "./faults.ts";
import { FIGURE_NAMES, type Figure, type FigureName } from "./figure.ts";
import { finished } from "./finished.ts";
import { gauging } from "./gauging.ts";
import { hem } from "./hem.ts";
import { layout } from "./layout.ts";
import { lining } from "./lining.ts";
import { hasLayout, layoutInterlining, layoutLining } from "./lining-layout.ts";
import { map } from "./map.ts";
import { pleatedLeft, pleats } from "./pleats.ts";
import { range } from "./range.ts";
import { STEPS, type StepName } from "./steps/index.ts";
import { type Step, stepFigure } from "./steps/step.ts";
import { waistRing } from "./waist-ring.ts";
import { whipping } from "./whipping.ts";

export const FIGURES: Readonly<Record<FigureName, (plan: Plan) => Figure>> = {
  finished,
  evidence,
  layout,
  "layout-lining": layoutLining,
  "layout-interlining": layoutInterlining,
  breadths,
  map,
  lining,
  hem,
  balance,
  edge,
  gauging,
  pleats,
  "drawn-up": drawnUp,
  "waist-ring": waistRing,
  whipping,
  "dog-leg": dogLeg,
  faults,
  range,
  ...drawnSteps(),
};

/** The step pictures, drawn like any other figure. */
function drawnSteps(): Record<StepName, (plan: Plan) => Figure> {
  const drawn = Object.entries<Step>(STEPS).map(([name, step]) => [
    name,
    (plan: Plan) => stepFigure(step, plan),
  ]);
  return Object.fromEntries(drawn) as Record<StepName, (plan: Plan) => Figure>;
}

/** Draws one figure of a garment. */
export const drawFigure = (name: FigureName, plan: Plan): Figure => FIGURES[name](plan);

const gauged = (plan: Plan): boolean => plan.gauged.length > 0;

/** Figures that not every garment has, and when it has them. */
const APPLIES: Partial<Record<FigureName, (plan: Plan) => boolean>> = {
  evidence: hasEvidence,
  "layout-lining": hasLayout("lining"),
  "layout-interlining": hasLayout("interlining"),
  lining: ({ linings }) => linings.length > 0,
  gauging: gauged,
  pleats: (plan) => pleatedLeft(plan).length > 0,
  "drawn-up": gauged,
  whipping: gauged,
  "dog-leg": ({ recipe }) => recipe.attach.to === "part-band",
  faults: gauged,
  range: gauged,
};

const isStep = (name: FigureName): name is StepName => Object.hasOwn(STEPS, name);

/** The figures that this plan has, in the order of the booklet. */
export const figuresOf = (plan: Plan): readonly FigureName[] =>
  FIGURE_NAMES.filter((name) => (isStep(name) ? STEPS[name].applies?.(plan) : APPLIES[name]?.(plan)) ?? true);
