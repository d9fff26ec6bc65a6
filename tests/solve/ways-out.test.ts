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

  // 7 x 44 1/4 - 7 = 302 3/4, a quarter of it 75 11/16; 6 3/8 in = 161.925 mm hold 25 walls twice 3.2 mm.
  it("the numbers by hand: 75 11/16 / 25 = 3.03, up to 3 1/16; 161.925 / 38 / 4 = 1.0653 mm", () => {
    expect(hint).toContain("deepest-pitch: 3 1/16 in");
    expect(hint).toContain("one layer of at most 0.042 in");
    expect(hint).not.toContain("lining");
    expect(hint).not.toContain("stay");
    // 5 : 1 in pleats is less than 2 in to 6.4 mm, 7.9 : 1, in gauging.
    expect(hint).not.toContain("knife");
  });
  it("in centimetres: 25 pleats of 192.2463 / 25 = 7.69 cm, up to 7.7; 39 of 5 cm: 161.925 / 39 / 4 = 1.038 mm", () => {
    const { hint: ways } = errorOf(merged(TOO_MUCH, { show: "cm" }));
    expect(ways).toContain("deepest-pitch: 7.7 cm");
    expect(ways).toContain("one layer of at most 1.04 mm");
  });
  const lined = (thickness: string): string =>
    errorOf(merged(TOO_MUCH, { lining: { to: "turned", width: "40 in", thickness } })).hint ?? "";
  it("behind a lining of twice 0.3 mm: (2.1306 - 0.6) / 2 = 0.7653 mm of cloth, or the lining left out", () => {
    expect(lined("0.3 mm")).toContain("one layer of at most 0.03 in");
    expect(lined("0.3 mm")).toContain("keep the lining out of the pleats");
  });
  it("behind one of twice 1.2 mm no cloth is thin enough", () => {
    expect(lined("1.2 mm")).not.toContain("one layer of at most");
    expect(lined("1.2 mm")).toContain("keep the lining out of the pleats");
  });
  it("a stay of 2.1306 - 1.6 = 0.5306 mm behind cloth of 0.8 mm; none behind cloth of 1.6", () => {
    const stayed = (thickness: string): string =>
      errorOf(merged(TOO_MUCH, { cloth: { thickness }, fullness: { stay: { thickness: "2 mm" } } })).hint ??
      "";
    expect(stayed("0.8 mm")).toContain("a stay of at most 0.021 in, or none");
    expect(stayed("0.8 mm")).not.toContain("thinner cloth");
    expect(stayed("1.6 mm")).toContain("one layer of at most 0.042 in and no stay");
  });
  it("3 3/4 in of each half in pleats: 8 1/8 in hold 17 walls of 12 mm, and 67 3/4 / 4 in want 17; 3 in less than 18", () => {
    const thick = merged(TOO_MUCH, {
      wearer: { waist: "40 in" },
      cloth: { thickness: "3 mm" },
      skirt: { breadths: "4" },
    });
    expect(errorOf(thick).hint).toContain(
      "zones: [{set: knife, waist: 3 3/4 in, face: 3/4 in, depth: 1 1/2 in}, {set: gauged}]",
    );
  });
  it("no pleats are offered beside zones of one's own", () => {
    const own = merged(TOO_MUCH, {
      wearer: { waist: "40 in" },
      cloth: { thickness: "3 mm" },
      skirt: { breadths: "4" },
      fullness: { zones: "[{set: flat, waist: 1 in}, {set: gauged}]" },
    });
    expect(errorOf(own).hint).not.toContain("stacked knife pleats");
  });
  it("a sliver between a flat front and the opening still gets a way out: two pleats' room, and it works", () => {
    const sliver = (flat: string): Keys => ({
      wearer: { waist: "25 1/2 in" },
      fullness: {
        trial: '{cloth: "21 in", pleats: "40", closes-to: "2.52 in"}',
        zones: `[{set: flat, waist: "${flat}"}, {set: gauged}]`,
      },
      attach: { opening: { at: "front-left", "from-centre": "6 in" } },
    });
    // 6 - 5 15/16 = 1/16 in is no room for a pleat of 2.52 / 40 = 0.063 in; two take 0.126, up to 3/16.
    expect(errorOf(sliver("5 15/16 in")).hint).toContain("give this part 3/16 in of the waist at least");
    expect(works(sliver("5 13/16 in"))).toBe(true);
  });
  it("once a trial is sewn nothing is said of thickness: it says how close is close", () => {
    const sewn = merged(TOO_MUCH, {
      fullness: { trial: '{cloth: "21 in", pleats: "10", closes-to: "5 in"}' },
    });
    expect(errorOf(sewn).hint).not.toContain("one layer");
  });
});
