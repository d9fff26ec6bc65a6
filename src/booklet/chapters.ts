/** The standard booklet: its chapters in the order of the work, and which of them a garment needs. */
import type { Plan } from "../solve/plan.ts";

/** Chapter names, which are also template names and the page's anchors. */
export const CHAPTERS = [
  "at-a-glance",
  "cautions",
  "evidence",
  "measures",
  "cloth",
  "cutting",
  "map",
  "mounting",
  "seams",
  "lining",
  "hem",
  "tucks",
  "flounces",
  "balance",
  "second-fitting",
  "piping",
  "band",
  "bodice-edge",
  "part-band",
  "trial",
  "marking",
  "gauging",
  "pleats",
  "setting",
  "setting-pleats",
  "third-fitting",
  "whipping",
  "sewing-pleats",
  "closing",
  "dog-leg",
  "last-look",
  "faults",
  "another-waist",
  "keeping",
  "as-made",
  "workings",
  "words",
  "guides",
] as const;

export type Chapter = (typeof CHAPTERS)[number];

const isGauged = ({ gauged }: Plan): boolean => gauged.length > 0;

/** Chapters that not every garment has, and when it has them. */
const APPLIES: Partial<Record<Chapter, (plan: Plan) => boolean>> = {
  trial: isGauged,
  marking: isGauged,
  gauging: isGauged,
  pleats: ({ sections }) => sections.some(({ set }) => set !== "gauged"),
  setting: isGauged,
  whipping: isGauged,
  "another-waist": isGauged,
  "setting-pleats": (plan) => !isGauged(plan),
  "sewing-pleats": (plan) => !isGauged(plan),
  mounting: ({ recipe }) => recipe.lining?.kind === "flat" || recipe.interlining !== undefined,
  lining: ({ recipe }) => recipe.lining?.kind === "hung",
  tucks: ({ tucks }) => tucks.length > 0,
  flounces: ({ flounces }) => flounces.length > 0,
  piping: ({ recipe }) => recipe.attach.piping !== undefined,
  band: ({ recipe }) => recipe.attach.to === "waistband",
  "bodice-edge": ({ recipe }) => recipe.attach.to !== "waistband",
  "part-band": ({ recipe }) => recipe.attach.to === "part-band",
  "dog-leg": ({ recipe }) => recipe.attach.to === "part-band",
};

/** The chapters of this plan's booklet, in order. */
export const chaptersOf = (plan: Plan): readonly Chapter[] =>
  CHAPTERS.filter((chapter) => APPLIES[chapter]?.(plan) ?? true);
