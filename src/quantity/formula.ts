/**
 * Formulas: plain sums over named quantities, read by mathjs's parser and calculated exactly.
 *
 * The grammar is names joined by dots, literals with or without a unit (`1 1/2 in`, `11/10`), + - * /, brackets,
 * comparisons, and min max floor ceil round abs diagonal. Whatever could hang, loop or reach outside is refused when it is read.
 */

import { diagonal } from "./diagonal.ts";
import { type ParsedNode, parseFormula } from "./formula-parser.ts";
import * as q from "./quantity.ts";
import { FORMULA_NUMBER_SOURCE as NUMBER, readNumber, readQuantity, unitSource } from "./read.ts";
import { type Rounding, roundTo } from "./tape.ts";

export const LONGEST_FORMULA = 500;
export const DEEPEST_FORMULA = 40;
/** A result whose numerator or denominator passes this many bits is refused. */
export const MOST_BITS = 4096;

export type Result = q.Quantity | boolean;
export type Lookup = (name: string) => q.Quantity | undefined;

/** What is wrong with a formula and where in its text (from 0). The message is fit to show. */
export class FormulaError extends Error {
  readonly at: number;
  readonly hint: string | undefined;
  /** A name that nobody knows, so that the caller can offer the nearest. */
  readonly unknown: string | undefined;
  constructor(message: string, at: number, hint?: string, unknown?: string) {
    super(message);
    this.at = at;
    this.hint = hint;
    this.unknown = unknown;
  }
}

export interface Formula {
  readonly text: string;
  /** Names it is calculated from, in order of first appearance. */
  readonly names: readonly string[];
  /** Calculates it; throws FormulaError for an unknown name, mixed kinds, division by 0 or a result too large. */
  evaluate(lookup: Lookup): Result;
}

type Evaluate = (lookup: Lookup) => Result;

const LITERAL_KINDS: readonly q.Dim[] = [q.LENGTH, q.MASS, q.AREAL, q.RATE, q.PLAIN];
const LITERAL = new RegExp(`(?<![\\w.\\u00c0-\\u02af])(?:${NUMBER})`, "g");

interface Literals {
  /** The text with every literal turned into a name of the same width, so that columns stay true. */
  readonly text: string;
  readonly values: ReadonlyMap<string, q.Quantity>;
}

/** First letters of stand-in names: Latin letters that no value name uses and mathjs takes for letters. */
const STAND_IN = 0x100;

function takeLiterals(text: string): Literals {
  const values = new Map<string, q.Quantity>();
  const stand = (value: q.Quantity, width: number): string => {
    const name = String.fromCharCode(STAND_IN + values.size) + "_".repeat(width - 1);
    values.set(name, value);
    return name;
  };
  let out = "";
  let at = 0;
  for (const found of text.matchAll(LITERAL)) {
    if (found.index < at) continue;
    const after = /^[A-Za-z_]\S*/.exec(text.slice(found.index + found[0].length));
    const end = literalEnd(text, found.index + found[0].length);
    const written = text.slice(found.index, end.at);
    if (after && end.dim === q.PLAIN) {
      throw new FormulaError(
        `"${found[0]}${after[0]}" is neither a number nor a name`,
        found.index,
        "write a unit known here, as in 3 in",
      );
    }
    out += text.slice(at, found.index) + stand(literalValue(written, found.index, end.dim), written.length);
    at = end.at;
  }
  return { text: out + text.slice(at), values };
}

/** Where a literal ends: after its unit, and after further number-unit terms of a length (`2 ft 3 in`). */
function literalEnd(text: string, from: number): { at: number; dim: q.Dim } {
  for (const kind of LITERAL_KINDS) {
    if (kind === q.PLAIN) continue;
    const unit = new RegExp(`[ \\u00a0]*(?:${unitSource(kind)})`, "y");
    unit.lastIndex = from;
    const found = unit.exec(text);
    if (!found) continue;
    let at = from + found[0].length;
    const further = new RegExp(`[ \\u00a0]*(?:${NUMBER})[ \\u00a0]*(?:${unitSource(kind)})`, "y");
    for (;;) {
      further.lastIndex = at;
      const next = further.exec(text);
      if (!next) return { at, dim: kind };
      at += next[0].length;
    }
  }
  const percent = /[ \u00a0]*%/y;
  percent.lastIndex = from;
  const share = percent.exec(text);
  return { at: share ? from + share[0].length : from, dim: q.PLAIN };
}

