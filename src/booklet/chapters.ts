/** The standard booklet: its chapters in the order of the work. */

/** Chapter names, which are also template names and the page's anchors. */
export const CHAPTERS = [
  "at-a-glance",
  "cautions",
  "measures",
  "cloth",
  "cutting",
  "seams",
  "hem",
  "balance",
  "band",
  "trial",
  "marking",
  "gauging",
  "setting",
  "whipping",
  "closing",
  "last-look",
  "faults",
  "keeping",
  "as-made",
  "workings",
] as const;

export type Chapter = (typeof CHAPTERS)[number];
