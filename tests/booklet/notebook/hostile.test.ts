/** Whatever stands in a body: messages or a booklet, soon, and nothing reached that it should not. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { DEEPEST_LISTS, LONGEST_BODY } from "../../../src/recipe/limits.ts";
import { planOf } from "../../recipes.ts";
import { brief, pageOf, tryNotebook } from "./try.ts";

const PLAN = planOf();
/** Milliseconds; far above what any of these take on a machine with nothing else to do, which is a second or two. */
const SOON = 20_000;

const deep = (n: number, open: string, close: string, inside = ""): string =>
  open.repeat(n) + inside + close.repeat(n);

const HOSTILE: Record<string, string> = {
  "lists inside lists": deep(30, "{{#each @root.stations}}", "{{/each}}", "x"),
  "blocks nested too deeply": deep(200, "{{#if is.gauged}}", "{{/if}}"),
  "blocks nested thousands deep": "{{#if is.gauged}}".repeat(3_000),
  "a long chain of choices": `{{#if is.gauged}}x${"{{else if is.hoop}}y".repeat(2_500)}{{/if}}`,
  "lists as deep as may be": Array.from({ length: DEEPEST_LISTS }, (_, i) => `${" ".repeat(2 * i)}- x\n`)
    .join("")
    .repeat(66),
  "quotes as deep and as many as may be": `${"> ".repeat(DEEPEST_LISTS)}x\n\n`.repeat(200),
  "quotes nested too deeply": `${">".repeat(20_000)} x`,
  "lists nested deeply": Array.from({ length: 300 }, (_, i) => `${" ".repeat(2 * i)}- x`).join("\n"),
  "square brackets": "[".repeat(50_000),
  asterisks: "*a ".repeat(30_000),
  "an unclosed tag": `{{skirt.round ${"x".repeat(50_000)}`,
  "many tags": "{{skirt.round}} ".repeat(10_000),
  "many unknown names": "{{skirt.rund}} ".repeat(2_000),
  "many images": "![a](photos/a.png) ".repeat(5_000),
  "a longer text than is read": "x".repeat(300_000),
  "many workings": `\`\`\`workings\n${Array.from({ length: 5_000 }, (_, i) => `a${i} = a${i + 1}`).join("\n")}\n\`\`\``,
  "a long formula": `\`\`\`workings\na = ${"1+".repeat(5_000)}1\n\`\`\``,
};

describe("hostile notebooks", () => {
  it.each(Object.entries(HOSTILE))(
    "%s",
    (name, whole) => {
      const body = name.startsWith("a longer") ? whole : whole.slice(0, LONGEST_BODY);
      const begun = performance.now();
      const found = tryNotebook(body, PLAN);
      if (!found.messages.some(({ level }) => level === "error")) pageOf(found, PLAN);
      expect(performance.now() - begun).toBeLessThan(SOON);
      for (const { text } of found.messages) expect(text).not.toMatch(/undefined|\[object|NaN| {4}at /);
    },
    90_000,
  );

  it.each([
    "{{constructor}}",
    "{{skirt.constructor.name}}",
    "{{__proto__}}",
    "{{skirt.round.value.quantity}}",
    "{{@root.constructor}}",
    "{{../../skirt.round}}",
    "{{lookup skirt 'round'}}",
    "{{#with skirt}}{{round}}{{/with}}",
    "{{{skirt.round}}}",
    "{{&skirt.round}}",
    "{{* decorator}}",
    "{{#> hem}}x{{/hem}}",
    "{{> (lookup . 'hem')}}",
    "{{#each figures}}{{this}}{{/each}}",
    "{{#each garment}}{{this}}{{/each}}",
    "{{is}}",
    "<script>alert(1)</script>",
    "<img src=x onerror=alert(1)>",
    "[x](javascript:alert(1))",
    "![x](javascript:alert(1))",
    "![x](data:image/svg+xml;base64,AAAA)",
    "![x](photos/../recipe.md)",
    "![x](photos/..%2f..%2fa.png)",
    "![x](/photos/a.png)",
    "![x](photos/a.svg)",
    "\uE000waist.seam\uE0011 in\uE002",
    "\uE010" + "0\uE012",
    "a\u0000b",
  ])("%j is refused with its place", (body) => {
    const { messages } = tryNotebook(body, PLAN);
    const errors = messages.filter(({ level }) => level === "error");
    expect(errors.length).toBeGreaterThan(0);
    for (const error of errors) expect(brief([error])[0]).toMatch(/^1:\d+ [a-z-]+$/);
  });

  it("random texts of every construct never crash, and what is built is clean", () => {
    const piece = fc.oneof(
      fc.constantFrom(
        "{{skirt.round}}",
        "{{#if is.gauged}}",
        "{{else}}",
        "{{/if}}",
        "{{#each sections}}",
        "{{/each}}",
        "{{name}}",
        "{{@index}}",
        "\n{{> hem}}\n",
        "\n\n{{> the-rest}}\n\n",
        "{{> nothing}}",
        '{{figure "balance"}}',
        '{{in skirt.round "cm"}}',
        "{{ribbon}}",
        "\n```workings\nribbon = skirt.round + 1 in\n```\n",
        "\n```workings\nribbon = wide",
        "\n```\n",
        "\n## A title\n",
        "\n# Not a title\n",
        "\n| a | b |\n|---|---|\n| {{skirt.round}} | `x` |\n",
        "> **CAUTION.** x",
        "\n### Steps\n\n1. a\n1. b\n",
        "![a](photos/a.png)",
        "<b>",
        "\\{{x}}",
        "{{",
        "}}",
        "\r\n",
      ),
      fc.string({ maxLength: 12 }),
    );
    let built = 0;
    fc.assert(
      fc.property(fc.array(piece, { maxLength: 14 }), (pieces) => {
        const body = pieces.join(" ");
        const found = tryNotebook(body, PLAN);
        for (const { place, text } of found.messages) {
          expect(place?.line).toBeLessThanOrEqual(body.split("\n").length + 1);
          expect(text).not.toMatch(/undefined|\[object/);
        }
        if (found.messages.some(({ level }) => level === "error")) return;
        built += 1;
        for (const { markdown } of found.sections) expect(markdown).not.toMatch(/[\uE010-\uE0FF]/);
      }),
      { numRuns: 400 },
    );
    expect(built).toBeGreaterThan(20);
  }, 60_000);

  it("a name with one letter changed is found, also in a branch that is not taken", () => {
    const names = [...PLAN.values.keys()].filter((name) => !/\d/.test(name));
    fc.assert(
      fc.property(fc.constantFrom(...names), fc.nat(), fc.constantFrom("q", "Z", "x"), (name, at, letter) => {
        const index = at % name.length;
        const wrong = name.slice(0, index) + letter + name.slice(index + 1);
        if (wrong === name) return;
        for (const body of [
          `{{${wrong}}}`,
          `{{#if is.hoop}}{{${wrong}}}{{/if}}`,
          `{{#if ${wrong}}}x{{/if}}`,
          `{{#each ${wrong}}}x{{/each}}`,
          `{{counted ${wrong} "x"}}`,
          `{{#each warnings}}{{@root.${wrong}}}{{/each}}`,
        ]) {
          expect(
            tryNotebook(body, PLAN).messages.some(({ level }) => level === "error"),
            body,
          ).toBe(true);
        }
      }),
      { numRuns: 60 },
    );
  });
});
