/**
 * Is any better admissible number of pleats missed? Every count there could be is tried for every gauged section, by the
 * rules in words, with rationals of the tests' own.
 */
import fc from "fast-check";
import { expect } from "vitest";
import type { GaugedSection, Plan } from "../../src/solve/plan.ts";
import { randomRecipe } from "../random.ts";
import { tried } from "../recipes.ts";
import { above, below, fromText, near, order, over, type Rational, rational, times } from "./rational.ts";

interface Choice {
  readonly pleats: bigint;
  readonly sizes: number;
}

const count = (n: bigint): Rational => rational(n);
const ordered = (list: readonly bigint[]): bigint[] => [...list].sort((a, b) => Number(a - b));
const most = (...list: bigint[]): bigint => ordered(list).at(-1) as bigint;
const least = (...list: bigint[]): bigint => ordered(list)[0] as bigint;

/** The sizes of bite, laid out one by one: marks dealt round, and for long bites the short one taken off each pitch. */
function sizes(cloth: Rational, pleats: bigint, value: (name: string) => Rational): number {
  const marks = below(over(cloth, value("tape")));
  const long = order(over(cloth, count(2n * pleats)), value("fullness.comfortableBite")) > 0;
  const parts = Array.from({ length: Number(long ? pleats : 2n * pleats) }, () => 0n);
  const each = marks / BigInt(parts.length);
  const dealt = parts.map((_, i) => each + (BigInt(i) < marks % BigInt(parts.length) ? 1n : 0n));
  return new Set(dealt).size + (long ? 1 : 0);
}

/** Every count from nine tenths of the wanted one up to it, with its sizes; and whether the plan's own is the best of them. */
function choices(plan: Plan, section: GaugedSection): Choice[] {
  const value = (name: string): Rational => {
    const found = plan.values.get(name);
    if (!found) throw new Error(`no value ${name}`);
    return fromText(found.quantity.value.toFraction());
  };
  const cloth = fromText(section.cloth.value.toFraction());
  const waist = fromText(section.waist.value.toFraction());
  const byCloth = below(over(cloth, times(count(2n), value("fullness.finestBite"))));
  const fewest = above(over(cloth, value("fullness.deepestPitch")));
  const packed = least(below(over(waist, value("gauging.packed"))), byCloth);
  const easy = most(least(below(over(waist, value("gauging.easy"))), byCloth), fewest);
  const wish = plan.recipe.fullness.pleatsPerInch;
  const { trial } = plan.recipe.fullness;
  if (trial && order(value("fullness.trial.closesTo"), value("trial.reaches")) <= 0) {
    // It passes: as many pleats as its own pitch gives this cloth, and no more than stand packed.
    const pitch = over(value("fullness.trial.cloth"), value("fullness.trial.pleats"));
    const own = most(1n, least(near(over(cloth, pitch)), below(over(waist, value("gauging.packed")))));
    return [{ pleats: own, sizes: 0 }];
  }
  const wished = (): bigint =>
    least(most(near(over(times(value("fullness.pleatsPerInch"), waist), fromText("25.4"))), fewest), packed);
  // A trial that could not close has shown how close is easy: a wish gives way to it.
  const wanted = wish ? (trial ? least(wished(), easy) : wished()) : easy;
  const from = most(below(times(rational(9n, 10n), count(wanted))), fewest, 1n);
  return Array.from({ length: Number(wanted - from + 1n) }, (_, i) => {
    const pleats = wanted - BigInt(i);
    return { pleats, sizes: sizes(cloth, pleats, value) };
  });
}

/** In words, where a section's count is not the best there is. */
export function missed(plan: Plan): string[] {
  return plan.gauged.flatMap((section) => {
    const all = choices(plan, section);
    const best = all.reduce((a, b) => (b.sizes < a.sizes ? b : a), all[0] as Choice);
    return BigInt(section.pleats) === best.pleats
      ? []
      : [`${section.name}: ${section.pleats} pleats, but ${best.pleats} come in ${best.sizes} sizes`];
  });
}

/**
 * The rules in words are those of a garment not made, not on the lines of its cloth, and whose sections do
 * not take their bites from one another (tests/share-laws.ts has those).
 */
const plainlyCounted = ({ recipe }: Plan): boolean =>
  !recipe.attach.made && !recipe.fullness.followRepeat && !recipe.fullness.backShare;

/** So many random recipes; how many sections were tried. */
export function holdCounts(runs: number): number {
  let sections = 0;
  fc.assert(
    fc.property(randomRecipe, (source) => {
      const { plan } = tried(source);
      if (!plan || !plainlyCounted(plan)) return;
      sections += plan.gauged.length;
      expect(missed(plan)).toEqual([]);
    }),
    { numRuns: runs },
  );
  return sections;
}
