/** Random valid recipes for property tests: what makers might write, in inches or centimetres. */
import fc from "fast-check";
import { printExactly } from "../src/quantity/print.ts";
import { inches as inInches, sum } from "../src/quantity/quantity.ts";
import { readLength } from "../src/quantity/read.ts";
import { type Keys, recipeText } from "./recipes.ts";

/** Lengths added up, as a maker writes the sum. */
function lengthOf(show: "in" | "cm", ...lengths: (string | null)[]): string {
  const parts = lengths.map((text) => {
    const reading = readLength(text ?? "0 in");
    if (!reading.ok) throw new Error(reading.error);
    return reading.value;
  });
  return printExactly(sum(inInches("0"), ...parts), show);
}

const inches = (least: number, most: number, parts = 8) =>
  fc.integer({ min: least * parts, max: most * parts }).map((n) => {
    const whole = Math.floor(n / parts);
    const rest = n % parts;
    return rest === 0 ? `${whole} in` : whole === 0 ? `${rest}/${parts} in` : `${whole} ${rest}/${parts} in`;
  });
const centimetres = (least: number, most: number) =>
  fc.integer({ min: least * 10, max: most * 10 }).map((n) => `${Math.floor(n / 10)}.${n % 10} cm`);

interface Ranges {
  readonly waist: fc.Arbitrary<string>;
  readonly toFloor: fc.Arbitrary<string>;
  readonly width: fc.Arbitrary<string>;
  readonly selvedge: fc.Arbitrary<string>;
  readonly seam: fc.Arbitrary<string>;
  readonly offFloor: fc.Arbitrary<string>;
  readonly hem: fc.Arbitrary<string>;
}

const INCHES: Ranges = {
  waist: inches(20, 40),
  toFloor: inches(34, 46),
  width: inches(24, 60, 4),
  selvedge: inches(0, 1, 16).filter((text) => !text.startsWith("1")),
  seam: fc.constantFrom("3/8 in", "1/2 in", "5/8 in"),
  offFloor: inches(1, 5, 4),
  hem: inches(2, 8, 4),
};
const CENTIMETRES: Ranges = {
  waist: centimetres(50, 100),
  toFloor: centimetres(86, 118),
  width: centimetres(60, 150),
  selvedge: centimetres(0, 1),
  seam: fc.constantFrom("1 cm", "1.2 cm", "1.5 cm"),
  offFloor: centimetres(2, 12),
  hem: centimetres(5, 20),
};

/** Ways of setting: mostly gauged all round; methods; zones that come out more often than not. */
const settings: fc.Arbitrary<Keys> = fc.oneof(
  { weight: 4, arbitrary: fc.constant<Keys>({}) },
  {
    weight: 3,
    arbitrary: fc
      .constantFrom("pleated", "pleated-gauged-back", "flat-front-gauged")
      .map((method): Keys => ({ method })),
  },
  {
    weight: 4,
    arbitrary: fc
      .array(
        fc.oneof(
          fc.constantFrom("{set: flat, waist: 1 1/2 in}", "{set: flat, waist: 5 cm}"),
          fc
            .record({
              set: fc.constantFrom("knife", "box", "double-box"),
              waist: fc.constantFrom("2 in", "3 1/4 in", "7.3 cm"),
              face: fc.constantFrom("3/4 in", "1 1/8 in", "2 cm"),
              depth: fc.constantFrom("", ", depth: 1/2 in", ", depth: 1 1/4 in"),
              towards: fc.constantFrom("front", "back"),
            })
            .map(
              ({ set, waist, face, depth, towards }) =>
                `{set: ${set}, waist: ${waist}, face: ${face}${depth}, towards: ${towards}}`,
            ),
        ),
        { minLength: 0, maxLength: 3 },
      )
      .chain((zones) =>
        fc.nat({ max: zones.length }).chain((at) =>
          fc.constantFrom("{set: gauged}", "{set: gauged}", "{set: knife}").map(
            (taker): Keys => ({
              zones: `[${[...zones.slice(0, at), taker, ...zones.slice(at)].join(", ")}]`,
            }),
          ),
        ),
      ),
  },
  { weight: 1, arbitrary: fc.constant<Keys>({ "follow-repeat": "true" }) },
  {
    weight: 2,
    arbitrary: fc.constantFrom<Keys>(
      { "back-share": "55 %" },
      { "back-share": "52.5 %", "pleats-per-inch": "7" },
      { "back-share": "66 %", method: "flat-front-gauged" },
      { "back-share": "60 %", "follow-repeat": "true" },
      {
        "back-share": "58 %",
        zones: "[{set: flat, waist: 1 1/2 in}, {set: gauged}, {set: knife, waist: 2 in}]",
      },
    ),
  },
  {
    weight: 1,
    arbitrary: fc
      .constantFrom(
        "[{set: box, waist: 3 1/2 in, count: 1 1/2, depth: 1/2 in}, {set: gauged}]",
        "[{set: knife, waist: 3 in, count: 2 1/2, towards: front}, {set: gauged}]",
        "[{set: gauged}, {set: double-box, waist: 2 in, count: 1/2, depth: 3/4 in}]",
      )
      .map((zones): Keys => ({ zones })),
  },
);