function literalValue(written: string, at: number, dim: q.Dim): q.Quantity {
  if (dim === q.PLAIN && !written.includes("%")) {
    const value = readNumber(written);
    if (value) return q.plain(value);
    throw new FormulaError(`"${written.slice(0, 20)}" is not a number that can be used here`, at);
  }
  const reading = readQuantity(written, dim);
  if (reading.ok) return reading.value;
  throw new FormulaError(reading.error, at + reading.at, reading.hint);
}

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
  const build = new Builder(text, literals.values, names);
  const evaluate = build.node(parsed(literals.text), 0);
  return {
    text,
    names,
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

function bounded(result: q.Quantity): q.Quantity {
  const { n, d } = result.value;
  if (n.toString(2).length > MOST_BITS || d.toString(2).length > MOST_BITS) {
    throw new FormulaError("the result has too many digits", 0);
  }
  return result;
}

const ARITHMETIC: Record<string, (a: q.Quantity, b: q.Quantity) => Result> = {
  "+": q.add,
  "-": q.sub,
  "*": (a, b) => bounded(q.mul(a, b)),
  "/": (a, b) => bounded(q.div(a, b)),
  "<": q.less,
  ">": q.more,
  "<=": (a, b) => !q.more(a, b),
  ">=": (a, b) => !q.less(a, b),
  "==": q.equal,
  "!=": (a, b) => !q.equal(a, b),
};

const ONE = q.plain(1n);
const rounding =
  (way: Rounding) =>
  (args: readonly q.Quantity[]): q.Quantity => {
    const [x, step] = args as [q.Quantity, q.Quantity | undefined];
    if (!step && x.dim !== q.PLAIN)
      throw new q.KindError(`${q.kindName(x.dim)} needs a step to be put on, as in round(x, 1/8 in)`);
    const by = step ?? ONE;
    if (by.dim !== x.dim)
      throw new q.KindError(`the step is ${q.kindName(by.dim)}, but what is rounded is ${q.kindName(x.dim)}`);
    if (by.value.compare(0) <= 0) throw new q.KindError("the step must be above 0");
    return roundTo(x, by, way);
  };

interface Fn {
  readonly least: number;
  readonly most: number;
  readonly run: (args: readonly q.Quantity[]) => q.Quantity;
}

/** The functions of the grammar: how many things they take, and what they do. */
const FUNCTIONS: ReadonlyMap<string, Fn> = new Map<string, Fn>([
  ["min", { least: 1, most: 20, run: ([a, ...rest]) => q.min(a as q.Quantity, ...rest) }],
  ["max", { least: 1, most: 20, run: ([a, ...rest]) => q.max(a as q.Quantity, ...rest) }],
  ["abs", { least: 1, most: 1, run: ([a]) => q.abs(a as q.Quantity) }],
  ["floor", { least: 1, most: 2, run: rounding("down") }],
  ["ceil", { least: 1, most: 2, run: rounding("up") }],
  ["round", { least: 1, most: 2, run: rounding("nearest") }],
  ["diagonal", { least: 2, most: 2, run: ([x, step]) => diagonal(x as q.Quantity, step as q.Quantity) }],
]);

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

  constructor(text: string, literals: ReadonlyMap<string, q.Quantity>, names: string[]) {
    this.text = text;
    this.literals = literals;
    this.names = names;
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
    const [first, second] = operands.map((operand) => this.node(operand, depth));
    if (first && !second) {
      if (op === "-") return (lookup) => q.neg(number(first(lookup), "be turned round by -"));
      if (op === "+") return (lookup) => number(first(lookup), "stand after +");
    }
    const run = Object.hasOwn(ARITHMETIC, op) ? ARITHMETIC[op] : undefined;
    if (!run || !first || !second) {
      throw new FormulaError(
        `"${op}" cannot stand in a formula`,
        Math.max(0, this.text.indexOf(op)),
        "use + - * / and comparisons",
      );
    }
    const at = Math.max(0, this.text.indexOf(op));
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
    return (lookup) =>
      guarded(() => fn.run(args.map((argument) => number(argument(lookup), `stand in ${name}()`))), at);
  }

  /** Where a name first stands as a whole word in the text as written. */
  private placeOf(name: string): number {
    const found = new RegExp(`(?<![\\w.])${name.replace(/[.$]/g, "\\$&")}(?![\\w.])`).exec(this.text);
    return found?.index ?? 0;
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
    if (error instanceof q.KindError) throw new FormulaError(error.message, at);
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
