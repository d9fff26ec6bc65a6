/** Edges, part bands, piping and their openings. The numbers are worked out by hand; the rules are in src/solve/README.md. */
import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { inches, toInches } from "../../src/quantity/quantity.ts";
import { exact } from "../../src/solve/json.ts";
import { biasSquare, joined, stripsOf } from "../../src/solve/piping.ts";
import { exactOf, type Keys, planOf, recipeText, tried } from "../recipes.ts";

const left = (from: string, more: Keys = {}): Keys => ({
  attach: { to: "part-band", opening: { at: "front-left", "from-centre": from }, ...more },
});
const pieces = (keys: Keys) => planOf(keys).layout.pieces.map(({ name }) => name);
const errors = (keys: Keys) =>
  tried(recipeText(keys))
    .messages.filter(({ level }) => level === "error")
    .map(({ code }) => code);

describe("a bodice edge round a waist seam of 25 1/2 in", () => {
  const plan = planOf({ attach: { to: "bodice-edge" } });
  it("is piped though nothing is said of piping, and has no band and no band hooks", () => {
    expect(exactOf(plan, "piping.run")).toBe("51/2");
    expect(exactOf(plan, "piping.length")).toBe("53/2");
    for (const name of ["band.length", "band.depth", "hooks.band", "hooks.edge"])
      expect(plan.values.has(name), name).toBe(false);
    expect(exactOf(plan, "hooks.count")).toBe("1");
    expect(pieces({ attach: { to: "bodice-edge" } }).filter((name) => /band|piping/.test(name))).toEqual([
      "bias square for piping",
    ]);
  });
  it("hooked all along a placket of 10 in: nine, all of them the placket's", () => {
    expect(
      exactOf(planOf({ attach: { to: "bodice-edge", "placket-hooks": "all-along" } }), "hooks.count"),
    ).toBe("9");
  });
  it("1 in of turnings and 22/7 of 1/16 in is 1.196 in: 1 1/4 in on the tape, 1 13/16 in along the selvedge", () => {
    expect(exactOf(plan, "piping.width")).toBe("5/4");
    expect(exactOf(plan, "piping.alongSelvedge")).toBe("29/16");
  });
  it("shown in cm: 2 x 1.2 cm and 22/7 x 1.5 mm is 28.7 mm: 2.9 cm, 4.2 cm along the selvedge", () => {
    const metric = planOf({ show: "cm", attach: { to: "bodice-edge" } });
    expect(metric.values.get("piping.width")?.shown).toBe("2.9 cm");
    expect(metric.values.get("piping.alongSelvedge")?.shown).toBe("4.2 cm");
  });
  it("once it is made, pleats follow the made length; strip and cloth stay as they were cut", () => {
    const made = planOf({ attach: { to: "bodice-edge", made: "25 in" } });
    expect(exactOf(made, "waist.seam")).toBe("25");
    expect(exactOf(made, "piping.length")).toBe("53/2");
    expect(exactOf(made, "cloth.length")).toBe(exactOf(plan, "cloth.length"));
    expect(made.gauged.map(({ bites }) => bites.map(exact))).toEqual(
      plan.gauged.map(({ bites }) => bites.map(exact)),
    );
  });
  it("opening where bodices do not open: a warning that offers the part band", () => {
    const { messages } = planOf({ attach: { to: "bodice-edge", opening: { at: "side-left" } } });
    expect(messages.find(({ code }) => code === "opening-off-bodice")?.hint).toContain("part-band");
  });
  it("a band that is given all the same is told to have no use", () => {
    const { messages } = planOf({ attach: { to: "bodice-edge", band: { lap: "2 in" } } });
    expect(messages.map(({ code, level }) => `${level} ${code}`)).toContain("note no-band");
  });
});

