/**
 * Formulas: plain sums over named quantities, read by mathjs's parser and calculated exactly.
 *
 * The grammar is names joined by dots, literals with or without a unit (`1 1/2 in`, `11/10`), + - * /, brackets,
 * comparisons, and min max floor ceil round abs diagonal. Whatever could hang, loop or reach outside is refused when it is read.
 */

import { FormulaError } from "./formula-error.ts";
import { ARITHMETIC, bounded, FUNCTIONS, type Result } from "./formula-functions.ts";
import { type Literals, takeLiterals } from "./formula-literals.ts";
import { type ParsedNode, parseFormula } from "./formula-parser.ts";
import { DEEPEST_FORMULA, LONGEST_FORMULA } from "./limits.ts";
import * as q from "./quantity.ts";

export { FormulaError } from "./formula-error.ts";
export type { Result } from "./formula-functions.ts";

export type Lookup = (name: string) => q.Quantity | undefined;

export interface Formula {
  readonly text: string;
  /** Names it is calculated from, in order of first appearance. */
  readonly names: readonly string[];
  /** Does it come to yes or no? */
  readonly isComparison: boolean;
  /** Where a name first stands in the text, from 0. */
  placeOf(name: string): number;
  /** Calculates it; throws FormulaError for an unknown name, mixed kinds, division by 0 or a result too large. */
  evaluate(lookup: Lookup): Result;
}

type Evaluate = (lookup: Lookup) => Result;

/** Reads a formula; throws FormulaError with the place of what is not a plain sum. */
export function readFormula(text: string): Formula {
  if (text.length > LONGEST_FORMULA) {
    throw new FormulaError(
      `the formula has ${text.length} characters; at most ${LONGEST_FORMULA}`,
      LONGEST_FORMULA,
      "split it into named lines",
    );
  }
  const strange = /[^\x20-\x7e\u00a0½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅐⅛⅜⅝⅞⅑⅒″′’”⁄²−]/u.exec(text);
  if (strange) throw new FormulaError(`"${strange[0]}" cannot stand in a formula`, strange.index);
  const literals = takeLiterals(text.replaceAll("−", "-"));
  const names: string[] = [];
  const build = new Builder(text, literals, names);
  const tree = parsed(literals.text);
  const evaluate = build.node(tree, 0);
  return {
    text,
    names,
    isComparison: comparing(tree),
    placeOf: (name) => build.placeOf(name),
    evaluate(lookup) {
      const result = evaluate(lookup);
      if (typeof result !== "boolean") bounded(result);
      return result;
    },
  };
}

function parsed(text: string): ParsedNode {
  if (text.trim() === "")
    throw new FormulaError("the formula is empty", 0, "write a sum, such as waist.seam + 2 in");
  try {
    return parseFormula(text);
  } catch (error) {
    const char = (error as { char?: number }).char;
    const said = error instanceof Error ? error.message.replace(/ \(char \d+\)$/, "") : "cannot be read";
    throw new FormulaError(
      char === undefined ? "the formula cannot be read" : said.replace(/^./, (c) => c.toLowerCase()),
      (char ?? 1) - 1,
    );
  }
}

const COMPARISONS = new Set(["<", ">", "<=", ">=", "==", "!="]);

function comparing(node: ParsedNode): boolean {
  if (node.type === "ParenthesisNode") return comparing(node.args[0]);
  return node.type === "OperatorNode" && COMPARISONS.has(node.op);
}

/** Signs in the order of the text, as `literals.text` has them: the columns are those of the text as written. */
const SIGNS = /<=|>=|==|!=|[-+*/<>^!]/g;

const REFUSED: Record<string, string> = {
  AssignmentNode: "= inside a formula",
  FunctionAssignmentNode: "a function of your own",
  ArrayNode: "a list in [ ]",
  ObjectNode: "{ }",
  RangeNode: "a range with :",
  ConditionalNode: "? :",
  BlockNode: "; or a line break",
  RelationalNode: "a chain of comparisons",
};

/** Turns parsed nodes into functions that calculate, refusing all that is not in the grammar. */
class Builder {
  private readonly text: string;
  private readonly literals: ReadonlyMap<string, q.Quantity>;
  private readonly names: string[];
  private readonly signs: readonly { readonly sign: string; readonly at: number }[];
  private nextSign = 0;

  constructor(text: string, literals: Literals, names: string[]) {
    this.text = text;
    this.literals = literals.values;
    this.names = names;
    this.signs = [...literals.text.matchAll(SIGNS)].map((found) => ({ sign: found[0], at: found.index }));
  }

