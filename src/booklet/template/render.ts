/** A template's tree and a context -> Markdown, with number marks in it. */
import { answer, type Context, holds, itemsOf, outermost, type Scope } from "./evaluate.ts";
import { printed } from "./printing.ts";
import { type At, type Template, TemplateError } from "./tree.ts";

export type { Context } from "./evaluate.ts";

/** Puts in a chapter by its name. */
export type Include = (name: string, at: At | undefined) => string;

/**
 * Renders.
 *
 * @param include what `{{> name}}` puts in; without it a chapter cannot be put in
 * @throws TemplateError where a value that is not there is to be printed, or a helper is given what it cannot take
 */
export function render(template: Template, context: Context, include?: Include): string {
  return new Rendering(context, include).parts(template, outermost(context));
}

class Rendering {
  private readonly context: Context;
  private readonly include: Include | undefined;

  constructor(context: Context, include: Include | undefined) {
    this.context = context;
    this.include = include;
  }

  parts(template: Template, scope: Scope): string {
    let text = "";
    for (const part of template) {
      if (typeof part === "string") text += part;
      else if ("print" in part) text += printed(part.print, scope, this.context, part.at);
      else if ("if" in part)
        text += this.parts(holds(answer(part.if, scope, this.context)) ? part.do : part.else, scope);
      else if ("each" in part) {
        const items = itemsOf(answer(part.each, scope, this.context), scope);
        text +=
          items.length === 0
            ? this.parts(part.else, scope)
            : items.map((item) => this.parts(part.do, item)).join("");
      } else if (this.include) text += this.include(part.chapter, part.at);
      else throw new TemplateError("a chapter cannot be put into another", { at: part.at });
    }
    return text;
  }
}
