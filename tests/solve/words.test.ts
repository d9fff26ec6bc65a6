/**
 * Words and places of messages that depend on the garment: words.json has a recipe a row, over the plain skirt, and what is said of
 * it. When a message comes at all stands in messages.json.
 */
import { expect, it } from "vitest";
import { type Keys, recipeText, tried } from "../recipes.ts";
import rows from "./words.json" with { type: "json" };

interface Row {
  readonly about: string;
  readonly keys: Keys;
  readonly code: string;
  /** The key the message is about. */
  readonly at?: string;
  readonly text?: string;
  readonly hint?: string;
  readonly expected?: string;
}

it.each((rows as readonly Row[]).map((row) => [row.about, row] as const))("%s", (_, row) => {
  const { messages } = tried(recipeText(row.keys));
  const said = messages.find(
    ({ code, path, text }) =>
      code === row.code && (!row.at || path === row.at) && (!row.text || text.includes(row.text)),
  );
  expect(said, JSON.stringify(messages, ["code", "path", "text", "hint", "expected"], 1)).toBeDefined();
  if (row.hint) expect(said?.hint).toContain(row.hint);
  if (row.expected) expect(said?.expected).toContain(row.expected);
  expect(said?.place?.line).toBeGreaterThan(0);
});
