/** The front matter as a JSON Schema (2020-12), for editors that know one: keys, words, defaults, what must be there. Patterns are loose; the program is the judge. */
import { type AnySchema, type FieldMeta, isOpen, isRequired, type Kind, shapeOf } from "../meta.ts";
import { schemaAt } from "../one-field.ts";
import { ORIGINAL } from "../original/schema.ts";
import { FRONT_MATTER } from "../schema/recipe.ts";

type Json = string | number | boolean | readonly Json[] | { readonly [key: string]: Json };

const NUMBER = "-?[0-9½⅓⅔¼¾⅛⅜⅝⅞./ -]+";

/** What a text of each kind looks like; editors see YAML's own types, so numbers may stand where no unit is wanted. */
const SHAPES: Record<Kind, { readonly [key: string]: Json }> = {
  length: { type: "string", pattern: `^\\s*[-−+]?\\s*[0-9½⅓⅔¼¾⅛⅜⅝⅞.]` },
  number: { type: ["string", "number"], pattern: `^${NUMBER}$` },
  share: { type: ["string", "number"] },
  weight: { type: "string", pattern: "(?:g/m2|g/m²|gsm|oz/yd2|oz/yd²)\\s*$" },
  rate: { type: "string", pattern: "(?:per min(?:ute)?|/min)\\s*$" },
  version: { type: ["string", "number"] },
  year: { type: ["string", "integer"], pattern: "^[0-9]{4}$", minimum: 1000, maximum: 2100 },
  text: { type: ["string", "number"], maxLength: 200 },
  choice: { type: "string" },
  flag: { type: "boolean" },
  money: { type: ["string", "number"] },
  price: { type: "string", pattern: "(?:per |/ ?)(?:yd|yard|m|metre)\\s*$" },
  currency: { type: "string" },
};

function fieldSchema(meta: FieldMeta): Json {
  const { kind, about, example, options, byDefault, above, least, most, step } = meta;
  const limits = [
    ...(step ? [step === "whole" ? "whole" : "whole or half"] : []),
    ...(above ? [`more than ${above}`] : []),
    ...(least ? [`at least ${least}`] : []),
    ...(most ? [`at most ${most}`] : []),
  ];
  const usual = (byDefault ?? []).map((one) => (one.in === one.cm ? one.in : `${one.in} or ${one.cm}`));
  const words = [
    about,
    ...(limits.length > 0 ? [limits.join(", ")] : []),
    ...(usual.length > 0 ? [`usually ${usual.join("; ")}`] : []),
  ];
  return {
    description: words.join(". "),
    ...SHAPES[kind],
    ...(options && kind === "choice" ? { enum: [...options] } : {}),
    examples: [kind === "flag" ? example === "true" : example],
  };
}

function schemaOf(schema: AnySchema): Json {
  const shape = shapeOf(schema);
  if (shape.is === "field") return fieldSchema(shape.meta);
  const { about, most } = shape.meta;
  if (shape.is === "block" && shape.meta.anyOf !== undefined) return anyKeysOf(shape.meta.anyOf, about);
  if (shape.is === "list") {
    return {
      description: about,
      type: "array",
      minItems: 1,
      ...(most === undefined ? {} : { maxItems: most }),
      items: schemaOf(shape.item),
    };
  }
  const open = Object.entries(shape.entries).filter(([, entry]) => isOpen(shapeOf(entry)));
  const required = open.filter(([, entry]) => isRequired(shapeOf(entry))).map(([key]) => key);
  return {
    description: about,
    type: "object",
    properties: Object.fromEntries(open.map(([key, entry]) => [key, schemaOf(entry)])),
    ...(required.length > 0 ? { required } : {}),
    additionalProperties: false,
  };
}

/** Any keys of a block of the recipe, none of which must be there. */
function anyKeysOf(name: string, description: string): Json {
  const loose = (json: Json): Json => {
    if (typeof json !== "object") return json;
    if (Array.isArray(json)) return json.map(loose);
    const { required: _, ...rest } = json as { readonly [key: string]: Json };
    return Object.fromEntries(Object.entries(rest).map(([key, inner]) => [key, loose(inner)]));
  };
  const whole = loose(schemaOf(schemaAt(name))) as { readonly [key: string]: Json };
  return { ...whole, description };
}

/** The schema as the text of its file. */
export const jsonSchema = (): string => schemaFile(FRONT_MATTER, "The front matter of a garment recipe");

/** The same for the sheet of an original. */
export const originalSchema = (): string => schemaFile(ORIGINAL, "What was measured of an original garment");

function schemaFile(of: AnySchema, title: string): string {
  const whole = schemaOf(of) as { readonly [key: string]: Json };
  const schema = {
    $schema: "https://json-schema.org/draft/2020-12/schema",
    title,
    ...whole,
  };
  return `${JSON.stringify(schema, null, 1)}\n`;
}
