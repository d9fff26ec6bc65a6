/**
 * mathjs's own parser, given node classes of ours that only hold what was read. Nothing of mathjs that calculates
 * comes along (15 KB instead of 660), and number literals stay text, so that none passes through a float.
 */
import { createParse } from "mathjs";

declare module "mathjs" {
  /** The parser's factory; mathjs exports it but leaves it out of its types. */
  export const createParse: (dependencies: Record<string, unknown>) => (text: string) => unknown;
}

/** What mathjs's parser reads, in its own node names; only these kinds are understood, all others are refused. */
export type ParsedNode =
  | { readonly type: "SymbolNode"; readonly args: readonly [string] }
  | { readonly type: "ConstantNode"; readonly args: readonly [unknown] }
  | { readonly type: "AccessorNode"; readonly args: readonly [ParsedNode, ParsedNode] }
  | { readonly type: "IndexNode"; readonly args: readonly [readonly ParsedNode[], boolean] }
  | { readonly type: "ParenthesisNode"; readonly args: readonly [ParsedNode] }
  | { readonly type: "FunctionNode"; readonly args: readonly [ParsedNode, readonly ParsedNode[]] }
  | {
      readonly type: "OperatorNode";
      readonly op: string;
      readonly operands: readonly ParsedNode[];
      readonly implicit: boolean;
    }
  | { readonly type: "Other"; readonly kind: string };

const KINDS = [
  "AccessorNode",
  "ArrayNode",
  "AssignmentNode",
  "BlockNode",
  "ConditionalNode",
  "ConstantNode",
  "FunctionAssignmentNode",
  "FunctionNode",
  "IndexNode",
  "ObjectNode",
  "OperatorNode",
  "ParenthesisNode",
  "RangeNode",
  "RelationalNode",
  "SymbolNode",
] as const;

const READ = new Set<string>([
  "AccessorNode",
  "ConstantNode",
  "FunctionNode",
  "IndexNode",
  "ParenthesisNode",
  "SymbolNode",
]);

/** A node class that mathjs's parser can build: it is told apart by the `is…` marks on its prototype. */
function nodeClass(kind: string): unknown {
  class Node {
    readonly type: string;
    readonly args: readonly unknown[];
    readonly op: unknown;
    readonly operands: unknown;
    readonly implicit: unknown;
    readonly kind = kind;
    constructor(...args: unknown[]) {
      this.type = kind === "OperatorNode" || READ.has(kind) ? kind : "Other";
      if (kind === "OperatorNode") {
        // The parser itself looks at `op` and `args` of an operator to read rules such as 2/3 x.
        this.op = args[0];
        this.operands = args[2];
        this.args = args[2] as unknown[];
        this.implicit = args[3] === true;
      } else this.args = args;
    }
  }
  Object.assign(Node.prototype, { isNode: true, [`is${kind}`]: true });
  return Node;
}

type Signatures = Record<string, (text: string) => unknown>;
const typed = Object.assign(
  (_name: string, signatures: Signatures) => (text: string) => signatures.string?.(text),
  { addConversion() {} },
);

const parse = createParse({
  typed,
  numeric: (text: string) => text,
  config: { number: "number" },
  ...Object.fromEntries(KINDS.map((kind) => [kind, nodeClass(kind)])),
});

/** Parses a formula. Throws mathjs's SyntaxError, which has the place as `char` (from 1). */
export function parseFormula(text: string): ParsedNode {
  return parse(text) as ParsedNode;
}
