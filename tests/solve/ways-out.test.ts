/** When nothing fits the message offers ways out, each with its number: taken, each of them works. */
import { describe, expect, it } from "vitest";
import type { Message } from "../../src/recipe/message.ts";
import { type Keys, merged, recipeText, tried } from "../recipes.ts";

/** Seven 45 in breadths of thick wool into 25 1/2 in: 12 : 1 and 6.4 mm packed. */
const TOO_MUCH: Keys = { cloth: { thickness: "1.6 mm" }, skirt: { breadths: "7" } };

const errorOf = (keys: Keys): Message => {
  const error = tried(recipeText(keys)).messages.find(({ code }) => code === "nothing-fits");
  if (!error) throw new Error("something fits");
  return error;
};
const works = (keys: Keys): boolean => tried(recipeText(keys)).plan !== undefined;

describe("nothing fits", () => {
  const error = errorOf(TOO_MUCH);
  const hint = error.hint ?? "";

  it("says how much cloth into how much waist, what it needs and what fits", () => {
    expect(error.text).toMatch(/75 11\/16 in|of cloth has to go into 6 3\/8 in/);
    expect(error.text).toMatch(/needs \d+ pleats at least, and \d+ is all that fits/);
  });

  it("fewer breadths: the number offered works, half a breadth more does not", () => {
    const count = /take ([\d /]+) breadths instead/.exec(hint)?.[1]?.trim() ?? "";
    expect(count).toBe("4 1/2");
    expect(works(merged(TOO_MUCH, { skirt: { breadths: count } }))).toBe(true);
    expect(works(merged(TOO_MUCH, { skirt: { breadths: "5" } }))).toBe(false);
  });

  it("a deeper pitch: the one offered works", () => {
    const pitch = /deepest-pitch: ([\d /]+in)/.exec(hint)?.[1] ?? "";
    expect(works(merged(TOO_MUCH, { fullness: { "deepest-pitch": pitch } }))).toBe(true);
  });

  it("thinner cloth: what is offered works, printed as a length the recipe reads", () => {
    const thickness = /one layer of at most ([\d.]+ (?:in|mm))/.exec(hint)?.[1] ?? "";
    const shy = `${(Number.parseFloat(thickness) - 0.001).toFixed(3)} in`;
    expect(works(merged(TOO_MUCH, { cloth: { thickness: shy } }))).toBe(true);
  });

  it("a thinner stay, where there is one", () => {
    const stayed = merged(TOO_MUCH, {
      cloth: { thickness: "0.8 mm" },
      fullness: { stay: { thickness: "2 mm" } },
    });
    const stay = /a stay of at most ([\d.]+) in/.exec(errorOf(stayed).hint ?? "")?.[1] ?? "";
    const shy = `${(Number.parseFloat(stay) - 0.001).toFixed(3)} in`;
    expect(works(merged(stayed, { fullness: { stay: { thickness: shy } } }))).toBe(true);
  });

  it("a part in stacked pleats, where they take more than gauging can", () => {
    const thick = merged(TOO_MUCH, {
      wearer: { waist: "40 in" },
      cloth: { thickness: "3 mm" },
      skirt: { breadths: "4" },
    });
    const { hint: ways } = errorOf(thick);
    const zones = /zones: (\[.*\])/.exec(ways ?? "")?.[1];
    expect(zones).toBeDefined();
    expect(works(merged(thick, { fullness: { zones: zones ?? "" } }))).toBe(true);
  });
});
