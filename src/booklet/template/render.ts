/** A template's tree and a context -> Markdown, with number marks in it. */
import { MOST_PARTS } from "../../recipe/limits.ts";
import { answer, type Context, holds, itemsOf, outermost, type Scope } from "./evaluate.ts";
import { printed } from "./printing.ts";
import { type At, type Part, type Template, TemplateError } from "./tree.ts";

export type { Context } from "./evaluate.ts";

/** Takes a fault, so that the rest is rendered and every fault is found. */
export type OnFault = (fault: TemplateError) => void;

/** Puts in a chapter by its name. */
export type Include = (name: string, at: At | undefined) => string;

/**
 * Renders.
 *
 * @param include what `{{> name}}` puts in; without it a chapter cannot be put in
 * @param onFault takes each fault; without it the first is thrown
 * @throws TemplateError where a value that is not there is to be printed, or a helper is given what it cannot take
 */
export function render(template: Template, context: Context, include?: Include, onFault?: OnFault): string {
  return new Rendering(context, include, onFault).parts(template, outermost(context));
}

const TOO_MUCH = "too-much";

class Rendering {
  private readonly context: Context;
  private readonly include: Include | undefined;
  private readonly onFault: OnFault | undefined;
  private done = 0;

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
    if ("print" in part) return printed(part.print, scope, this.context, part.at);
    if ("if" in part)
      return this.parts(holds(answer(part.if, scope, this.context)) ? part.do : part.else, scope);
    if ("each" in part) {
      const items = itemsOf(answer(part.each, scope, this.context), scope);
      if (items.length === 0) return this.parts(part.else, scope);
      return items.map((item) => this.parts(part.do, item)).join("");
    }
    if (this.include) return this.include(part.chapter, part.at);
    throw new TemplateError("a chapter cannot be put into another", { at: part.at });
  }
}
