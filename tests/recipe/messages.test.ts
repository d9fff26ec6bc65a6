/** The list of messages: what the sources say and what the list has are the same, and no page carries what they mean. */
import { readdirSync, readFileSync } from "node:fs";
import { inflateRawSync } from "node:zlib";
import { core } from "plainwork:page";
import { describe, expect, it } from "vitest";
import { GROUPS } from "../../src/recipe/messages/list.ts";
import { messagesReadme } from "../../src/recipe/reference/messages.ts";
import atBounds from "../solve/messages.json" with { type: "json" };

const SRC = new URL("../../src/", import.meta.url);
const LISTS = /^recipe\/(?:messages|reference)\//;
const sources = readdirSync(SRC, { recursive: true, encoding: "utf8" })
  .map((name) => name.replaceAll("\\", "/"))
  .filter((name) => name.endsWith(".ts") && !LISTS.test(name))
  .map((name) => readFileSync(new URL(name, SRC), "utf8"))
  .join("\n");
const listed = GROUPS.flatMap(({ codes }) => Object.entries(codes));
const codes = listed.map(([code]) => code);

/** Where a code stands in the sources: after its key, or among the first words given to what says it. */
const SAID = [
  /\bcode(?:: | = )"[a-z-]+"/g,
  /\b(?:code|kind)(?:: | = )[^`\n;]* \? "[a-z-]+" : "[a-z-]+"/g,
  /\b(?:say|refuse|warning|bad|failed|refusal|problem)\((?:\s*(?:"[^"]*"|`[^`]*`|[\w.?[\] ]+),){0,2}\s*"[a-z-]+"/g,
  /^const TOO_MUCH = "[a-z-]+"/gm,
];
const WORD = /"([a-z-]+)"/g;
/** Codes that are put together: `${kind}-too-high`. */
const MADE = /\bcode(?:: | = )`([^`]*\$\{[^`]*)`/g;

describe("the list of messages", () => {
  const places = SAID.flatMap((pattern) => [...sources.matchAll(pattern)].map(([place]) => place));
  const found = new Set(places.flatMap((place) => [...place.matchAll(WORD)].map(([, code]) => code)));
  const made = [...sources.matchAll(MADE)].map(
    ([, text]) => new RegExp(`^${text?.replace(/\$\{[^}]*\}/g, "[a-z]+")}$`),
  );

  it("has each code once", () => expect(codes.filter((code, i) => codes.indexOf(code) !== i)).toEqual([]));

  it.each(codes)("%s is said somewhere in the sources", (code) =>
    expect(found.has(code) || made.some((pattern) => pattern.test(code))).toBe(true),
  );

  it("has every code that the sources say", () => {
    const literal = [...sources.matchAll(/\bcode: "([a-z-]+)"/g)].map(([, code]) => code ?? "");
    expect(literal.length).toBeGreaterThan(150);
    expect(literal.filter((code) => !codes.includes(code))).toEqual([]);
    for (const pattern of made) expect(codes.some((code) => pattern.test(code))).toBe(true);
  });

  it("has each level that a message is seen at its bound with", () => {
    const levels = new Map(listed.map(([code, said]) => [code, said.levels ?? ["error"]]));
    const other = atBounds.filter(({ code, level }) => !levels.get(code)?.includes(level as "note"));
    expect(other.map(({ code, level }) => `${code}: ${level}`)).toEqual([]);
  });

  it.each(listed)("%s is told in a sentence each", (_, { means, do: instead }) => {
    for (const text of [means, instead]) expect(text).toMatch(/^[A-Z<>][^\n]{5,200}\.$/);
  });
});

it("its README is made of it", () => {
  const README = readFileSync(new URL("recipe/messages/README.md", SRC), "utf8");
  expect(README === messagesReadme(), "the list is stale: npm run reference").toBe(true);
});

it("a booklet's page carries none of what they mean", () => {
  const text = inflateRawSync(Buffer.from(core, "base64")).toString("utf8");
  expect(text).toContain("no-lengths");
  expect(listed.filter(([, { means }]) => text.includes(means)).map(([code]) => code)).toEqual([]);
});
