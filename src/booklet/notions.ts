/** What to buy and have ready, with amounts from the plan. Thread is a supply, scissors a tool (schema.org HowTo). */
import type { Plan } from "../solve/plan.ts";
import { isAlong } from "../solve/run.ts";
import { isEstimated, SHORT_MARK } from "./estimates.ts";
import { addLinings } from "./lining.ts";
import { marked } from "./marks.ts";
import { stayDepth } from "./stay.ts";
import { addTrims, trimsOfCloth } from "./trims.ts";

export interface Notion {
  readonly thing: string;
  readonly amount: string;
  readonly where: string;
  readonly kind: "supply" | "tool";
}

/** The list, in the order of use. Amounts carry number marks. */
export function notionsOf(plan: Plan): Notion[] {
  const { recipe, values } = plan;
  const facing = recipe.skirt.hem.kind === "faced" && recipe.skirt.hem.cloth === "own";
  const value = (name: string): string => marked(name, values.get(name)?.shown ?? "");
  const list: Notion[] = [
    {
      thing: recipe.cloth.name,
      amount: `${value("cloth.buy")}, ${value("cloth.width")} wide${isEstimated(plan) ? SHORT_MARK : ""}`,
      where: [
        `${isAlong(recipe) ? "lengths" : "breadths"}, ${recipe.attach.to === "bodice-edge" ? "" : "band, "}${recipe.attach.piping ? "piping, " : ""}${facing ? "facing, " : ""}placket`,
        ...trimsOfCloth(plan),
      ].join(", "),
      kind: "supply",
    },
  ];
  const add = (thing: string, amount: string, where: string, kind: Notion["kind"] = "supply"): void => {
    list.push({ thing, amount, where, kind });
  };
  addLinings(plan, isEstimated(plan), value, add);
  if (recipe.skirt.hem.kind === "faced" && recipe.skirt.hem.cloth === "other") {
    add(
      "facing cloth",
      `${value("facing.buy")} if it is ${value("cloth.width")} wide: strips ${value("facing.depth")} deep, altogether ${value("facing.length")}`,
      "hem facing",
    );
  }
  if (recipe.fullness.stay && plan.gauged.length > 0)
    add(
      recipe.fullness.stay.name ?? "stay",
      `strips ${stayDepth(plan)} deep, ${value("gauging.cloth")} and over in all, on the straight`,
      "in the turn-down",
    );
  if (recipe.skirt.braid) add("hem braid", value("braid.length"), "hem edge");
  const gauged = plan.gauged.length > 0;
  if (gauged) add("gauging thread, strong and waxed", value("gauging.thread"), "the rows of gauging");
  addTrims(plan, value, add);
  if (gauged)
    add(
      "whipping thread, strong and waxed",
      `${value("whip.thread")}: ${value("whip.needlefuls")} needlefuls of ${value("whip.needleful")}`,
      "the pleats to the edge, one by one",
    );
  if (plan.values.has("setting.thread"))
    add(
      "setting thread, strong and waxed",
      `${value("setting.thread")}: ${value("setting.needlefuls")} needlefuls of ${value("whip.needleful")}`,
      gauged ? "what is set flat or in pleats" : "the pleats to the edge",
    );
  add(
    "sewing thread",
    `${value("thread.sewing")}, an estimate: seams ${value("thread.seams")}, hem ${value("thread.hem")}`,
    "seams, hem, placket, edge",
  );
  add(
    "tacking thread in white, blue, red, green and a fifth colour",
    `${value("thread.tacking")} in all, an estimate`,
    "marks, fold, fittings",
  );
  if (recipe.attach.piping)
    add("piping cord", `${value("piping.length")}, ${value("attach.piping.cord")} thick`, "the piped edge");
  const edge = recipe.attach.to;
  add("hooks and eyes", value("hooks.count"), edge === "bodice-edge" ? "placket" : "band and placket");
  if (plan.values.has("hooks.eyes"))
    add("eyes in all", value("hooks.eyes"), "those of the further waists with them");
  if (edge === "part-band")
    add("hooks and eyes besides", value("hooks.edge"), "bodice edge over the part band");
  if (edge === "bodice-edge")
    add("firm tape", `${value("waist.seam")}, ${value("attach.band.depth")} deep`, "measuring and fitting");
  else add("firm tape as deep as the band", value("waist.seam"), "measuring and fitting");
  add("beeswax", "a small cake", "threads");
  add(
    "sharps, no. 8 or finer",
    value("needles.sharps"),
    gauged ? "the rows, one each, and the seams" : "the seams",
    "tool",
  );
  add("short betweens, no. 7", "2", gauged ? "whipping" : "setting", "tool");
  add("pins", value("pins.count"), "counted out and back, as the needles are", "tool");
  add("thimble, shears, small scissors, tape, tested chalk", "one of each", "throughout", "tool");
  return list;
}
