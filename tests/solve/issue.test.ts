/** Worked examples that must come out to the sixteenth. The numbers are literals; the rules are in src/solve/README.md. */
import { describe, expect, it } from "vitest";
import { sum, toInches } from "../../src/quantity/quantity.ts";
import { exact } from "../../src/solve/json.ts";
import { exactOf, type Keys, planOf, recipeText, tried } from "../recipes.ts";

describe("four 45 in breadths, selvedge 3/8, seams 1/2, into 25 1/2 in", () => {
  const plan = planOf();
  it("give a round of 173 in", () => {
    expect(exactOf(plan, "skirt.round")).toBe("173");
  });
  it("lengths 40 / 41 / 42 1/2, 2 in off the floor: breadths of 42 in, and the turn-downs of the curve", () => {
    expect(exactOf(plan, "breadths.cut")).toBe("42");
    expect(plan.balance.slice(0, 5).map(({ turnDown }) => exact(turnDown))).toEqual([
      "7/2",
      "63/20",
      "5/2",
      "8/5",
      "1",
    ]);
  });
  it.each(["in", "cm"])("every section's bites sum to its cloth exactly (shown in %s)", (show) => {
    for (const section of planOf({ show }).gauged) {
      const [first, ...rest] = section.bites;
      if (!first) throw new Error("no bites");
      expect(toInches(sum(first, ...rest)).toFraction()).toBe(exact(section.cloth));
    }
  });
});

describe("unlike sides", () => {
  const plan = planOf({
    wearer: { "waist-to-floor": { side: null, left: "41 1/2 in", right: "40 1/2 in" } },
  });
  it("each half has its own curve; eight stations go round by the left", () => {
    expect(plan.balance.map(({ station }) => station)).toEqual([
      "centre front",
      "left front eighth",
      "left side",
      "left back eighth",
      "centre back",
      "right back eighth",
      "right side",
      "right front eighth",
    ]);
    const at = (name: string) =>
      exact(plan.balance.find(({ station }) => station === name)?.turnDown ?? plan.recipe.tape);
    expect(at("left side")).toBe("2");
    expect(at("right side")).toBe("3");
    expect(at("left front eighth")).not.toBe(at("right front eighth"));
  });
});

describe("seams of the ring", () => {
  const stations = (keys: Parameters<typeof planOf>[0]) =>
    planOf(keys).seams.map(({ station, kind }) => `${exact(station)} ${kind}`);
  it("four breadths: seams at centre front, sides, centre back, which is the placket", () => {
    expect(stations({})).toEqual(["0 seam", "1/4 seam", "1/2 placket", "3/4 seam"]);
  });
  it("five: a breadth in front, a seam at centre back", () => {
    expect(stations({ skirt: { breadths: "5" } })).toEqual([
      "1/10 seam",
      "3/10 seam",
      "1/2 placket",
      "7/10 seam",
      "9/10 seam",
    ]);
  });
  it("four with a breadth in front: no seam at centre back, so a faced slit", () => {
    expect(stations({ skirt: { "centre-front": "breadth" } })).toEqual([
      "1/8 seam",
      "3/8 seam",
      "1/2 slit",
      "5/8 seam",
      "7/8 seam",
    ]);
  });
  it("three and a half: the half in front, a whole breadth behind, a faced slit", () => {
    const plan = planOf({ skirt: { breadths: "3 1/2" } });
    expect(plan.breadths.map(({ whole }) => whole)).toEqual([false, true, true, true]);
    expect(plan.seams.map(({ kind }) => kind)).toEqual(["seam", "seam", "slit", "seam", "seam"]);
    expect(plan.opening.kind).toBe("slit");
  });
  it("four and a half: the half in front, a seam at centre back", () => {
    expect(
      planOf({ skirt: { breadths: "4 1/2" } })
        .seams.filter(({ kind }) => kind === "placket")
        .map(({ station }) => exact(station)),
    ).toEqual(["1/2"]);
  });
  it("an opening within 1 in of a seam goes to it, and all follows it", () => {
    const plan = planOf({ attach: { opening: { at: "front-left", "from-centre": "6 in" } } });
    expect(plan.opening).toMatchObject({ kind: "seam" });
    expect(exact(plan.opening.share)).toBe("1/4");
    expect(plan.messages.map(({ code }) => code)).toContain("opening-moved");
  });
  it("an opening inside a section ends it there, on that side only, cloth in proportion", () => {
    const plan = planOf({ attach: { opening: { at: "front-left", "from-centre": "3 in" } } });
    expect(plan.sections.map(({ name, half }) => `${half}: ${name}`)).toEqual([
      "left: left front quarter, up to the opening",
      "left: left front quarter, after the opening",
      "left: left back quarter",
      "right: right back quarter",
      "right: right front quarter",
    ]);
    expect(exact(plan.gauged[0]?.waist ?? plan.recipe.tape)).toBe("3");
    expect(exact(plan.gauged[0]?.cloth ?? plan.recipe.tape)).toBe("346/17");
  });
});

