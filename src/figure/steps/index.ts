/** The step pictures by name, in the order of the booklet. */
import type { FigureName } from "../figure.ts";
import { stepCord } from "./cord.ts";
import { stepDraw } from "./draw.ts";
import { stepEven } from "./even.ts";
import { stepHooks } from "./hooks.ts";
import { stepNeedle } from "./needle.ts";
import { stepPins } from "./pins.ts";
import { stepPlacket } from "./placket.ts";
import { stepPocket } from "./pocket.ts";
import { stepPoint } from "./point.ts";
import { stepRows } from "./rows.ts";
import type { Step } from "./step.ts";
import { stepTurn } from "./turn.ts";
import { stepWhip } from "./whip.ts";

export type StepName = Extract<FigureName, `step-${string}`>;

export const STEPS: Readonly<Record<StepName, Step>> = {
  "step-pocket": stepPocket,
  "step-placket": stepPlacket,
  "step-point": stepPoint,
  "step-turn": stepTurn,
  "step-needle": stepNeedle,
  "step-rows": stepRows,
  "step-pins": stepPins,
  "step-draw": stepDraw,
  "step-even": stepEven,
  "step-whip": stepWhip,
  "step-cord": stepCord,
  "step-hooks": stepHooks,
};
