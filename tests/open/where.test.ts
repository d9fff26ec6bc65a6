/** Where the cursor stands, for what is offered there. */
import { describe, expect, it } from "vitest";
import { inFront } from "../../src/open/page/complete/where.ts";
import { difference } from "../../src/open/page/difference.ts";
import { lineEndsOf } from "../../src/open/page/line-ends.ts";
import cases from "./where.json" with { type: "json" };

describe("where the cursor stands in the measures", () => {
  it.each(cases)("$what", ({ text, block, key, written, siblings }) => {
    const [before = "", after = ""] = text.split("|");
    const found = inFront(before.split("\n"), after.split("\n").slice(1));
    if (block === null) {
      expect(found).toBeUndefined();
      return;
    }
    expect(found).toMatchObject({ block, key, written });
    if (siblings) expect([...(found?.siblings ?? [])].sort()).toEqual(siblings);
  });
});

describe("a file's line ends", () => {
  it.each(["a\nb\n", "a\r\nb\r\n", "a\r\nb\n", "a\rb", "", "\uFEFF---\r\n"])(
    "%j comes back as it was",
    (text) => {
      const ends = lineEndsOf(text);
      expect(ends.written(ends.read(text))).toBe(text);
    },
  );

  it("writes new lines as the file's own are", () => {
    const ends = lineEndsOf("a\r\nb\r\n");
    expect(ends.written(`${ends.read("a\r\nb\r\n")}c\n`)).toBe("a\r\nb\r\nc\r\n");
  });
});

describe("the stretch in which texts differ", () => {
  it.each([
    ["abc", "abc", undefined],
    ["abc", "abxc", { from: 2, to: 2, insert: "x" }],
    ["aa", "aaa", { from: 2, to: 2, insert: "a" }],
    ["", "x", { from: 0, to: 0, insert: "x" }],
    ["one two", "one", { from: 3, to: 7, insert: "" }],
  ])("of %j and %j", (before, after, change) => {
    expect(difference(before, after)).toEqual(change);
  });
});
