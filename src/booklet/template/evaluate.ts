/** What a template's expressions stand for in a context. Reads own properties only; makes no code. */
import { Printed } from "../printed.ts";
import { HELPERS } from "./helpers.ts";
import { type Expression, TemplateError } from "./tree.ts";

/** Names to values: printed values, words, flags, lists of the same. */
export type Context = Readonly<Record<string, unknown>>;

/** What a name stands in: the item of a list, what is round it, and the item's place in its list. */
export interface Scope {
  readonly here: unknown;
  readonly outer: Scope | undefined;
  readonly index: number;
  readonly count: number;
}

/** The scope of a whole template. */
export const outermost = (context: Context): Scope => ({
  here: context,
  outer: undefined,
  index: 0,
  count: 1,
});

/** The scopes of a list's items; none where it is no list, or empty. */
export function itemsOf(value: unknown, scope: Scope): readonly Scope[] {
  if (!Array.isArray(value)) return [];
  return value.map((here: unknown, index) => ({ here, outer: scope, index, count: value.length }));
}

/** As in Handlebars: nothing, no, the empty text and the empty list do not hold. */
export const holds = (value: unknown): boolean =>
  Boolean(value) && !(Array.isArray(value) && value.length === 0);

/** What an expression stands for. Throws TemplateError where a helper is not there or is given what it cannot take. */
export function answer(expression: Expression, scope: Scope, context: Context): unknown {
  if (typeof expression === "string") return lookUp(expression, scope, context);
  if ("says" in expression) return expression.says;
  const helper = Object.hasOwn(HELPERS, expression.helper) ? HELPERS[expression.helper] : undefined;
  if (!helper) throw new TemplateError(`there is no helper "${expression.helper}"`, { at: expression.at });
  try {
    return helper.run(
      expression.with.map((part) => answer(part, scope, context)),
      context,
    );
  } catch (error) {
    if (!(error instanceof TemplateError) || error.at || !expression.at) throw error;
    const { message, code, hint } = error;
    throw new TemplateError(message, { at: expression.at, code, ...(hint ? { hint } : {}) });
  }
}

function lookUp(path: string, scope: Scope, context: Context): unknown {
  let at: Scope | undefined = scope;
  let rest = path;
  while (rest.startsWith("../")) {
    at = at?.outer;
    rest = rest.slice(3);
  }
  if (rest.startsWith("@root")) return follow(context, rest.slice("@root.".length));
  if (rest === "@first") return scope.index === 0;
  if (rest === "@last") return scope.index === scope.count - 1;
  if (rest === "@index") return scope.index;
  if (rest === "this" || rest === ".") return at?.here;
  if (rest.startsWith("this.")) rest = rest.slice("this.".length);
  else if (rest.startsWith("./")) rest = rest.slice("./".length);
  return follow(at?.here, rest);
}

/** Paths of templates, cut once: there are some hundreds of them, and a maker's own. */
const STEPS = new Map<string, readonly string[]>();
const MOST_STEPS = 5000;

function stepsOf(path: string): readonly string[] {
  let steps = STEPS.get(path);
  if (!steps) {
    if (STEPS.size >= MOST_STEPS) STEPS.clear();
    steps = path.split(".");
    STEPS.set(path, steps);
  }
  return steps;
}

function follow(value: unknown, path: string): unknown {
  let at = value;
  for (const step of stepsOf(path)) {
    if (typeof at !== "object" || at === null || at instanceof Printed || !Object.hasOwn(at, step)) {
      return undefined;
    }
    at = (at as Record<string, unknown>)[step];
  }
  return at;
}