  node(node: ParsedNode, depth: number): Evaluate {
    if (depth > DEEPEST_FORMULA)
      throw new FormulaError(`brackets nest deeper than ${DEEPEST_FORMULA}`, 0, "split it into named lines");
    switch (node.type) {
      case "SymbolNode":
      case "AccessorNode":
        return this.name(node);
      case "ParenthesisNode":
        return this.node(node.args[0], depth + 1);
      case "OperatorNode":
        return this.operator(node, depth);
      case "FunctionNode":
        return this.call(node, depth);
      case "ConstantNode":
        throw new FormulaError(`${JSON.stringify(node.args[0])} cannot stand in a formula`, 0);
      default: {
        const kind = node.type === "Other" ? node.kind : node.type;
        throw new FormulaError(
          `${REFUSED[kind] ?? "this"} cannot stand in a formula`,
          0,
          "use + - * / ( ) and min max floor ceil round abs diagonal",
        );
      }
    }
  }

  private name(node: ParsedNode): Evaluate {
    const name = dotted(node);
    if (name === undefined)
      throw new FormulaError("[ ] cannot stand in a formula", 0, "write names with dots, as waist.seam");
    const literal = this.literals.get(name);
    if (literal) return () => literal;
    if (!this.names.includes(name)) this.names.push(name);
    const at = this.placeOf(name);
    return (lookup) => {
      const value = lookup(name);
      if (!value) throw new FormulaError(`there is no value named "${name}"`, at, undefined, name);
      return value;
    };
  }

  private operator(node: ParsedNode & { type: "OperatorNode" }, depth: number): Evaluate {
    const { op, operands, implicit } = node;
    if (implicit)
      throw new FormulaError(
        "two things stand side by side with no sign between them",
        this.gap(operands),
        "write * between them, or + ",
      );
    const [left, right] = operands;
    if (left && !right && (op === "-" || op === "+")) {
      this.takeSign(op);
      const only = this.node(left, depth);
      if (op === "-") return (lookup) => q.neg(number(only(lookup), "be turned round by -"));
      return (lookup) => number(only(lookup), "stand after +");
    }
    const run = Object.hasOwn(ARITHMETIC, op) ? ARITHMETIC[op] : undefined;
    if (!run || !left || !right) {
      throw new FormulaError(
        `"${op}" cannot stand in a formula`,
        Math.max(0, this.text.indexOf(op)),
        "use + - * / and comparisons",
      );
    }
    const first = this.node(left, depth);
    const at = this.takeSign(op);
    const second = this.node(right, depth);
    return (lookup) =>
      guarded(
        () => run(number(first(lookup), "be calculated with"), number(second(lookup), "be calculated with")),
        at,
      );
  }

  private call(node: ParsedNode & { type: "FunctionNode" }, depth: number): Evaluate {
    const name = dotted(node.args[0]) ?? "";
    const at = this.placeOf(name);
    const fn = FUNCTIONS.get(name);
    if (!fn)
      throw new FormulaError(`there is no function "${name}"`, at, `use ${[...FUNCTIONS.keys()].join(", ")}`);
    const args = node.args[1].map((argument) => this.node(argument, depth + 1));
    if (args.length < fn.least || args.length > fn.most) {
      throw new FormulaError(
        `${name}() is given ${args.length} things`,
        at,
        fn.least === fn.most
          ? `give it ${fn.least === 1 ? "one" : fn.least}`
          : `give it ${fn.least} to ${fn.most}`,
      );
    }
    const doing = `stand in ${name}()`;
    return (lookup) => guarded(() => fn.run(args.map((argument) => number(argument(lookup), doing))), at);
  }

  /** The place of the next sign: signs stand in the text in the order in which they are read here. */
  private takeSign(op: string): number {
    const found = this.signs[this.nextSign];
    if (found?.sign !== op) return Math.max(0, this.text.indexOf(op));
    this.nextSign += 1;
    return found.at;
  }

  /** Where a name first stands as a whole word in the text as written, which may have spaces round its points. */
  placeOf(name: string): number {
    const spaced = name.replaceAll("$", "\\$").split(".").join("\\s*\\.\\s*");
    return this.text.search(new RegExp(`(?<![\\w.])${spaced}(?![\\w.])`));
  }

  private gap(operands: readonly ParsedNode[]): number {
    const second = operands[1] && dotted(operands[1]);
    return second && !this.literals.has(second) ? this.placeOf(second) : 0;
  }
}

function number(result: Result, doing: string): q.Quantity {
  if (typeof result === "boolean") throw new FormulaError(`a comparison is yes or no and cannot ${doing}`, 0);
  return result;
}

function guarded<T>(run: () => T, at: number): T {
  try {
    return run();
  } catch (error) {
    if (error instanceof q.KindError)
      throw Object.assign(new FormulaError(error.message, at, error.hint), { cause: error });
    throw error;
  }
}

/** `waist.seam` from the parser's accessors; undefined when an index is not a plain name. */
function dotted(node: ParsedNode): string | undefined {
  if (node.type === "SymbolNode") return node.args[0];
  if (node.type !== "AccessorNode") return undefined;
  const [object, index] = node.args;
  const left = dotted(object);
  if (left === undefined || index.type !== "IndexNode" || !index.args[1]) return undefined;
  const [property] = index.args[0];
  return property?.type === "ConstantNode" && typeof property.args[0] === "string"
    ? `${left}.${property.args[0]}`
    : undefined;
}
