/** Every number that differs from size to size, in the order of the reference and of the catalogue of values. */
import { printOnTape, printPart } from "../../quantity/print.ts";
import type { Quantity } from "../../quantity/quantity.ts";
import { tally } from "../../quantity/tape.ts";
import { exact } from "../../solve/json.ts";
import { NAMES } from "../../solve/names.ts";
import type { Plan, Section, Value } from "../../solve/plan.ts";
import type { SizePlan } from "./set.ts";

/** One number of every size; nothing where a size does not have it. */
export interface NumberRow {
  readonly about: string;
  /** The value's name, where it is one. */
  readonly name?: string;
  readonly cells: readonly (Cell | undefined)[];
}

export interface Cell {
  readonly shown: string;
  readonly exact: string;
}

export interface NumberGroup {
  readonly title: string;
  readonly rows: readonly NumberRow[];
}

/** What a size is chosen by, and bought for; always shown. */
export const CHOSEN_BY = [
  "wearer.waist",
  "waist.seam",
  "finished.front",
  "finished.left",
  "finished.right",
  "finished.back",
  "breadths.count",
  "skirt.round",
  "cloth.buy",
  "facing.buy",
] as const;

/** The groups that have rows; the first is what a size is chosen by. */
export function numbersOf(sizes: readonly SizePlan[]): readonly NumberGroup[] {
  const plans = sizes.map(({ plan }) => plan);
  const names = namesIn(plans);
  const isFirst = (name: string): boolean => (CHOSEN_BY as readonly string[]).includes(name);
  const differing = names
    .filter((name) => !isFirst(name))
    .map((name) => valueRow(name, plans))
    .filter(differs);
  const isGiven = ({ name }: NumberRow): boolean =>
    plans.some((plan) => ["recipe", "default"].includes(plan.values.get(name ?? "")?.source ?? ""));
  const isOwn = ({ name }: NumberRow): boolean =>
    plans.some((plan) => plan.values.get(name ?? "")?.source === "workings");
  return [
    {
      title: "To choose a size by, and the cloth to buy",
      rows: CHOSEN_BY.filter((name) => names.includes(name)).map((name) => valueRow(name, plans)),
    },
    { title: "Measures and choices that differ", rows: differing.filter(isGiven) },
    { title: "Numbers that differ", rows: differing.filter((row) => !isGiven(row) && !isOwn(row)) },
    { title: "Numbers of the maker’s own that differ", rows: differing.filter(isOwn) },
    { title: "Round the waist: finished length and turn-down", rows: stationRows(plans).filter(differs) },
    { title: "Sections of the waist seam", rows: sectionRows(plans).filter(differs) },
  ].filter(({ rows }) => rows.length > 0);
}

/** Does a row's shown text differ, or has a size none? */
export function differs({ cells }: NumberRow): boolean {
  const [first] = cells;
  return cells.some((cell) => cell?.shown !== first?.shown);
}

/** Names of all the sizes' values: the recipe's in the order of the reference, then those worked out, then the maker's own. */
function namesIn(plans: readonly Plan[]): string[] {
  const found = new Map<string, Value>(plans.flatMap((plan) => [...plan.values]));
  const order = new Map(Object.keys(NAMES).map((name, i) => [name, i]));
  const isKnown = (name: string): boolean => order.has(name);
  const all = [...found.keys()];
  return [
    ...all.filter((name) => !isKnown(name)),
    ...all.filter(isKnown).sort((a, b) => (order.get(a) ?? 0) - (order.get(b) ?? 0)),
  ];
}

function valueRow(name: string, plans: readonly Plan[]): NumberRow {
  const values = plans.map((plan) => plan.values.get(name));
  return {
    about: values.find((value) => value)?.about ?? name,
    name,
    cells: values.map((value) => value && { shown: value.shown, exact: exact(value.quantity) }),
  };
}

/** Rows of a list of each plan, told apart by their words. */
function listRows(
  plans: readonly Plan[],
  of: (plan: Plan) => readonly (readonly [string, Cell])[],
): NumberRow[] {
  const lists = plans.map((plan) => new Map(of(plan)));
  const words = [...new Set(lists.flatMap((list) => [...list.keys()]))];
  return words.map((about) => ({ about, cells: lists.map((list) => list.get(about)) }));
}

const onTape = (q: Quantity, { recipe }: Plan): Cell => ({
  shown: printOnTape(q, { show: recipe.show, tape: recipe.tape }),
  exact: exact(q),
});

const stationRows = (plans: readonly Plan[]): NumberRow[] =>
  listRows(plans, (plan) =>
    plan.balance.flatMap(({ station, finished, turnDown, finishedMark, turnDownMark }) => [
      [`finished length, ${station}`, { ...onTape(finishedMark, plan), exact: exact(finished) }] as const,
      [`turn-down, ${station}`, { ...onTape(turnDownMark, plan), exact: exact(turnDown) }] as const,
    ]),
  );

const sectionRows = (plans: readonly Plan[]): NumberRow[] =>
  listRows(plans, (plan) => {
    const times = new Map<string, number>();
    return plan.sections.flatMap((section) => {
      const time = (times.get(section.name) ?? 0) + 1;
      times.set(section.name, time);
      const name = time === 1 ? section.name : `${section.name} (${time})`;
      return ofSection(section, name, plan);
    });
  });

function ofSection(section: Section, name: string, plan: Plan): (readonly [string, Cell])[] {
  const showing = { show: plan.recipe.show, tape: plan.recipe.tape };
  const part = (q: Quantity): Cell => ({ shown: printPart(q, showing), exact: exact(q) });
  const sizes = (list: readonly Quantity[]): Cell => ({
    shown: tally(list)
      .map(({ size, count }) => `${count} of ${printPart(size, showing)}`)
      .join(", "),
    exact: tally(list)
      .map(({ size, count }) => `${count} x ${exact(size)}`)
      .join(", "),
  });
  const say = (what: string, cell: Cell): readonly [string, Cell] => [`${name}: ${what}`, cell];
  const both = [say("waist", part(section.waist)), say("cloth", part(section.cloth))];
  if (section.set === "flat") return both;
  if (section.set === "gauged") {
    const pleats = String(section.pleats);
    return [...both, say("pleats", { shown: pleats, exact: pleats }), say("bites", sizes(section.bites))];
  }
  const count = exact(section.count);
  return [
    ...both,
    say("pleats", { shown: count, exact: count }),
    say("faces", sizes(section.faces)),
    say("depths", sizes(section.depths)),
  ];
}
