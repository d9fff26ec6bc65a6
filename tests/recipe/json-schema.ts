/** As much of JSON Schema as the schema of the front matter uses, so that it can be held against recipes. */

export interface Schema {
  readonly type?: string | readonly string[];
  readonly enum?: readonly unknown[];
  readonly pattern?: string;
  readonly maxLength?: number;
  readonly minimum?: number;
  readonly maximum?: number;
  readonly properties?: Readonly<Record<string, Schema>>;
  readonly required?: readonly string[];
  readonly additionalProperties?: boolean;
  readonly items?: Schema;
  readonly minItems?: number;
  readonly maxItems?: number;
}

const typeOf = (value: unknown): string =>
  Array.isArray(value)
    ? "array"
    : value === null
      ? "null"
      : typeof value === "object"
        ? "object"
        : typeof value;

/** What is wrong with a value, each as "path: what". */
export function faults(schema: Schema, value: unknown, path = ""): string[] {
  const types = typeof schema.type === "string" ? [schema.type] : (schema.type ?? []);
  const own = typeOf(value);
  const isOfType = types.some((type) => type === own || (type === "integer" && Number.isInteger(value)));
  if (types.length > 0 && !isOfType) return [`${path}: is ${own}`];
  const found: string[] = [];
  if (schema.enum && !schema.enum.includes(value)) found.push(`${path}: not one of the words`);
  if (typeof value === "string") {
    if (schema.pattern && !new RegExp(schema.pattern, "u").test(value)) found.push(`${path}: pattern`);
    if (schema.maxLength !== undefined && value.length > schema.maxLength) found.push(`${path}: too long`);
  }
  if (typeof value === "number") {
    if (schema.minimum !== undefined && value < schema.minimum) found.push(`${path}: too small`);
    if (schema.maximum !== undefined && value > schema.maximum) found.push(`${path}: too large`);
  }
  if (Array.isArray(value)) {
    if (value.length < (schema.minItems ?? 0) || value.length > (schema.maxItems ?? 1e9))
      found.push(`${path}: how many`);
    value.forEach((item, i) => void found.push(...faults(schema.items ?? {}, item, `${path}.${i}`)));
  } else if (own === "object") {
    const inside = value as Record<string, unknown>;
    for (const key of schema.required ?? [])
      if (!Object.hasOwn(inside, key)) found.push(`${path}.${key}: missing`);
    for (const [key, item] of Object.entries(inside)) {
      const entry = schema.properties?.[key];
      if (entry) found.push(...faults(entry, item, `${path}.${key}`));
      else if (schema.additionalProperties === false) found.push(`${path}.${key}: unknown`);
    }
  }
  return found;
}