const maybe = (value: fc.Arbitrary<string>): fc.Arbitrary<string | null> =>
  fc.option(value, { nil: null, freq: 3 });

/** In one recipe of three. */
const seldom = <T>(value: fc.Arbitrary<T>): fc.Arbitrary<T | null> =>
  fc.oneof({ weight: 2, arbitrary: fc.constant(null) }, { weight: 1, arbitrary: value });

/** Tucks, flounces and a pocket on some, and a petticoat with its own height off the floor now and then. */
function trimmings(show: "in" | "cm") {
  const [tuck, flounce] =
    show === "in"
      ? [fc.constantFrom("1/8 in", "1/2 in", "1 in"), inches(2, 14, 4)]
      : [fc.constantFrom("3 mm", "1 cm", "2.5 cm"), centimetres(5, 35)];
  return {
    garment: seldom(fc.constant("petticoat")),
    pocket: seldom(fc.constant("true")),
    tucks: seldom(fc.record({ count: fc.integer({ min: 1, max: 6 }).map(String), depth: tuck })),
    flounces: seldom(
      fc.record({
        count: fc.integer({ min: 1, max: 4 }).map(String),
        depth: flounce,
        fullness: fc.constantFrom("4/3", "3/2", "1", "2"),
        cut: fc.constantFrom("straight", "cross"),
      }),
    ),
  };
}

/** A lining or an interlining on some. */
function backings(show: "in" | "cm") {
  const width = show === "in" ? inches(20, 50, 4) : centimetres(50, 130);
  const cloth = {
    width,
    selvedge: show === "in" ? fc.constantFrom("0 in", "1/4 in") : fc.constantFrom("0 cm", "0.5 cm"),
    thickness: fc.integer({ min: 5, max: 30 }).map((n) => `0.${String(n).padStart(2, "0")} mm`),
    weight: maybe(fc.constantFrom("80 g/m2", "130 g/m2")),
    shrinkage: maybe(fc.constantFrom("2 %", "5 %")),
  };
  return {
    lining: seldom(
      fc
        .record({
          how: fc.constantFrom("hung fold", "hung turned", "hung separate", "flat fold", "flat turned"),
          ...cloth,
        })
        .map(({ how, ...rest }): Keys => {
          const [kind, to] = how.split(" ") as [string, string];
          return { kind, to, ...rest };
        }),
    ),
    interlining: seldom(
      fc
        .record({ to: fc.constantFrom("short", "short", "fold", "turned"), ...cloth })
        .map((keys): Keys => keys),
    ),
  };
}

/** A sewn trial: its cloth, so many pleats in it, and what they close to, as close as thin or thick cloth would have it. */
const trials: fc.Arbitrary<string> = fc
  .record({
    cloth: fc.constantFrom("18 in", "21 1/4 in", "52 cm"),
    pleats: fc.integer({ min: 12, max: 40 }),
    each: fc.integer({ min: 60, max: 130 }),
  })
  .map(
    ({ cloth, pleats, each }) =>
      `{cloth: "${cloth}", pleats: "${pleats}", closes-to: "${(pleats * each) / 1000} in"}`,
  );

/** Does this way of setting gauge anything? Laid pleats alone have no trial and serve no other waist. */
const gauges = ({ method, zones }: Keys): boolean =>
  typeof zones === "string" ? zones.includes("gauged") : method !== "pleated";

/** Cloth that runs along the body on some: wide enough for most, with a border now and then. */
function alongBody(show: "in" | "cm") {
  const [round, width] =
    show === "in" ? [inches(120, 200, 4), inches(44, 72, 4)] : [centimetres(300, 500), centimetres(110, 180)];
  const border = fc.record({
    depth: fc.constantFrom("4 in", "9 1/2 in", "12.5 cm"),
    edge: fc.constantFrom("one", "both"),
    "from-edge": fc.constantFrom("1 1/4 in", "2 in", "4.5 cm", "5 in"),
    "above-hem": fc.constantFrom(null, null, "1/2 in", "1 cm"),
  });
  return fc.record({
    round,
    width,
    lengths: fc.constantFrom(null, "1", "2", "3"),
    edge: fc.constantFrom(null, null, "cut", "selvedge"),
    border: fc.constantFrom(true, false, false).chain((has) => (has ? border : fc.constant(null))),
  });
}