describe("a part band", () => {
  it("3 in from centre front: 3 + lap 1 + turnings 1; piping along the other 22 1/2 in", () => {
    const plan = planOf(left("3 in"));
    expect(exactOf(plan, "opening.fromFront")).toBe("3");
    expect(exactOf(plan, "band.length")).toBe("5");
    expect(exactOf(plan, "band.depth")).toBe("7/2");
    expect(exactOf(plan, "piping.length")).toBe("47/2");
    expect([exactOf(plan, "hooks.band"), exactOf(plan, "hooks.count"), exactOf(plan, "hooks.edge")]).toEqual([
      "2",
      "3",
      "2",
    ]);
  });
  it("6 in wished, a seam at the side 6 3/8 in off: that seam is the opening for band and piping too", () => {
    const plan = planOf(left("6 in"));
    expect(plan.opening.kind).toBe("seam");
    expect(exactOf(plan, "opening.fromFront")).toBe("51/8");
    expect(exactOf(plan, "band.length")).toBe("67/8");
    expect(exactOf(plan, "piping.length")).toBe("161/8");
  });
  it("on the right it is as long", () => {
    const plan = planOf({
      attach: { to: "part-band", opening: { at: "front-right", "from-centre": "3 in" } },
    });
    expect(exactOf(plan, "band.length")).toBe("5");
    expect(exact(plan.opening.share)).toBe("15/17");
  });
  it("faced, it is two pieces; made, it is cut no longer", () => {
    expect(pieces(left("3 in", { band: { from: "faced" } })).filter((name) => /band/.test(name))).toEqual([
      "part band, outside",
      "part band, inside",
    ]);
    const made = planOf(left("6 in", { made: "25 in" }));
    expect(exactOf(made, "opening.fromFront")).toBe("25/4");
    expect(exactOf(made, "band.length")).toBe("67/8");
    expect(exactOf(made, "piping.length")).toBe("161/8");
  });
  it("needs an opening at the side of the front, and more than nothing of it; told with what else is wrong", () => {
    expect(errors({ attach: { to: "part-band" } })).toEqual(["part-band-opening"]);
    expect(errors({ attach: { to: "part-band", opening: { at: "side-left" } } })).toEqual([
      "part-band-opening",
    ]);
    // A seam at centre front, half an inch away: the placket goes to it.
    expect(errors(left("1/2 in"))).toEqual(["no-part-band"]);
    expect(errors({ ...left("1/2 in"), cloth: { thickness: "3 mm" } })).toContain("no-part-band");
    expect(errors({ ...left("1/2 in"), cloth: { thickness: "3 mm" } })).toContain("nothing-fits");
  });
});

describe("a piped waistband", () => {
  it("is piped along seam and lap: 25 1/2 + 1, and turnings; a plain one has no piping", () => {
    const plan = planOf({ attach: { piping: { cord: "1/8 in" } } });
    expect(exactOf(plan, "piping.run")).toBe("53/2");
    expect(exactOf(plan, "piping.length")).toBe("55/2");
    // 1 + 22/56 = 1.393 in.
    expect(exactOf(plan, "piping.width")).toBe("23/16");
    expect(exactOf(plan, "band.length")).toBe("55/2");
    expect(planOf().values.has("piping.length")).toBe(false);
    expect(pieces({})).not.toContain("bias square for piping");
  });
});

describe("the bias square", () => {
  const cutting = { width: inches("5/4"), join: inches("1/2"), tape: inches("1/16") };
  it("of 8 5/8 in: diagonal 12 3/16, strips of 10 15/16 and twice 8 7/16; three joined make 26 13/16", () => {
    const strips = stripsOf(inches("69/8"), cutting).slice(0, 3);
    expect(strips.map((strip) => toInches(strip).toFraction())).toEqual(["175/16", "135/16", "135/16"]);
    expect(toInches(joined(strips, 3, cutting.join)).toFraction()).toBe("429/16");
  });
  it("for 26 1/2 in is 8 5/8 in: a mark less gives 3 x 12 1/16 - 7 x 1 1/4 - 1 = 26 7/16", () => {
    const found = biasSquare(inches("53/2"), inches("45"), cutting);
    expect(found && [toInches(found.square).toFraction(), found.strips]).toEqual(["69/8", 3]);
    const under = stripsOf(inches("137/16"), cutting);
    expect(toInches(joined(under, 3, cutting.join)).toFraction()).toBe("423/16");
  });
  it("in narrow cloth takes more strips; in a ribbon it is refused", () => {
    const narrow = biasSquare(inches("53/2"), inches("8"), cutting);
    expect(narrow?.strips).toBe(4);
    expect(biasSquare(inches("53/2"), inches("4"), cutting)).toBeUndefined();
    expect(
      errors({
        cloth: { width: "4 in", selvedge: "0 in" },
        skirt: { breadths: "50", seam: "1/4 in" },
        attach: { to: "bodice-edge" },
      }),
    ).toContain("piping-too-long");
  });
  it("a short piece is one strip: 3 in and a width is a diagonal of 4 1/4, and nothing is joined", () => {
    expect(biasSquare(inches("3"), inches("45"), cutting)?.strips).toBe(1);
  });
});

describe("the plum silk over a hoop", () => {
  const { plan, messages } = tried(
    readFileSync(new URL("../../demo-projects/plum-silk-over-hoop/recipe.md", import.meta.url), "utf8"),
  );
  if (!plan) throw new Error("the demo does not build");
  it("169 1/2 in into 25 in, 6.78 : 1, is done in long-and-short bites without a warning", () => {
    expect(messages).toEqual([]);
    // 3 x 57 1/2 - 3 = 169 1/2; 169 1/2 / 25 = 339/50.
    expect(exactOf(plan, "skirt.fullness")).toBe("339/50");
    expect(new Set(plan.gauged.map(({ style }) => style))).toEqual(new Set(["long-and-short"]));
  });
  it("placket of 11 in hooked all along: 11 / 1 1/4 = 8.8, nine spaces, ten hooks", () => {
    expect(exactOf(plan, "hooks.count")).toBe("10");
  });
});