describe("a wished round", () => {
  it("takes the fewest half breadths that reach it, and prints the round really got", () => {
    const plan = planOf({ skirt: { breadths: null, round: "165 in" } });
    expect(exactOf(plan, "breadths.count")).toBe("4");
    expect(exactOf(plan, "skirt.round")).toBe("173");
    expect(exactOf(planOf({ skirt: { breadths: null, round: "150 in" } }), "breadths.count")).toBe("7/2");
  });
});

describe("unsewn length of the opening, from the cut top (practice: the turn-down eats it)", () => {
  const keys = {
    wearer: { waist: "27 1/2 in", "waist-to-floor": { front: "40 in", side: "41 in", back: "42 1/2 in" } },
    cloth: { width: "44 in", selvedge: "1/4 in" },
  };
  it("front-left at 5 in: 13 1/8", () => {
    const plan = planOf({ ...keys, attach: { opening: { at: "front-left", "from-centre": "5 in" } } });
    expect(plan.values.get("placket.unsewn")?.shown).toBe("13 1/8 in");
    expect(plan.opening.kind).toBe("slit");
  });
  it("centre front 13 3/4, centre back 11 1/4", () => {
    expect(exactOf(planOf({ ...keys, attach: { opening: { at: "centre-front" } } }), "placket.unsewn")).toBe(
      "55/4",
    );
    expect(exactOf(planOf(keys), "placket.unsewn")).toBe("45/4");
  });
});

describe("a made edge", () => {
  it("17: 27 1/4 for 27 1/2: spacing changes, bites do not", () => {
    const keys = { wearer: { waist: "27 1/2 in" } };
    const before = planOf(keys);
    const after = planOf({ ...keys, attach: { made: "27 1/4 in" } });
    expect(after.gauged.map(({ bites }) => bites.map(exact))).toEqual(
      before.gauged.map(({ bites }) => bites.map(exact)),
    );
    expect(exact(after.gauged[0]?.spacing ?? after.recipe.tape)).not.toBe(
      exact(before.gauged[0]?.spacing ?? before.recipe.tape),
    );
    expect(exactOf(after, "waist.seam")).toBe("109/4");
    expect(exactOf(after, "band.length")).toBe(exactOf(before, "band.length"));
  });
});

