/** One key of the recipe by its path: its shape, and what is wrong with a text that should stand there. */
import * as v from "valibot";
import { problemOf } from "./fields.ts";
import { type AnySchema, shapeOf } from "./meta.ts";
import type { Problem } from "./problem.ts";
import { FRONT_MATTER } from "./schema/recipe.ts";

/** The schema at a path; throws where the recipe has no such key. */
export function schemaAt(path: string): AnySchema {
  let schema: AnySchema = FRONT_MATTER;
  for (const key of path.split(".")) {
    const shape = shapeOf(schema);
    const next = shape.is === "block" && Object.hasOwn(shape.entries, key) ? shape.entries[key] : undefined;
    if (!next) throw new Error(`the recipe has no key "${path}"`);
    schema = next;
  }
  return schema;
}

/** Is there a key of one text at a path that goes through no list? */
export function hasField(path: string): boolean {
  try {
    return shapeOf(schemaAt(path)).is === "field";
  } catch {
    return false;
  }
}

/** What is wrong with a text at a path, by the reader of the recipe itself. */
export function problemAt(path: string, text: string): Problem | undefined {
  const result = v.safeParse(schemaAt(path), text);
  if (result.success) return undefined;
  const [issue] = result.issues;
  return (issue && problemOf(issue)) ?? { code: "empty", text: "nothing is written here" };
}
