/** What the skirt is set to, in words, and what a chapter needs to know of it: which sections hang on a part band, the piping's strips. */
import { printOnTape } from "../quantity/print.ts";
import { add, less, mul, plain, type Quantity, toCount } from "../quantity/quantity.ts";
import { stripsOf } from "../solve/piping.ts";
import type { Plan, Section } from "../solve/plan.ts";

/** Words for the edge: its name, the line that is sewn to, how its closed length is measured. */
export interface EdgeWords {
  readonly edge: string;
  readonly edgeLine: string;
  readonly endToEnd: string;
  /** The wearer's side that the opening is on; undefined at a centre line. */
  readonly openSide?: "left" | "right";
  readonly otherSide?: "left" | "right";
}

const WORDS: Record<Plan["recipe"]["attach"]["to"], Pick<EdgeWords, "edge" | "edgeLine" | "endToEnd">> = {
  waistband: {
    edge: "band",
    edgeLine: "band's lower edge",
    endToEnd: "from upper end to closing mark",
  },
  "bodice-edge": {
    edge: "bodice edge",
    edgeLine: "piped edge of the bodice",
    endToEnd: "from one closing edge to the other",
  },
  "part-band": {
    edge: "edge",
    edgeLine: "edge, bodice and band in one line",
    endToEnd: "from the opening mark on the bodice round to the closing mark on the band",
  },
};

/** The words for this plan's edge. */
export function edgeWords(plan: Plan): EdgeWords {
  const words = WORDS[plan.recipe.attach.to];
  const { value } = plan.opening.share;
  if (value.n === 0n || value.equals("1/2")) return words;
  const left = value.compare("1/2") < 0;
  return { ...words, openSide: left ? "left" : "right", otherSide: left ? "right" : "left" };
}

/** Does this section hang on the part band: does it lie between centre front and the opening? */
export function onPartBand(section: Section, { recipe, opening }: Plan, waist: Quantity): boolean {
  if (recipe.attach.to !== "part-band") return false;
  const at = mul(waist, opening.share);
  const onLeft = !less(plain("1/2"), opening.share);
  if (section.half !== (onLeft ? "left" : "right")) return false;
  return onLeft ? !less(at, add(section.from, section.waist)) : !less(section.from, at);
}

/** The strips to cut for the piping, longest first, by their shorter edge. None without piping. */
export function pipingStrips({ recipe, values }: Plan): { n: string; length: string }[] {
  const value = (name: string): Quantity | undefined => values.get(name)?.quantity;
  const [square, count, width, join] = [
    value("piping.square"),
    value("piping.strips"),
    value("piping.width"),
    value("attach.piping.join"),
  ];
  if (!square || !count || !width || !join) return [];
  const showing = { show: recipe.show, tape: recipe.tape };
  return stripsOf(square, { width, join, tape: recipe.tape })
    .slice(0, toCount(count))
    .map((length, i) => ({ n: String(i + 1), length: printOnTape(length, showing) }));
}
