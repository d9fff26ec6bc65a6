/** Every figure by name. */
import type { Plan } from "../solve/plan.ts";
import type { Figure, FigureName } from "./figure.ts";
import { drawnUp } from "./drawn-up.ts";
import { gauging } from "./gauging.ts";

export const FIGURES: Partial<Record<FigureName, (plan: Plan) => Figure>> = { gauging, "drawn-up": drawnUp };
export const drawFigure = (name: FigureName, plan: Plan): Figure => FIGURES[name]!(plan);
