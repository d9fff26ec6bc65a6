/**
 * Handlebars as the booklet uses it: escaping on, with a Markdown escape in place of the HTML one; standard chapters
 * compiled when the program was built; a guarded context that knows its names.
 */

import templates from "plainwork:templates";
import Handlebars from "handlebars/runtime";
import { nearest } from "../quantity/nearest.ts";
import { KindError, more, type Quantity } from "../quantity/quantity.ts";
import { NAMES } from "../solve/names.ts";
import { type Context, inUnits } from "./context.ts";
import { escapeMarkdown } from "./escape.ts";
import { Printed } from "./printed.ts";

/** A template asked for something that is not there. The message is fit to show. */
export class TemplateError extends Error {}

/** Handlebars calls this for every {{ }}. Set once: its runtime reads it from here when a template is made. */
Handlebars.Utils.escapeExpression = ((value: unknown): string => {
  if (value instanceof Printed) return value.toString();
  if (value instanceof Handlebars.SafeString) return value.toString();
  if (value === undefined || value === null)
    throw new TemplateError("a value that this garment does not have was to be printed");
  return escapeMarkdown(String(value));
}) as typeof Handlebars.Utils.escapeExpression;

const engine = Handlebars.create();

const WORDS = [
  "no",
  "one",
  "two",
  "three",
  "four",
  "five",
  "six",
  "seven",
  "eight",
  "nine",
  "ten",
  "eleven",
  "twelve",
];

const asText = (n: unknown): string => (n instanceof Printed ? n.toString() : escapeMarkdown(String(n)));
const bare = (n: unknown): string => (n instanceof Printed ? n.value.shown : String(n));

engine.registerHelper("figure", (name: string, { data }: Handlebars.HelperOptions) => {
  const title = figureTitle(name, data.root.figures);
  return new Handlebars.SafeString(`![${title}](figures/${name}.svg)`);
});
engine.registerHelper("counted", (n: unknown, noun: string) => {
  const plural = bare(n) === "1" ? noun : /(?:[cs]h|s|x)$/.test(noun) ? `${noun}es` : `${noun}s`;
  return new Handlebars.SafeString(`${asText(n)} ${plural}`);
});
engine.registerHelper("words", (n: unknown) => WORDS[Number(bare(n))] ?? bare(n));
engine.registerHelper("in", (n: unknown, unit: string) => {
  if (!(n instanceof Printed) || (unit !== "in" && unit !== "cm"))
    throw new TemplateError('{{in value "cm"}} takes a length and "in" or "cm"');
  return inUnits(n.value.quantity, unit);
});
engine.registerHelper("more", (a: unknown, b: unknown) => {
  const [x, y] = [a, b].map((n): Quantity | undefined =>
    n instanceof Printed ? n.value.quantity : undefined,
  );
  if (!x || !y) throw new TemplateError("(more a b) takes two values");
  try {
    return more(x, y);
  } catch (error) {
    throw error instanceof KindError ? new TemplateError(error.message) : error;
  }
});

/** The title a figure is named by in the text; the context carries those there are, under `figures`. */
function figureTitle(name: string, titles: Readonly<Record<string, string>>): string {
  const title = Object.hasOwn(titles, name) ? titles[name] : undefined;
  if (title !== undefined) return escapeMarkdown(title);
  const near = nearest(name, Object.keys(titles));
  throw new TemplateError(`there is no figure "${name}"${near ? `; did you mean "${near}"?` : ""}`);
}

/** Names a chapter may ask for although this garment has none (a value that does not apply). */
const KNOWN = new Set(Object.keys(NAMES).flatMap((name) => [name, name.split(".")[0] as string]));

/** Wraps the context so that a name nobody knows is an error, also inside #if, #each and helper arguments. */
export function guard(context: Context, path = ""): Context {
  return new Proxy(context, {
    get(target, key, self) {
      if (typeof key !== "string" || Object.hasOwn(target, key)) {
        const value = Reflect.get(target, key, self);
        const plainObject =
          typeof value === "object" && value !== null && !Array.isArray(value) && !(value instanceof Printed);
        return plainObject && typeof key === "string" ? guard(value as Context, `${path}${key}.`) : value;
      }
      if (KNOWN.has(`${path}${key}`) || OPTIONAL.has(`${path}${key}`) || key in Object.prototype)
        return undefined;
      const near = nearest(`${path}${key}`, [
        ...KNOWN,
        ...Object.keys(target).map((name) => `${path}${name}`),
      ]);
      throw new TemplateError(`there is no value "${path}${key}"${near ? `; did you mean "${near}"?` : ""}`);
    },
  });
}

/** Measures a recipe may leave out. */
const OPTIONAL = new Set([
  "cloth.thickness",
  "cloth.weight",
  "cloth.repeat",
  "wearer.hoop",
  "attach.made",
  "fullness.trial",
  "fullness.stay",
  "fullness.pleatsPerInch",
  "skirt.turnDown",
  "skirt.breadths",
  "skirt.roundWished",
  "attach.opening",
  "attach.piping",
  "attach.band.lap",
  "garment.stayDepth",
  "garment.openSide",
  "garment.otherSide",
  "skirt.tucks",
  "skirt.flounces",
]);

const compiled = new Map<string, Handlebars.TemplateDelegate>();

/** The names of the standard chapters' templates. */
export const templateNames: readonly string[] = Object.keys(templates);

/** One standard chapter as Markdown, with number marks in it. Throws TemplateError. */
export function renderChapter(name: string, guarded: Context): string {
  let template = compiled.get(name);
  if (!template) {
    const spec = templates[name];
    if (spec === undefined) throw new TemplateError(`there is no chapter "${name}"`);
    template = engine.template(spec as TemplateSpecification);
    compiled.set(name, template);
  }
  try {
    return template(guarded);
  } catch (error) {
    if (error instanceof TemplateError) throw new TemplateError(`in the chapter "${name}": ${error.message}`);
    throw error;
  }
}
