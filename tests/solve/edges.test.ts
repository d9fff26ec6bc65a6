/** Garments at the edge of what there is, over the plain skirt: edges.json has what comes of them, worked by hand. */
import { expect, it } from "vitest";
import { exactOf, type Keys, planOf } from "../recipes.ts";
import rows from "./edges.json" with { type: "json" };

interface Row {
  readonly about: string;
  readonly keys: Keys;
  /** In inches. */
  readonly values?: Readonly<Record<string, string>>;
  /** The rule in words of a value that is searched for. */
  readonly how?: Readonly<Record<string, string>>;
  /** What the recipe has not, though it is written. */
  readonly without?: string;
}

it.each((rows as readonly Row[]).map((row) => [row.about, row] as const))(
  "%s",
  (_, { keys, values, how, without }) => {
    const plan = planOf(keys);
    for (const [name, wanted] of Object.entries(values ?? {}))
      expect([name, exactOf(plan, name)]).toEqual([name, wanted]);
    if (without) expect(plan.recipe).not.toHaveProperty(without);
    for (const [name, words] of Object.entries(how ?? {}))
      expect(plan.values.get(name)?.how).toContain(words);
  },
);
