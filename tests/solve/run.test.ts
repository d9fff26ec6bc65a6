/** Cloth that runs along the body, borders, shaded cloth: worked by hand, from data. */
import { describe, expect, it } from "vitest";
import { exact } from "../../src/solve/json.ts";
import { brokenLaws } from "../laws.ts";
import { exactOf, type Keys, recipeText, tried } from "../recipes.ts";
import cases from "./run.json" with { type: "json" };

interface Case {
  readonly name: string;
  readonly hand: string;
  readonly keys: Keys;
  readonly values?: Readonly<Record<string, string>>;
  readonly seams?: readonly string[];
  readonly says?: readonly string[];
  readonly refused?: string;
  readonly ways?: readonly string[];
}

const CASES = cases as unknown as readonly Case[];

describe("the way the cloth runs", () => {
  it.each(CASES.filter(({ refused }) => !refused).map((one) => [one.name, one] as const))("%s", (_, one) => {
    const { plan, messages } = tried(recipeText(one.keys));
    if (!plan) throw new Error(messages.map(({ text }) => text).join("\n"));
    const values = Object.keys(one.values ?? {}).map((name) => [name, exactOf(plan, name)]);
    expect(Object.fromEntries(values)).toEqual(one.values ?? {});
    if (one.seams)
      expect(plan.seams.filter(({ kind }) => kind !== "slit").map(({ alongTop }) => exact(alongTop))).toEqual(
        one.seams,
      );
    for (const code of one.says ?? []) expect(messages.map((message) => message.code)).toContain(code);
    expect(brokenLaws(plan)).toEqual([]);
  });

  it.each(CASES.filter(({ refused }) => refused).map((one) => [one.name, one] as const))(
    "refused, with ways out: %s",
    (_, one) => {
      const { plan, messages } = tried(recipeText(one.keys));
      expect(plan).toBeUndefined();
      const found = messages.find(({ code }) => code === one.refused);
      expect(found?.level).toBe("error");
      for (const way of one.ways ?? []) expect(found?.hint).toContain(way);
    },
  );
});
