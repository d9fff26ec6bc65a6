/** Calculates a notebook's workings over a plan: their results become values of the plan. */
import { FormulaError } from "../../quantity/formula.ts";
import type { Showing } from "../../quantity/print.ts";
import { KindError, kindName, type Quantity } from "../../quantity/quantity.ts";
import type { Message } from "../../recipe/message.ts";
import { messageOf, type Problem, quoted } from "../../recipe/problem.ts";
import { formulaOf, inNumbers } from "../../solve/formulas.ts";
import type { Plan, Value } from "../../solve/plan.ts";
import { shown } from "../../solve/shown.ts";
import { formulaProblem } from "./formula-problem.ts";
import type { Notebook, WorkingsLine } from "./notebook.ts";
import { ownStyle } from "./own-style.ts";

export interface Worked {
  /** The plan with the workings among its values. */
  readonly plan: Plan;
  /** Comparisons of the workings: yes or no, by name. */
  readonly answers: ReadonlyMap<string, boolean>;
  readonly messages: readonly Message[];
}

/** What a value says of itself where its line has no remark. */
const ABOUT = "worked out in the recipe";

/** Calculates every line in the order of need; a line whose needs could not be calculated is passed over. */
export function work(plan: Plan, notebook: Notebook): Worked {
  if (notebook.workings.length === 0) return { plan, answers: new Map(), messages: [] };
  const values = new Map(plan.values);
  const answers = new Map<string, boolean>();
  const messages: Message[] = [];
  const { recipe } = plan;
  const showing: Showing = { show: recipe.show, tape: recipe.tape, currency: recipe.work.price?.currency };
  for (const line of notebook.workings) {
    if (!line.from.every((name) => values.has(name))) continue;
    const result = resultOf(line, values);
    if ("problem" in result) messages.push(messageAt(line, result.problem, result.at, result.length));
    else if (typeof result.is === "boolean") answers.set(line.name, result.is);
    else {
      const value = ownValue(line, result.is, values, showing);
      if (value) values.set(line.name, value);
      else {
        messages.push(
          messageAt(line, {
            code: "kind",
            text: `${line.name} comes to ${kindName(result.is.dim)}, which cannot be printed`,
            hint: "divide or multiply by what makes it a number, a length, an area, a weight, a time or a sum",
          }),
        );
      }
    }
  }
  return { plan: { ...plan, values }, answers, messages };
}

type Result =
  | { readonly is: Quantity | boolean }
  | { readonly problem: Problem; readonly at: number; readonly length: number };

function resultOf(line: WorkingsLine, values: ReadonlyMap<string, Value>): Result {
  const formula = formulaOf(line.formula);
  const missing = formula.names.find((name) => !values.has(name));
  if (missing !== undefined) {
    return {
      problem: {
        code: "no-value",
        text: `this garment has no value ${quoted(missing)}`,
        hint: "take the line out, or work it out from a value that this garment has",
      },
      at: formula.placeOf(missing),
      length: missing.length,
    };
  }
  try {
    return { is: formula.evaluate((name) => values.get(name)?.quantity) };
  } catch (error) {
    if (!(error instanceof FormulaError)) throw error;
    const kinds = error.cause instanceof KindError ? "kind" : "formula";
    const length = /^(?:[A-Za-z]\w*|[<>=!]=|.)/.exec(line.formula.slice(error.at))?.[0].length ?? 1;
    return { problem: { ...formulaProblem(error), code: kinds }, at: error.at, length };
  }
}

function ownValue(
  { name, formula, about }: WorkingsLine,
  quantity: Quantity,
  values: ReadonlyMap<string, Value>,
  showing: Showing,
): Value | undefined {
  const style = ownStyle(quantity.dim);
  if (!style) return undefined;
  return {
    name,
    quantity,
    shown: shown(quantity, style, showing),
    how: formula,
    inNumbers: inNumbers(formula, (other) => values.get(other)?.shown),
    source: "workings",
    about: about ?? ABOUT,
  };
}

function messageAt(line: WorkingsLine, problem: Problem, at = 0, length = line.formulaAt.length): Message {
  const { formulaAt } = line;
  return messageOf(problem, "", { ...formulaAt, column: formulaAt.column + at, length });
}
