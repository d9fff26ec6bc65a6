/** A step picture: small, without a key, of the hands' work at one moment. Same plan, same drawing. */
import type { Plan } from "../../solve/plan.ts";
import type { Drawing } from "../drawing.ts";
import type { Figure } from "../figure.ts";

export interface Step {
  readonly title: string;
  draw(plan: Plan): Drawing;
  /** What the picture shows, in words and in this garment's numbers. */
  describe(plan: Plan): string;
  /** The garments that have this step; every one if not given. */
  applies?(plan: Plan): boolean;
}

/** The finished figure of a step. Every line in it is labelled where it stands, so it has no key. */
export const stepFigure = (step: Step, plan: Plan): Figure =>
  step.draw(plan).finish(step.title, step.describe(plan), { key: false });

export const isGauged = ({ gauged }: Plan): boolean => gauged.length > 0;