function keysIn(show: "in" | "cm", r: Ranges): fc.Arbitrary<Keys> {
  const sides = fc.oneof(
    r.toFloor.map((side): Keys => ({ side })),
    fc.record({ left: r.toFloor, right: r.toFloor }).map((both): Keys => both),
  );
  return fc
    .record({
      waist: r.waist,
      ease: maybe(
        show === "in" ? fc.constantFrom("1/2 in", "-1/4 in", "1 in") : fc.constantFrom("1 cm", "-0.5 cm"),
      ),
      front: r.toFloor,
      back: r.toFloor,
      sides,
      width: r.width,
      selvedge: r.selvedge,
      thickness: fc.integer({ min: 12, max: 60 }).map((n) => `0.${n} mm`),
      weight: maybe(fc.integer({ min: 50, max: 400 }).map((n) => `${n} g/m2`)),
      shrinkage: maybe(fc.integer({ min: 1, max: 10 }).map((n) => `${n} %`)),
      down: maybe(fc.constantFrom("3/4 in", "6 in", "10 cm")),
      breadths: fc
        .integer({ min: 4, max: 16 })
        .map((halves) => (halves % 2 ? `${(halves - 1) / 2} 1/2` : `${halves / 2}`)),
      seam: r.seam,
      offFloor: r.offFloor,
      kind: fc.constantFrom("faced", "turned"),
      depth: r.hem,
      facing: fc.constantFrom("own", "other"),
      rows: fc.constantFrom("2", "3"),
      stay: maybe(fc.constantFrom("0.1 mm", "0.2 mm", "0.3 mm")),
      wish: maybe(fc.integer({ min: 3, max: 14 }).map(String)),
      thread: fc.constantFrom("drawn-along", "full-length"),
      finest: maybe(fc.constantFrom("1/8 in", "3/16 in")),
      at: fc.constantFrom(
        "centre-back",
        "centre-front",
        "side-left",
        "side-right",
        "front-left",
        "front-right",
      ),
      under: fc.constantFrom(null, null, "true", "false"),
      from: fc.constantFrom("2 in", "4 1/4 in", "9.3 cm"),
      setting: settings,
      across: maybe(fc.constantFrom("3/8 in", "1/4 in", "1 cm")),
      estimate: fc.constantFrom(null, null, null, "1", "4/5", "5/4"),
      hoop: fc.integer({ min: 60, max: 150 }).map((n) => `${n} in`),
      steel: fc.integer({ min: 4, max: 14 }).map((n) => `${n} in`),
      offset: fc.constantFrom("0 in", "1 1/2 in", "6 cm"),
      price: fc.record(
        {
          cloth: fc.constantFrom("9.50 per yd", "7 per m", "0.35/yd"),
          notions: fc.constantFrom("12.00", "0.5"),
          hour: fc.constantFrom("22.00", "3.33"),
          currency: fc.constantFrom("GBP", "XTS"),
        },
        { requiredKeys: [] },
      ),
      made: maybe(fc.constantFrom("-1/4 in", "1/8 in")),
      trial: seldom(trials),
      other: seldom(fc.constantFrom("-1 in", "3/4 in", "4 in")),
      bandDepth: seldom(fc.constantFrom("1 in", "2 1/4 in", "7 cm")),
      hookTo: seldom(fc.constantFrom("-1 1/2 in", "1/4 in")),
      bandFrom: fc.constantFrom("one-piece", "faced"),
      to: fc.constantFrom("waistband", "waistband", "bodice-edge", "part-band"),
      cord: maybe(fc.constantFrom("1/16 in", "1/8 in", "2 mm")),
      turning: maybe(fc.constantFrom("3/8 in", "5/8 in", "1.3 cm")),
      hooks: fc.constantFrom("one", "all-along"),
      point: fc.constantFrom<Keys | null>(
        null,
        null,
        { depth: "2 in", "from-centre": "4 in" },
        { depth: "3.5 cm", "from-centre": "9 cm", set: "edge" },
        { depth: "1 1/4 in", "from-centre": "3 in", set: "straight" },
      ),
      flatParts: fc.constantFrom(null, null, "seam", "whip"),
      ...backings(show),
      oneWay: fc.constantFrom(null, null, "true"),
      shaded: fc.constantFrom(null, null, null, "across", "along"),
      along: seldom(alongBody(show)),
      match: fc.constantFrom(null, null, "true"),
      lost: maybe(fc.constantFrom("0", "1", "3")),
      dominant: maybe(fc.constantFrom("0 in", "1/8 in", "3 mm")),
      ...trimmings(show),
    })
    .map((x): Keys => {
      const under: Keys = { "under-fold": x.under };
      const opening: Keys = x.at.startsWith("front-")
        ? { at: x.at, "from-centre": x.from, ...under }
        : { at: x.at, ...under };
      // A part band goes only with an opening at the side of the front; elsewhere it is refused (tests/solve/attach).
      const to = x.to === "part-band" && !x.at.startsWith("front-") ? "bodice-edge" : x.to;
      const piping: Keys = x.cord ? { piping: { cord: x.cord, turning: x.turning } } : {};
      return {
        show,
        garment: x.garment,
        wearer: {
          waist: x.waist,
          ease: x.ease,
          ...(x.estimate
            ? {
                "waist-to-floor": null,
                "waist-height": x.front,
                hoop: { round: x.hoop, height: x.steel, shape: x.estimate, offset: x.offset },
              }
            : { "waist-to-floor": { front: x.front, side: null, ...x.sides, back: x.back } }),
        },
        cloth: {
          width: x.along?.width ?? x.width,
          selvedge: x.selvedge,
          border: x.along?.border ?? null,
          thickness: x.thickness,
          weight: x.weight,
          shrinkage: x.shrinkage,
          "one-way": x.oneWay,
          shaded: x.shaded,
          ...(x.down || x.across || x.setting["follow-repeat"]
            ? {
                repeat: {
                  ...(x.down ? { down: x.down } : {}),
                  ...(x.along && !x.down && x.setting["follow-repeat"] ? { down: "3/8 in" } : {}),
                  across: x.across ?? (x.setting["follow-repeat"] ? "3/8 in" : null),
                  ...(x.match && (x.along ? x.down : x.across || x.setting["follow-repeat"])
                    ? {
                        match: x.match,
                        "lines-lost": x.along ? null : x.lost,
                        dominant: x.along || x.breadths.includes("/") ? null : x.dominant,
                      }
                    : {}),
                },
              }
            : {}),
        },
        lining: x.lining,
        interlining: x.interlining,
        skirt: {
          ...(x.along
            ? { run: "along", breadths: null, round: x.along.round, lengths: x.along.lengths }
            : { breadths: x.breadths }),
          seam: x.seam,
          "off-floor": x.garment === null ? x.offFloor : null,
          pocket: x.pocket,
          tucks: x.tucks,
          flounces: x.flounces,
          hem:
            x.kind === "faced"
              ? { kind: x.kind, depth: x.depth, cloth: x.facing, edge: x.along?.edge ?? null }
              : { kind: x.kind, depth: x.depth },
        },
        fullness: {
          rows: x.rows,
          "pleats-per-inch": x.wish,
          thread: x.thread,
          "finest-bite": x.finest,
          ...(x.stay ? { stay: { thickness: x.stay } } : {}),
          trial: gauges(x.setting) ? x.trial : null,
          ...x.setting,
        },
        attach: {
          to,
          made: x.made ? lengthOf(show, x.waist, x.ease, x.made) : null,
          "other-waists":
            x.other && gauges(x.setting) ? `[{waist: "${lengthOf(show, x.waist, x.ease, x.other)}"}]` : null,
          band: {
            from: x.bandFrom,
            depth: x.bandDepth,
            "hook-sets":
              x.hookTo && to === "waistband"
                ? `[{waist: "${lengthOf(show, x.waist, x.ease, x.hookTo)}"}]`
                : null,
          },
          ...piping,
          "flat-parts": x.flatParts,
          ...(to === "bodice-edge" && x.point ? { "waist-edge": x.point } : {}),
          "placket-hooks": x.hooks,
          opening,
        },
        ...(Object.keys(x.price).length > 0 ? { work: { price: x.price } } : {}),
      };
    });
}

/** Keys of a random recipe; most of them can be made up, some are refused with reasons. */
export const randomKeys: fc.Arbitrary<Keys> = fc.oneof(keysIn("in", INCHES), keysIn("cm", CENTIMETRES));

/** The recipe text of random keys. */
export const randomRecipe: fc.Arbitrary<string> = randomKeys.map((keys) => recipeText(keys));
