/** The double entry is tested itself: every rule meets a garment that has its value, and notices when the value is another. */
import { expect, it } from "vitest";
import { add, type Quantity, quantity } from "../src/quantity/quantity.ts";
import { planJson } from "../src/solve/json.ts";
import type { Plan } from "../src/solve/plan.ts";
import { DEMOS, demo } from "./demos.ts";
import { type Keys, planOf } from "./recipes.ts";
import { brokenValues, RULE_NAMES } from "./value-laws.ts";

const ALONG = { run: "along", breadths: null, round: "160 in" } as const;
const RICH: readonly Keys[] = [
  {
    fullness: { "back-share": "55 %", stay: { thickness: "0.1 mm" } },
    attach: { "other-waists": "[{waist: 27 in}]", band: { "hook-sets": "[{waist: 26 in}]" } },
    skirt: { pocket: "true", tucks: { count: "2", depth: "1/2 in" }, braid: "true" },
  },
  {
    cloth: { repeat: { across: "2 in", match: "true", dominant: "1/2 in" } },
    fullness: { trial: '{cloth: "21 5/8 in", pleats: "24", closes-to: "3 in"}' },
    skirt: { hem: { kind: "faced", depth: "4 in", cloth: "other" } },
  },
  {
    fullness: { method: "pleated" },
    skirt: { flounces: { count: "2", depth: "6 in", cut: "cross" } },
    attach: { "flat-parts": "seam" },
    lining: { width: "30 in", thickness: "0.1 mm", weight: "90 g/m2" },
    interlining: { width: "40 in", thickness: "0.5 mm", weight: "90 g/m2", to: "short" },
  },
  { cloth: { repeat: { across: "3/8 in" } }, fullness: { "follow-repeat": "true" } },
  { cloth: { repeat: { across: "2 in", match: "true" } } },
  { lining: { kind: "flat", to: "turned", width: "30 in", thickness: "0.1 mm" } },
  { attach: { to: "bodice-edge", "waist-edge": { depth: "2 in", "from-centre": "4 in", set: "edge" } } },
  // Along the body: with a border at both edges, whole repeats, the selvedge for a hem edge, nothing beside the lengths.
  {
    cloth: {
      width: "60 in",
      border: { depth: "6 in", edge: "both", "from-edge": "2 in", "above-hem": "1 in" },
    },
    skirt: { ...ALONG, lengths: "2", flounces: { count: "1", depth: "8 in" } },
  },
  {
    cloth: { width: "52 in", shaded: "along", repeat: { down: "7 in", match: "true" } },
    skirt: { ...ALONG, lengths: "3", flounces: { count: "1", depth: "6 in", cut: "cross" } },
    lining: { kind: "flat", to: "turned", width: "30 in", thickness: "0.1 mm" },
  },
  {
    cloth: { width: "52 in", shaded: "along", repeat: { across: "1/4 in", down: "3/8 in" } },
    skirt: { ...ALONG, hem: { edge: "selvedge" } },
    fullness: { "follow-repeat": "true" },
    lining: { to: "fold", width: "30 in", thickness: "0.1 mm" },
  },
  { cloth: { width: "45 in" }, skirt: { ...ALONG, lengths: "2" } },
  { cloth: { width: "60 in", border: { depth: "8 in", "from-edge": "3 in" } }, skirt: { ...ALONG } },
  { cloth: { shaded: "across", thickness: "0.15 mm" }, skirt: { breadths: "5" } },
  { cloth: { shaded: "across", "one-way": "true" } },
  // A class, gauged, by the pattern's lines, and laid.
  { class: { pupils: "5", sampler: "2 in" }, fullness: { thread: "full-length" } },
  {
    cloth: { repeat: { across: "3/8 in" }, weight: "50 g/m2" },
    fullness: { "follow-repeat": "true" },
    attach: { whip: "every-other" },
    class: { pupils: "9" },
  },
  { fullness: { method: "pleated" }, class: { pupils: "8" } },
  {
    cloth: { width: "55 in" },
    fullness: { zones: "[{set: box, face: 1 1/2 in}]" },
    class: { pupils: "3", sampler: "3 in" },
  },
];
const plans: readonly Plan[] = [...RICH.map((keys) => planOf(keys)), ...DEMOS.map(demo)];

/** The plan with one value a sixteenth more, in its own kind. */
function spoilt(plan: Plan, name: string): Plan {
  const value = plan.values.get(name);
  if (!value) throw new Error(name);
  const more = (q: Quantity): Quantity => add(q, quantity("1/16", q.dim));
  return {
    ...plan,
    values: new Map([...plan.values, [name, { ...value, quantity: more(value.quantity) }]]),
  };
}

it("they hold for these garments", () => {
  for (const plan of plans) expect(brokenValues(planJson(plan, "0"), plan)).toEqual([]);
});

it.each(RULE_NAMES)("%s: a sixteenth more is noticed in some garment", (name) => {
  const having = plans.filter(({ values }) => values.has(name));
  const noticed = having.some((plan) => {
    const other = spoilt(plan, name);
    return brokenValues(planJson(other, "0"), other).some((words) => words.startsWith(`${name} by`));
  });
  expect(noticed).toBe(true);
});
