/** What chapters print of lining and interlining: flags, words, pieces, notions. */
import type { LiningLayout, Plan } from "../solve/plan.ts";
import { SHORT_MARK } from "./estimates.ts";

/** Flags of lining and interlining, for flags.ts. */
export function liningFlags({ recipe, values }: Plan) {
  const { lining, interlining } = recipe;
  const several = (name: string): boolean => (values.get(name)?.quantity.value.compare(1) ?? 0) > 0;
  const inPleats = (to: string | undefined): boolean => to === "fold" || to === "turned";
  return {
    lined: lining !== undefined,
    interlined: interlining !== undefined,
    backed: lining !== undefined || interlining !== undefined,
    hung: lining?.kind === "hung",
    flatLining: lining?.kind === "flat",
    mounted: lining?.kind === "flat" || interlining !== undefined,
    liningInHem: lining !== undefined && lining.to !== "separate",
    hemBacked: interlining !== undefined || (lining !== undefined && lining.to !== "separate"),
    liningSeparate: lining?.to === "separate",
    liningFold: lining?.to === "fold",
    liningTurned: lining?.to === "turned",
    liningInPleats: inPleats(lining?.to),
    liningJoined: several("lining.perBreadth"),
    liningNarrower: lining?.kind === "hung" && narrower(values),
    interliningShort: interlining?.to === "short",
    interliningFold: interlining?.to === "fold",
    interliningTurned: interlining?.to === "turned",
    interliningInPleats: inPleats(interlining?.to),
    interliningJoined: several("interlining.perBreadth"),
    weightInAll: values.has("skirt.weightInAll"),
    costLining: values.has("cost.lining"),
    costInterlining: values.has("cost.interlining"),
  };
}

/** Is the last breadth of a hung lining narrower than the rest? */
function narrower(values: Plan["values"]): boolean {
  const [last, whole] = ["lining.last", "lining.finished"].map((name) => values.get(name)?.quantity);
  return last !== undefined && whole !== undefined && last.value.compare(whole.value) < 0;
}

/** The pieces of either, alike ones together, in the order of cutting. */
export const piecesOfLining = (
  linings: readonly LiningLayout[],
  which: LiningLayout["which"],
  group: (pieces: LiningLayout["layout"]["pieces"]) => readonly object[],
): readonly object[] => {
  const found = linings.find((lining) => lining.which === which);
  return found ? group(found.layout.pieces) : [];
};

/** Puts both on the list of notions. */
export function addLinings(
  { recipe }: Plan,
  estimated: boolean,
  value: (name: string) => string,
  add: (thing: string, amount: string, where: string) => void,
): void {
  const est = estimated ? SHORT_MARK : "";
  for (const which of ["lining", "interlining"] as const) {
    const backing = recipe[which];
    if (!backing) continue;
    const mounted = which === "interlining" || recipe.lining?.kind === "flat";
    add(
      backing.name === `the ${which}` ? which : backing.name,
      `${value(`${which}.buy`)}, ${value(`${which}.width`)} wide${est}`,
      mounted ? `${which === "lining" ? "flat lining" : which} of every breadth` : "lining",
    );
  }
}
