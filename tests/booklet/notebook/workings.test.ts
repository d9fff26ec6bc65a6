/** Workings: exact, in any order, every fault with its place; what is shown is what was evaluated. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readFormula } from "../../../src/quantity/formula.ts";
import { exact, planJson, unitOf } from "../../../src/solve/json.ts";
import { planOf } from "../../recipes.ts";
import { brief, tryNotebook } from "./try.ts";
import cases from "./workings.json" with { type: "json" };

const block = (lines: string): string => `\`\`\`workings\n${lines}\n\`\`\`\n`;
const PLAN = planOf();

describe("workings", () => {
  it.each(cases.results as [string, string, string, string][])(
    "%j: %s = %s",
    (lines, name, wanted, shown) => {
      const { messages, worked } = tryNotebook(`${block(lines)}\n{{> the-rest}}`);
      expect(messages).toEqual([]);
      const value = worked.plan.values.get(name);
      if (!value) throw new Error(`${name} was not worked out`);
      const unit = unitOf(value.quantity);
      expect(`${exact(value.quantity)}${unit === "1" ? "" : ` ${unit}`}`).toBe(wanted);
      expect(value.shown).toBe(shown);
      expect(value.source).toBe("workings");
    },
  );

  it.each(cases.faults as [string, string][])("%j says %s", (lines, wanted) => {
    expect(brief(tryNotebook(block(lines)).messages)).toContain(wanted);
  });

  it("a circle is shown as it runs", () => {
    const [message] = tryNotebook(block("a = b\nb = c + 1\nc = a * 2")).messages;
    expect(message?.text).toContain("a -> b -> c -> a");
  });

  it("every fault is told, and none twice", () => {
    const lines = ["a = skirt.rund", "b = a + 1", "c = 2 +", "d = 1 in + 1", "e = f", "f = e"].join("\n");
    expect(brief(tryNotebook(block(lines)).messages)).toEqual([
      "2:5 unknown-name",
      "4:7 formula",
      "6:1 circle",
      "5:10 kind",
    ]);
  });

  it("does not matter in which order lines and blocks stand", () => {
    const lines = ["a = b + c", "b = 2 in", "c = d * 3", "d = b / 2", "e = a < d"];
    fc.assert(
      fc.property(
        fc.shuffledSubarray(lines, { minLength: lines.length }),
        fc.nat({ max: lines.length }),
        (order, cut) => {
          const body = `${block(order.slice(0, cut).join("\n"))}\n{{a}}\n\n${block(order.slice(cut).join("\n"))}`;
          const { worked, messages } = tryNotebook(`${body}\n{{> the-rest}}`);
          expect(messages).toEqual([]);
          expect(worked.plan.values.get("a")?.shown).toBe("5 in");
          expect(worked.answers.get("e")).toBe(false);
        },
      ),
      { numRuns: 15 },
    );
  });

  it("the formula that is shown is the formula that was used", () => {
    const { worked } = tryNotebook(block("a = skirt.round * 11/10 + 3 in\nb = floor(a / (9 in))"));
    for (const name of ["a", "b"]) {
      const value = worked.plan.values.get(name);
      const again = readFormula(value?.how ?? "").evaluate((of) => worked.plan.values.get(of)?.quantity);
      expect(again).toEqual(value?.quantity);
    }
    expect(worked.plan.values.get("b")?.inNumbers).toBe("floor(193 5/16 in / (9 in))");
  });

  it("stand in plan.json, in the table, in prose and in the chapter of workings; the plan itself is not changed", () => {
    const found = tryNotebook(`${block("bows = 4   # one a seam")}\n{{bows}} bows\n\n{{> the-rest}}`, PLAN);
    expect(PLAN.values.has("bows")).toBe(false);
    expect(planJson(found.worked.plan, "0").values.bows).toEqual({
      exact: "4",
      unit: "1",
      shown: "4",
      how: "4",
    });
    const text = (name: string): string =>
      found.sections.find((section) => section.name === name)?.markdown ?? "";
    expect(text("note-1")).toMatch(/\| \*\*bows\*\*: one a seam \| .*4.* \| 4 \|/);
    expect(text("workings")).toMatch(/bows.*one a seam.*workings/);
  });

  it("a comparison is asked for in the text, and not printed", () => {
    const body = (use: string): string => `${block("enough = skirt.round < 9 yd")}\n${use}\n\n{{> the-rest}}`;
    const asked = tryNotebook(body("{{#if enough}}Enough.{{else}}Buy more.{{/if}}"));
    expect(asked.sections[0]?.markdown).toContain("Enough.");
    expect(brief(tryNotebook(body("{{enough}}")).messages)).toEqual(["5:3 not-printable"]);
  });

  it("a block that is not closed, misnamed, or inside a list is an error", () => {
    expect(brief(tryNotebook("```workings\na = 1\n").messages)).toContain("1:1 open-workings");
    expect(brief(tryNotebook("```working\na = 1\n```\n").messages)).toContain("1:1 workings-line");
    expect(brief(tryNotebook("- ```workings\n  a = 1\n  ```\n").messages)).toContain("1:1 workings-line");
  });

  it("inside a choice a block is worked out all the same, and shown only where it stands", () => {
    const body = `{{#if is.hoop}}\n\n${block("a = 2 in")}\n{{/if}}\n\n{{a}}\n\n{{> the-rest}}`;
    const { sections, messages } = tryNotebook(body);
    expect(messages).toEqual([]);
    expect(sections[0]?.markdown).toContain("2 in");
    expect(sections[0]?.markdown).not.toContain("|");
  });
});
