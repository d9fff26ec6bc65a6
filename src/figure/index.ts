/** Every figure by name. */
import type { Plan } from "../solve/plan.ts";
import { balance } from "./balance.ts";
import { drawnUp } from "./drawn-up.ts";
import type { Figure, FigureName } from "./figure.ts";
import { finished } from "./finished.ts";
import { gauging } from "./gauging.ts";
import { layout } from "./layout.ts";
import { whipping } from "./whipping.ts";

export const FIGURES: Partial<Record<FigureName, (plan: Plan) => Figure>> = {
  finished,
  whipping,
  balance,
  layout,
  gauging,
  "drawn-up": drawnUp,
};
export const drawFigure = (name: FigureName, plan: Plan): Figure => FIGURES[name]!(plan);
