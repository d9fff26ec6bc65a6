/**
 * Finds the places of a source file where one small change makes another program: a comparison turned, a sum made a
 * difference, a bound moved by one, a branch taken out, a formula's sign or function changed. Types, imports and
 * messages are left alone.
 */
import { parseAst } from "vitest/node";
import { changesOf, isFormula } from "./formulas.mjs";

const OPERATORS = {
  "+": "-",
  "-": "+",
  "*": "/",
  "/": "*",
  "%": "*",
  "<": "<=",
  "<=": "<",
  ">": ">=",
  ">=": ">",
  "===": "!==",
  "!==": "===",
  "&&": "||",
  "||": "&&",
  "??": undefined,
};
const METHODS = { add: "sub", sub: "add", mul: "div", div: "mul", floor: "ceil", ceil: "floor" };
const MATHS = { min: "max", max: "min", floor: "ceil", ceil: "floor" };
/** Functions of quantities whose two arguments must not change places. */
const ORDERED = new Set(["sub", "div", "less", "more", "compare"]);
/** And those that can lose their second argument. */
const SUMS = new Set(["add", "mul"]);
/** Calls that only tell; taking one out takes a message out. */
const TELLS = new Set(["say", "refuse"]);

/** `[start, end, instead, what]` for one node; a node that is no place gives none. */
function ofNode(node, text) {
  const of = (n) => text.slice(n.start, n.end);
  switch (node.type) {
    case "BinaryExpression":
    case "LogicalExpression": {
      const to = OPERATORS[node.operator];
      if (!to) return [];
      const between = text.slice(node.left.end, node.right.start);
      const at = node.left.end + between.indexOf(node.operator);
      return [[at, at + node.operator.length, to]];
    }
    case "ConditionalExpression":
      return [[node.test.start, node.test.end, `!(${of(node.test)})`]];
    case "IfStatement":
      return [[node.test.start, node.test.end, "false"]];
    case "Literal":
      return ofLiteral(node);
    case "CallExpression":
      return ofCall(node, of);
    case "ExpressionStatement": {
      const call = node.expression;
      const name = call.type === "CallExpression" ? (call.callee.name ?? call.callee.property?.name) : "";
      return TELLS.has(name) ? [[node.start, node.end, ";"]] : [];
    }
    case "TemplateElement":
      return [];
    case "TemplateLiteral":
      return ofTemplate(node, text);
    default:
      return [];
  }
}

function ofLiteral(node) {
  if (typeof node.value === "boolean") return [[node.start, node.end, String(!node.value)]];
  if (node.bigint !== undefined && node.bigint !== null)
    return [[node.start, node.end, `${BigInt(node.bigint) + 1n}n`]];
  if (typeof node.value === "number") return [[node.start, node.end, String(node.value + 1)]];
  if (typeof node.value !== "string" || !isFormula(node.value)) return [];
  const from = node.start + 1;
  return changesOf(node.value).map(({ at, length, to }) => [from + at, from + at + length, to]);
}

function ofTemplate(node, text) {
  const whole = node.quasis.map(({ value }) => value.raw).join("section.part");
  if (!isFormula(whole)) return [];
  return node.quasis.flatMap(({ start, value }) => {
    const from = text.indexOf(value.raw, start);
    return changesOf(value.raw).map(({ at, length, to }) => [from + at, from + at + length, to]);
  });
}

function ofCall({ callee, arguments: args }, of) {
  if (callee.type === "MemberExpression" && !callee.computed) {
    const names = callee.object.name === "Math" ? MATHS : METHODS;
    const to = Object.hasOwn(names, callee.property.name) ? names[callee.property.name] : undefined;
    // `set.add(x)` of a Set is no sum.
    return to && !/^(seen|known|used)/.test(callee.object.name ?? "")
      ? [[callee.property.start, callee.property.end, to]]
      : [];
  }
  const [first, second] = args;
  if (args.length !== 2 || callee.type !== "Identifier") return [];
  const [from, end] = [first.start, second.end];
  if (ORDERED.has(callee.name)) return [[from, end, `${of(second)}, ${of(first)}`]];
  if (SUMS.has(callee.name)) return [[callee.start, end + 1, `(${of(first)})`]];
  return [];
}

/** Keys of a node under which nothing is calculated. */
const SKIPPED = new Set([
  "typeAnnotation",
  "typeArguments",
  "typeParameters",
  "returnType",
  "superTypeArguments",
]);

function* walk(node) {
  if (!node || typeof node.type !== "string" || /^(TS(?!As|NonNull|Satisfies)|Import)/.test(node.type))
    return;
  yield node;
  for (const [key, child] of Object.entries(node)) {
    if (SKIPPED.has(key) || (node.type.startsWith("TS") && key !== "expression")) continue;
    if (Array.isArray(child)) for (const one of child) yield* walk(one);
    else if (child && typeof child === "object") yield* walk(child);
  }
}

/** Messages are words: nothing inside `say({...})` or `throw` is changed. */
function silent(node) {
  return (
    node.type === "ThrowStatement" ||
    (node.type === "CallExpression" && TELLS.has(node.callee.name ?? node.callee.property?.name))
  );
}

/** Every mutant of one file: its place, the old and the new text, and the whole file with the change in it. */
export function mutantsOf(text) {
  const program = parseAst(text, { lang: "ts" });
  const quiet = [...walk(program)].filter(silent).map(({ start, end }) => [start, end]);
  const said = (at) => quiet.some(([start, end]) => start < at && at < end);
  return [...walk(program)]
    .flatMap((node) => ofNode(node, text))
    .filter(([start]) => !said(start))
    .map(([start, end, to]) => {
      const before = text.slice(0, start).split("\n");
      return {
        line: before.length,
        column: (before.at(-1)?.length ?? 0) + 1,
        from: text.slice(start, end).replaceAll(/\s+/g, " "),
        to: to.replaceAll(/\s+/g, " "),
        text: text.slice(0, start) + to + text.slice(end),
      };
    });
}
