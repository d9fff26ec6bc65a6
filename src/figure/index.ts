/** Every figure by name. */
import type { Plan } from "../solve/plan.ts";
import { balance } from "./balance.ts";
import { drawnUp } from "./drawn-up.ts";
import type { Figure, FigureName } from "./figure.ts";
import { gauging } from "./gauging.ts";

export const FIGURES: Partial<Record<FigureName, (plan: Plan) => Figure>> = {
  balance,
  gauging,
  "drawn-up": drawnUp,
};
export const drawFigure = (name: FigureName, plan: Plan): Figure => FIGURES[name]!(plan);
