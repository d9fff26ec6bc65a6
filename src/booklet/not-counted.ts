/** What the hours leave out, in words: only stitches and marks whose counts are known are timed. */
import type { Plan } from "../solve/plan.ts";

/** The work that no stage counts, as one list: "cutting out, the fittings, … and the hooks". */
export function notCounted(plan: Plan): string {
  const { recipe, sections } = plan;
  const { attach, skirt } = recipe;
  const list = ["cutting out", "pressing", "the fittings", "the placket"];
  if (skirt.braid) list.push("the braid");
  if (plan.recipe.lining?.kind === "hung") list.push("setting the lining in");
  if (attach.to !== "bodice-edge")
    list.push(`making the ${attach.to === "part-band" ? "part band" : "waistband"}`);
  if (attach.piping) list.push("the piping (joining its strips, sewing in the cord, setting it to the edge)");
  if (sections.some(({ set }) => set !== "flat" && set !== "gauged"))
    list.push("the laid pleats (marking, pinning, tacking, sewing)");
  if (sections.some(({ set }) => set === "flat")) list.push("sewing the flat parts");
  if (sections.some(({ set }) => set === "gauged")) list.push("the trial", "drawing up", "tacking");
  return `${list.join(", ")} and the hooks`;
}