describe("the sewn trial: 18 pleats in 21 1/4 in of four 44 in breadths, for a waist seam of 27 1/2 in", () => {
  const keys = {
    wearer: { waist: "27 1/2 in" },
    cloth: { width: "44 in", selvedge: "1/4 in", thickness: "0.25 mm" },
  };
  const withTrial = (closesTo: string, fullness = {}) =>
    planOf({
      ...keys,
      fullness: { ...fullness, trial: { cloth: "21 1/4 in", pleats: "18", "closes-to": closesTo } },
    });
  const counts = (plan: ReturnType<typeof planOf>) => plan.gauged.map(({ pleats }) => pleats);
  const codes = (plan: ReturnType<typeof planOf>) => plan.messages.map(({ code }) => code);

  it("an untried skirt is told what half a quarter must reach: 3 7/16 in", () => {
    const planned = planOf(keys);
    expect(exactOf(planned, "trial.cloth")).toBe("85/4");
    expect(exactOf(planned, "trial.target")).toBe("55/16");
  });
  it("1: drawn to 2 1/4 it passes: its own bites stay, 36 pleats a quarter, not the 49 that would also fit", () => {
    const after = withTrial("2 1/4 in");
    expect(counts(after)).toEqual([36, 36, 36, 36]);
    expect(codes(after)).not.toContain("trial-tight");
    expect(after.gauged.map(({ bites }) => bites.map(exact))).toEqual(
      withTrial("3 in").gauged.map(({ bites }) => bites.map(exact)),
    );
  });
  it("above nine tenths of the target it goes on with a warning, bites kept", () => {
    const after = withTrial("3 1/4 in");
    expect(counts(after)).toEqual([36, 36, 36, 36]);
    expect(codes(after)).toContain("trial-tight");
  });
  it.each([[{}], [{ "pleats-per-inch": "5.3" }]])(
    "2: drawn to 3 3/4 it cannot close: bites grow by measured / wanted and a tenth (%j)",
    (fullness) => {
      const after = withTrial("3 3/4 in", fullness);
      // 36 x (3 7/16 / 3 3/4) / 1.1 = 30; nine tenths of it is 27.
      expect(Math.max(...counts(after))).toBeLessThanOrEqual(30);
      expect(Math.min(...counts(after))).toBeGreaterThanOrEqual(27);
      expect(codes(after)).toContain("trial-too-wide");
    },
  );
  it("an edge made after the plan does not move the bites of a trial that passes", () => {
    const made = planOf({
      ...keys,
      attach: { made: "27 1/4 in" },
      fullness: { trial: { cloth: "21 1/4 in", pleats: "18", "closes-to": "2 1/4 in" } },
    });
    expect(counts(made)).toEqual([36, 36, 36, 36]);
  });
});

describe("thickness, stay and wishes", () => {
  it("a stay has no round back: easy is three times the cloth's share and the stay once", () => {
    const plan = planOf({ cloth: { thickness: "0.25 mm" }, fullness: { stay: { thickness: "0.3 mm" } } });
    expect(plan.values.get("gauging.wall")?.quantity.value.toFraction()).toBe("4/5");
    expect(plan.values.get("gauging.packed")?.quantity.value.toFraction()).toBe("8/5");
    expect(plan.values.get("gauging.easy")?.quantity.value.toFraction()).toBe("18/5");
  });
  it("never closer than 1/12 in unless it is wished", () => {
    const thin = { cloth: { thickness: "0.1 mm" } };
    expect(exactOf(planOf(thin), "gauging.easy")).toBe("1/12");
    expect(
      planOf({ ...thin, fullness: { "pleats-per-inch": "9" } })
        .values.get("gauging.easy")
        ?.quantity.value.toFraction(),
    ).toBe("6/5");
  });
  it("long-and-short above a bite of half an inch: short inside, long outside, pitch less an eighth", () => {
    const plan = planOf({ cloth: { thickness: "0.45 mm" } });
    const section = plan.gauged[0];
    if (!section) throw new Error("no section");
    expect(section.style).toBe("long-and-short");
    expect(section.longSide).toBe("outside");
    expect(
      new Set(
        section.bites
          .filter((_, i) => i % 2 === 1)
          .slice(0, -1)
          .map(exact),
      ),
    ).toEqual(new Set(["1/8"]));
  });
});

describe("what cannot be made is refused, with its numbers (each was once accepted)", () => {
  it.each([
    ["a placket longer than the skirt", { skirt: { placket: "39 in" } }, "placket-too-long"],
    ["a skirt that is almost all off the floor", { skirt: { "off-floor": "39 15/16 in" } }, "hem-too-deep"],
    [
      "a half breadth without width",
      { cloth: { width: "8 in" }, skirt: { breadths: "20 1/2", seam: "1 13/16 in" } },
      "no-half-width",
    ],
    ["a hem deeper than the skirt", { skirt: { hem: { kind: "turned", depth: "39 in" } } }, "hem-too-deep"],
    ["a facing deeper than the skirt", { skirt: { hem: { depth: "39 in" } } }, "hem-too-deep"],
    ["a tape coarser than the bites", { tape: "1/2 in" }, "tape-too-coarse"],
  ] as const)("%s", (_, keys, code) => {
    const { plan, messages } = tried(recipeText(keys as Keys));
    expect(plan).toBeUndefined();
    expect(messages.filter(({ level }) => level === "error").map((message) => message.code)).toContain(code);
  });
  it("rows far below the fold are warned of", () => {
    expect(
      planOf({ fullness: { rows: "6", "between-rows": "1 in" } }).messages.map(({ code }) => code),
    ).toContain("deep-rows");
  });
});
