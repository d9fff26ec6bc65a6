/** What chapters print of tucks, flounces and pocket: flags, lists, words, notions. */
import { less, plain, type Quantity } from "../quantity/quantity.ts";
import type { Plan } from "../solve/plan.ts";

/** Flags of the trimmings, for flags.ts. */
export function trimFlags(plan: Plan) {
  const { recipe, tucks, flounces, pocket } = plan;
  const reaches = (top: string, foot: string): boolean =>
    plan.values.has(top) && plan.values.has(foot) && !less(quantityOf(plan, top), quantityOf(plan, foot));
  return {
    tucks: tucks.length > 0,
    oneTuck: tucks.length === 1,
    tucksOverOpening: reaches("tucks.top", "placket.foot"),
    flounces: flounces.length > 0,
    oneFlounce: flounces.length === 1,
    flouncesOverOpening: reaches("flounces.top", "placket.foot"),
    flouncesOverPocket: reaches("flounces.top", "pocket.foot"),
    cross: recipe.skirt.flounces?.cut === "cross",
    gathered: flounces.length > 0 && less(plain(1n), quantityOf(plan, "flounces.fullness")),
    pocket: pocket !== undefined,
    pocketLeft: pocket?.side === "left",
  };
}

function quantityOf(plan: Plan, name: string): Quantity {
  const value = plan.values.get(name);
  if (!value) throw new Error(`the plan has no value "${name}"`);
  return value.quantity;
}

/** Tucks and flounces one by one, the lowest first, as heights above the finished hem. */
export function trimsContext(plan: Plan, onTape: (q: Quantity) => string) {
  const { tucks, flounces } = plan;
  return {
    tuckList: tucks.map(({ seam, edge, crease }, i) => ({
      n: String(i + 1),
      crease: onTape(crease),
      seam: onTape(seam),
      edge: onTape(edge),
    })),
    flounceList: flounces.map(({ edge, heading }, i) => ({
      n: String(i + 1),
      edge: onTape(edge),
      heading: onTape(heading),
    })),
  };
}

/** The pocket's place in words: "the right side", "the seam nearest the right side". */
export const pocketWords = ({ pocket }: Plan) => ({ pocket: pocket?.station, pocketSide: pocket?.side });

/** What else is cut from the skirt's own cloth. */
export const trimsOfCloth = ({ flounces, pocket }: Plan): string[] => [
  ...(flounces.length > 0 ? ["flounces"] : []),
  ...(pocket ? ["pocket"] : []),
];

/** Puts what the trimmings need on the list of notions. */
export function addTrims(
  plan: Plan,
  value: (name: string) => string,
  add: (thing: string, amount: string, where: string) => void,
): void {
  if (trimFlags(plan).gathered) {
    add("gathering thread for the flounces, strong", value("flounces.thread"), "flounce headings");
  }
  if (plan.pocket) add("narrow linen tape", value("pocket.strap"), "the pocket's strap");
}
