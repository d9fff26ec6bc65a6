/** What chapters print of the way the cloth runs, of borders, repeats and shading: flags and words. */
import { isZero, toCount } from "../quantity/quantity.ts";
import type { Plan } from "../solve/plan.ts";
import { facingAlong, isAlong, repeatRound, roundRepeatOf, takesMore } from "../solve/run.ts";

/** Flags for flags.ts. */
export function runFlags(plan: Plan) {
  const { recipe, values, breadths } = plan;
  const { cloth, skirt } = recipe;
  const along = isAlong(recipe);
  const joins = values.get("shade.joins");
  return {
    along,
    /** One seam only besides the pocket's. */
    oneSeam: breadths.length - (plan.pocket ? 1 : 0) === 1,
    severalLengths: along && breadths.length > 1,
    hemSelvedge: skirt.hem.edge === "selvedge",
    facingAlong: values.has("run.beside") && values.has("facing.depth") && facingAlong(sheetOf(plan)),
    flouncesAlong: along && skirt.flounces?.cut === "straight",
    bordered: values.has("border.above"),
    borderFlounces: values.has("border.flounces"),
    hemTrimmed:
      along &&
      cloth.border !== undefined &&
      skirt.hem.edge === "cut" &&
      !isZero(quantityOf(plan, "run.start")),
    repeatAcross: cloth.repeat?.across !== undefined && !along,
    repeatDown: cloth.repeat?.down !== undefined && !along,
    repeatRound: roundRepeatOf(recipe) !== undefined,
    seamsMeet: takesMore(recipe),
    meetAlong: along && cloth.repeat?.match === true,
    shaded: cloth.shaded !== undefined,
    shadedUp: cloth.shaded !== undefined && (cloth.shaded === "across") === along,
    shadeJoins: joins !== undefined && !isZero(joins.quantity),
  };
}

const sheetOf = ({ recipe, values }: Plan) => ({
  recipe,
  sheet: {
    has: (...names: string[]) => names.every((name) => values.has(name)),
    get: (name: string) => quantityOf({ values }, name),
  },
});

function quantityOf({ values }: Pick<Plan, "values">, name: string) {
  const value = values.get(name);
  if (!value) throw new Error(`the plan has no value "${name}"`);
  return value.quantity;
}

/** What one piece of the round is called, and the repeat that goes round the body. */
export function runWords(plan: Plan) {
  const { recipe, values } = plan;
  return {
    piece: isAlong(recipe) ? "length" : "breadth",
    repeat: roundRepeatOf(recipe) ? values.get(repeatRound(recipe))?.shown : undefined,
    lengths: isAlong(recipe) ? String(toCount(quantityOf(plan, "breadths.count"))) : undefined,
  };
}
