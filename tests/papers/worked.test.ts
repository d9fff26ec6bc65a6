/** The worked changes of DEVELOPERS.md fit the sources as they are; the long run makes them all. */
import { existsSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { ROOT, textOf } from "./papers.ts";
import { allMade, made, worked } from "./worked.ts";

const PAPER = "DEVELOPERS.md";

describe("worked changes", () => {
  it("all find their places, one on top of the other", () => {
    expect(worked(PAPER)).toHaveLength(6);
    expect(allMade(PAPER, textOf).size).toBeGreaterThan(10);
  });

  it("begin new files only where there is none", () => {
    const fresh = worked(PAPER)
      .flat()
      .filter(({ isNew }) => isNew);
    expect(fresh.filter(({ file }) => existsSync(join(ROOT, file)))).toEqual([]);
  });

  it("a printed value takes three files", () => expect(worked(PAPER)[0]).toHaveLength(3));

  it("a place that is gone, or not the only one, is told", () => {
    const change = { file: "a.ts", isNew: false, places: [{ from: "x\n", to: "y\n" }] };
    expect(made("a\nx\n", change)).toBe("a\ny\n");
    expect(() => made("a\n", change)).toThrow("a.ts has no such place:\nx\n");
    expect(() => made("x\nx\n", change)).toThrow("a.ts has several such places:\nx\n");
  });
});
