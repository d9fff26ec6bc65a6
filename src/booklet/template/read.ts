/**
 * Template text -> tree, by Handlebars' own parser. What a chapter cannot use is refused with its place: raw output,
 * decorators, comments are dropped, blocks other than #if, #unless and #each do not exist.
 */
import { parse } from "handlebars/dist/cjs/handlebars/compiler/base.js";
import { DEEPEST_TEMPLATE } from "../../recipe/limits.ts";
import { nesting, placeOfTag } from "./nesting.ts";
import { faultOf } from "./parse-fault.ts";
import type { At, Expression, Part, Template } from "./tree.ts";
import { TemplateError } from "./tree.ts";

interface Reading {
  /** Keep places: for text of the maker's own. */
  readonly places: boolean;
}

/**
 * Reads a template.
 *
 * @param text Markdown with Handlebars
 * @param places keep the place of every part, for messages
 * @throws TemplateError with a place, for what cannot be read or is not part of the language
 */
export function readTemplate(text: string, { places }: Reading = { places: true }): Template {
  const program = parsed(text);
  return new Reader(text, places).parts(program.body, 0);
}

function parsed(text: string): hbs.AST.Program {
  const { tooDeep } = nesting(text);
  if (tooDeep) {
    throw new TemplateError(`blocks nest more than ${DEEPEST_TEMPLATE} deep here`, {
      at: placeOfTag(text, tooDeep),
    });
  }
  try {
    return parse(text);
  } catch (error) {
    if (error instanceof RangeError) throw new TemplateError("the blocks nest too deeply to be read");
    throw faultOf(error as Error, text);
  }
}

const BLOCKS = new Set(["if", "unless", "each"]);

class Reader {
  private readonly lines: readonly string[];
  private readonly places: boolean;

  constructor(text: string, places: boolean) {
    this.lines = text.split("\n");
    this.places = places;
  }

  parts(body: readonly hbs.AST.Statement[], depth: number): Template {
    if (depth > DEEPEST_TEMPLATE) {
      throw new TemplateError(`blocks nest more than ${DEEPEST_TEMPLATE} deep here`, {
        at: this.where(body[0]),
      });
    }
    const parts: Part[] = [];
    for (const statement of body) {
      const part = this.part(statement, depth);
      const last = parts.length - 1;
      if (part === undefined || part === "") continue;
      if (typeof part === "string" && typeof parts[last] === "string") parts[last] = parts[last] + part;
      else parts.push(part);
    }
    return parts;
  }

  private part(statement: hbs.AST.Statement, depth: number): Part | undefined {
    switch (statement.type) {
      case "ContentStatement":
        return (statement as hbs.AST.ContentStatement).value;
      case "CommentStatement":
        return undefined;
      case "MustacheStatement":
        return this.print(statement as hbs.AST.MustacheStatement);
      case "BlockStatement":
        return this.block(statement as hbs.AST.BlockStatement, depth);
      case "PartialStatement":
        return this.chapter(statement as hbs.AST.PartialStatement);
      default:
        throw this.fault(
          statement,
          "this kind of block does not exist here",
          "use {{#if}}, {{#unless}} or {{#each}}",
        );
    }
  }

  private print(node: hbs.AST.MustacheStatement): Part {
    if (!node.escaped) {
      throw this.fault(
        node,
        "three curly brackets, or {{&, would print a value unguarded",
        "use two: {{name}}",
      );
    }
    return { print: this.call(node), ...this.at(node) };
  }

  private block(node: hbs.AST.BlockStatement, depth: number): Part {
    const name = (node.path as hbs.AST.PathExpression).original;
    if (!BLOCKS.has(name)) {
      throw this.fault(
        node,
        `there is no block {{#${name}}}`,
        "there are {{#if}}, {{#unless}} and {{#each}}",
      );
    }
    const [about] = node.params;
    if (!about || node.params.length !== 1 || node.hash || node.program?.blockParams) {
      throw this.fault(node, `{{#${name}}} takes one name`, `write {{#${name} name}} … {{/${name}}}`);
    }
    const inner = this.parts(node.program?.body ?? [], depth + 1);
    const other = this.parts(node.inverse?.body ?? [], depth + 1);
    const expression = this.expression(about);
    const at = this.at(node);
    if (name === "each") return { each: expression, do: inner, else: other, ...at };
    return name === "if"
      ? { if: expression, do: inner, else: other, ...at }
      : { if: expression, do: other, else: inner, ...at };
  }

  private chapter(node: hbs.AST.PartialStatement): Part {
    const name = node.name as hbs.AST.PathExpression;
    if (name.type !== "PathExpression" || node.params.length > 0 || node.hash) {
      throw this.fault(node, "{{> }} takes the name of one chapter", "write {{> gauging}}");
    }
    return { chapter: name.original, ...this.at(node) };
  }

  /** A name alone, or a helper with what it is given. */
  private call(node: hbs.AST.MustacheStatement | hbs.AST.SubExpression): Expression {
    if (node.hash)
      throw this.fault(node, "a helper takes its values in order, not by name=", "leave out the name=");
    if (node.params.length === 0 && node.type === "MustacheStatement")
      return this.expression(node.path as hbs.AST.Expression);
    const helper = (node.path as hbs.AST.PathExpression).original;
    return {
      helper: String(helper),
      with: node.params.map((param) => this.expression(param)),
      ...this.at(node),
    };
  }

  private expression(node: hbs.AST.Expression): Expression {
    switch (node.type) {
      case "PathExpression":
        return (node as hbs.AST.PathExpression).original;
      case "SubExpression":
        return this.call(node as hbs.AST.SubExpression);
      case "StringLiteral":
      case "NumberLiteral":
        return { says: String((node as hbs.AST.StringLiteral).original) };
      default:
        throw this.fault(node, "this cannot stand here", "give a name, or words in quotes");
    }
  }

  private fault(node: hbs.AST.Node, message: string, hint: string): TemplateError {
    return new TemplateError(message, { at: this.where(node), hint });
  }

  private at(node: hbs.AST.Node): { at?: At } {
    const at = this.places ? this.where(node) : undefined;
    return at ? { at } : {};
  }

  /** The opening tag of a node, or the node where it is one tag. */
  private where(node: hbs.AST.Node | undefined): At | undefined {
    if (!node) return undefined;
    const { start } = node.loc;
    const line = this.lines[start.line - 1] ?? "";
    const rest = line.slice(start.column);
    const closed = rest.startsWith("{{") ? rest.indexOf("}}") + 2 : node.loc.end.column - start.column;
    return [start.line, start.column + 1, Math.max(1, closed > 1 ? closed : rest.length)];
  }
}
