/**
 * Fullness thrown to the back: which numbers of pleats go together, by the rule in words. Every section's bites are dealt
 * out in whole marks; the section nearest centre back leads, and the others take its bites to within a mark.
 */
import Fraction from "fraction.js";
import { planJson } from "../../src/solve/json.ts";
import type { Plan } from "../../src/solve/plan.ts";
import { F, least, most, nearest } from "../value-asked.ts";

interface Part {
  readonly name: string;
  readonly cloth: Fraction;
  readonly waist: Fraction;
  /** Where it lies, as a share of the waist seam. */
  readonly from: Fraction;
  readonly to: Fraction;
  readonly pleats: number;
}
interface Limits {
  readonly least: number;
  readonly most: number;
  readonly wanted: number;
}
/** The bites of a part, in marks of the tape: between which two they lie, and whether they are long and short. */
interface Dealt {
  readonly long: boolean;
  readonly small: number;
  readonly large: number;
}

const FEW = 8;
const whole = (f: Fraction): number => Number(f.n);

function gaugedOf(plan: Plan): Part[] {
  const { sections } = planJson(plan, "0");
  const waist = sections.reduce((sum, section) => sum.add(section.waist), F(0));
  let at = F(0);
  return sections.flatMap((section) => {
    const from = at;
    at = at.add(F(section.waist).div(waist));
    if (!("bites" in section)) return [];
    const { name, pleats } = section;
    return [{ name, cloth: F(section.cloth), waist: F(section.waist), from, to: at, pleats }];
  });
}

/** In words, every section whose number of pleats is another than the rule's; and whether the rule found no even way. */
export function unlike(plan: Plan): { wrong: string[]; steps: boolean } {
  const json = planJson(plan, "0");
  const v = (name: string): Fraction => new Fraction((json.values[name] as { exact: string }).exact);
  const parts = gaugedOf(plan);
  // The nearest to centre back; the wearer's left, which comes first, where two are as near.
  const away = ({ from, to }: Part): Fraction => least(from.sub("1/2").abs(), to.sub("1/2").abs());
  const lead = parts.reduce((a, b) => (away(b).compare(away(a)) < 0 ? b : a));

  const limits = ({ cloth, waist }: Part): Limits => {
    const byCloth = cloth.div(v("fullness.finestBite").mul(2)).floor();
    const fewest = cloth.div(v("fullness.deepestPitch")).ceil();
    const packed = least(waist.div(v("gauging.packed")).floor(), byCloth);
    const easy = most(least(waist.div(v("gauging.easy")).floor(), byCloth), fewest);
    if (!plan.recipe.fullness.pleatsPerInch)
      return { least: whole(fewest), most: whole(packed), wanted: whole(easy) };
    // A wish is a mean: this part has so much of it as it has of the cloth.
    const mean = v("fullness.pleatsPerInch").mul(v("backShare.waist")).div(v("backShare.cloth"));
    const wished = least(most(nearest(mean.mul(cloth)), fewest), packed);
    return { least: whole(fewest), most: whole(packed), wanted: whole(wished) };
  };
  const deal = (cloth: Fraction, pleats: number): Dealt => {
    const long = cloth.div(2 * pleats).compare(v("fullness.comfortableBite")) > 0;
    const each = cloth
      .div(v("tape"))
      .floor()
      .div(long ? pleats : 2 * pleats);
    return { long, small: whole(each.floor()), large: whole(each.ceil()) };
  };
  const sizes = (cloth: Fraction, pleats: number): number => {
    const { long, small, large } = deal(cloth, pleats);
    return (long ? 2 : 1) + (small === large ? 0 : 1);
  };
  /** From nine tenths of the wanted count to it: fewest sizes first, then nearest the wanted. */
  const ranked = (part: Part): number[] => {
    const { least: low, wanted } = limits(part);
    const from = Math.max(Math.floor((9 * wanted) / 10), low, 1);
    return Array.from({ length: wanted - from + 1 }, (_, i) => wanted - i).sort(
      (a, b) => sizes(part.cloth, a) - sizes(part.cloth, b) || b - a,
    );
  };

  /** What every part takes where the lead has so many pleats and all bites lie on two neighbouring marks. */
  const within = (led: number, small: number, large: number) =>
    parts.map((part) => {
      if (part.cloth.equals(lead.cloth) && part.waist.equals(lead.waist)) return { pleats: led, alike: true };
      const { least: low, most: high } = limits(part);
      const free = part.cloth.div(lead.cloth).mul(led);
      const held = Math.min(Math.max(whole(nearest(free)), Math.max(1, low)), high);
      const reach = Math.max(1, Math.ceil(held / 10));
      const found = Array.from({ length: 2 * reach + 1 }, (_, i) => held - reach + i)
        .filter((n) => n >= Math.max(1, low) && n <= high)
        .sort((a, b) => free.sub(a).abs().compare(free.sub(b).abs()) || a - b)
        .find((n) => {
          const dealt = deal(part.cloth, n);
          return dealt.long === deal(lead.cloth, led).long && dealt.small >= small && dealt.large <= large;
        });
      return { pleats: found ?? held, alike: found !== undefined };
    });
  const fits = (all: ReturnType<typeof within>): boolean =>
    all.every(({ pleats, alike }) => alike || pleats < FEW);
  const led = (pleats: number): ReturnType<typeof within> => {
    const { small, large } = deal(lead.cloth, pleats);
    if (small !== large) return within(pleats, small, large);
    const up = within(pleats, small, small + 1);
    const down = within(pleats, small - 1, small);
    return !fits(up) && fits(down) ? down : up;
  };

  const ways = ranked(lead).map(led);
  const chosen = ways.find(fits) ?? (ways[0] as ReturnType<typeof within>);
  return {
    wrong: parts.flatMap(({ name, pleats }, i) =>
      pleats === chosen[i]?.pleats ? [] : [`${name}: ${pleats} pleats, by the rule ${chosen[i]?.pleats}`],
    ),
    steps: !fits(chosen),
  };
}
