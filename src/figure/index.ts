/** Every figure by name, each a pure function of the plan: same plan, same drawing. */
import type { Plan } from "../solve/plan.ts";
import { balance } from "./balance.ts";
import { drawnUp } from "./drawn-up.ts";
import type { Figure, FigureName } from "./figure.ts";
import { finished } from "./finished.ts";
import { gauging } from "./gauging.ts";
import { layout } from "./layout.ts";
import { whipping } from "./whipping.ts";

export const FIGURES: Readonly<Record<FigureName, (plan: Plan) => Figure>> = {
  finished,
  layout,
  balance,
  gauging,
  "drawn-up": drawnUp,
  whipping,
};

/** Draws one figure of a garment. */
export const drawFigure = (name: FigureName, plan: Plan): Figure => FIGURES[name](plan);
