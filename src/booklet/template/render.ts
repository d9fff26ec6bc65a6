/** A template's tree and a context -> Markdown, with number marks in it. Makes no code; reads own properties only. */
import { allMarked } from "../marks.ts";
import { Printed } from "../printed.ts";
import { HELPERS, Ready } from "./helpers.ts";
import { type At, type Expression, type Part, type Template, TemplateError } from "./tree.ts";

/** Names to values: printed values, words, flags, lists of the same. */
export type Context = Readonly<Record<string, unknown>>;

/** Takes a fault, so that the rest is rendered and every fault is found. */
export type OnFault = (fault: TemplateError) => void;

/** Puts in a chapter by its name. */
export type Include = (name: string, at: At | undefined) => string;

/** What a name stands in: the item of a list, the whole, and the item's place in its list. */
interface Scope {
  readonly here: unknown;
  readonly outer: Scope | undefined;
  readonly index: number;
  readonly count: number;
}

/**
 * Renders.
 *
 * @param include what `{{> name}}` puts in; without it a chapter cannot be put in
 * @param onFault takes each fault; without it the first is thrown
 * @throws TemplateError where a value that is not there is to be printed, or a helper is given what it cannot take
 */
export function render(
  template: Template,
  context: Context,
  include?: Include,
  onFault?: OnFault | undefined,
): string {
  return new Rendering(context, include, onFault).parts(template, {
    here: context,
    outer: undefined,
    index: 0,
    count: 1,
  });
}

/** More parts than this are not rendered: lists inside lists could go on for ever. */
const MOST_PARTS = 200_000;
const TOO_MUCH = "too-much";

class Rendering {
  private done = 0;
  private readonly context: Context;
  private readonly include: Include | undefined;
  private readonly onFault: OnFault | undefined;

  constructor(context: Context, include: Include | undefined, onFault: OnFault | undefined) {
    this.context = context;
    this.include = include;
    this.onFault = onFault;
  }

  parts(template: Template, scope: Scope): string {
    let text = "";
    for (const part of template) {
      this.done += 1;
      if (this.done > MOST_PARTS) {
        throw new TemplateError("this grows too large: lists inside lists", {
          code: TOO_MUCH,
          hint: "take an {{#each}} out of the other",
        });
      }
      try {
        text += typeof part === "string" ? part : this.part(part, scope);
      } catch (error) {
        if (!this.onFault || !(error instanceof TemplateError) || error.code === TOO_MUCH) throw error;
        this.onFault(error);
      }
    }
    return text;
  }

  private part(part: Exclude<Part, string>, scope: Scope): string {
    if ("print" in part) return this.printed(part.print, scope, part.at);
    if ("if" in part) return this.parts(holds(this.value(part.if, scope)) ? part.do : part.else, scope);
    if ("each" in part) return this.list(this.value(part.each, scope), part.do, part.else, scope);
    if (this.include) return this.include(part.chapter, part.at);
    throw new TemplateError("a chapter cannot be put into another", { at: part.at });
  }

  private list(value: unknown, each: Template, none: Template, scope: Scope): string {
    if (!Array.isArray(value) || value.length === 0) return this.parts(none, scope);
    return value
      .map((here: unknown, index) => this.parts(each, { here, outer: scope, index, count: value.length }))
      .join("");
  }

  private printed(expression: Expression, scope: Scope, at: At | undefined): string {
    const value = this.value(expression, scope);
    if (value instanceof Printed || value instanceof Ready) return value.toString();
    if (typeof value === "string" || typeof value === "number") return allMarked(String(value));
    const name = typeof expression === "string" ? ` "${expression}"` : "";
    if (value === undefined || value === null || value === "")
      throw new TemplateError(`this garment has no value${name} to print`, {
        at,
        code: "no-value",
        hint: `print it inside {{#if${name.replaceAll('"', "")}}} … {{/if}}`,
      });
    throw new TemplateError(
      `${name.trim() || "this"} is a ${Array.isArray(value) ? "list" : "block of values or a flag"}, not a value to print`,
      {
        at,
        code: "not-printable",
      },
    );
  }

  private value(expression: Expression, scope: Scope): unknown {
    if (typeof expression === "string") return lookUp(expression, scope, this.context);
    if ("says" in expression) return expression.says;
    const helper = Object.hasOwn(HELPERS, expression.helper) ? HELPERS[expression.helper] : undefined;
    if (!helper) throw new TemplateError(`there is no helper "${expression.helper}"`, { at: expression.at });
    try {
      return helper.run(
        expression.with.map((part) => this.value(part, scope)),
        this.context,
      );
    } catch (error) {
      if (!(error instanceof TemplateError) || error.at || !expression.at) throw error;
      const { message, code, hint } = error;
      throw new TemplateError(message, { at: expression.at, code, ...(hint ? { hint } : {}) });
    }
  }
}

/** As in Handlebars: nothing, no, the empty text and the empty list do not hold. */
const holds = (value: unknown): boolean => Boolean(value) && !(Array.isArray(value) && value.length === 0);

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
  return follow(at?.here, rest.replace(/^(?:this\.|\.\/)/, ""));
}

function follow(value: unknown, path: string): unknown {
  let at = value;
  for (const step of path.split(".")) {
    if (typeof at !== "object" || at === null || at instanceof Printed || !Object.hasOwn(at, step))
      return undefined;
    at = (at as Record<string, unknown>)[step];
  }
  return at;
}
