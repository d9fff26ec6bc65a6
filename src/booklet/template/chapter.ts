/** The standard chapters: their trees, and one of them as Markdown. */
import templates from "plainwork:templates";
import { type Context, render } from "./render.ts";
import { type Template, TemplateError } from "./tree.ts";

/** The names of the standard chapters' templates. */
export const templateNames: readonly string[] = Object.keys(templates);

/** A standard chapter's tree. Throws TemplateError where there is none of this name. */
export function standardTemplate(name: string): Template {
  const template = Object.hasOwn(templates, name) ? templates[name] : undefined;
  if (template === undefined) throw new TemplateError(`there is no chapter "${name}"`);
  return template;
}

/** One standard chapter as Markdown, with number marks in it. Throws TemplateError. */
export function renderChapter(name: string, context: Context): string {
  const template = standardTemplate(name);
  try {
    return render(template, context);
  } catch (error) {
    if (!(error instanceof TemplateError)) throw error;
    throw new TemplateError(`in the chapter "${name}": ${error.message}`, { code: error.code });
  }
}
