/** The typed recipe out of the front matter with every default filled in. */
import { toCount } from "../quantity/quantity.ts";
import { aTenth } from "./given.ts";
import type {
  Attach,
  Cloth,
  Commission,
  Fullness,
  Hoop,
  Recipe,
  Skirt,
  WaistToFloor,
  Wearer,
  Work,
} from "./recipe.ts";
import type { Filled } from "./schema/recipe.ts";
import { tidy } from "./tidy.ts";

/** Everything of a recipe that comes from its keys alone. Rules between keys must have been checked. */
export type Measured = Omit<
  Recipe,
  "size" | "evidence" | "given" | "fields" | "written" | "list" | "chosenByDefault" | "places" | "body"
>;

export function buildRecipe(filled: Filled): Measured {
  const { title, garment, year, show, tape } = filled;
  return tidy({
    title,
    garment,
    year,
    show,
    tape,
    wearer: wearerOf(filled.wearer),
    cloth: clothOf(filled.cloth),
    lining: filled.lining && tidy(filled.lining),
    interlining: filled.interlining && tidy(filled.interlining),
    skirt: skirtOf(filled.skirt),
    fullness: fullnessOf(filled.fullness),
    attach: attachOf(filled.attach),
    work: workOf(filled.work),
    measureYourOwn: filled.publish?.["measure-your-own"],
    commission:
      filled.publish?.commission === false ? undefined : filled.commission && commissionOf(filled.commission),
    lesson: filled.publish?.class === false ? undefined : filled.class,
  });
}

function wearerOf({ name, waist, ease, over, ...rest }: Filled["wearer"]): Wearer {
  const floor = rest["waist-to-floor"];
  return tidy({
    name,
    waist,
    ease,
    waistToFloor: floor && lengthsOf(floor),
    unlikeSides: floor?.left !== undefined,
    waistHeight: rest["waist-height"],
    over,
    hoop: rest.hoop && (tidy(rest.hoop) satisfies Hoop),
  });
}

function lengthsOf({ front, side, left = side, right = side, back }: FloorKeys): WaistToFloor {
  if (!left || !right) throw new Error("waist-to-floor has no length at the sides");
  return { front, left, right, back };
}
type FloorKeys = NonNullable<Filled["wearer"]["waist-to-floor"]>;

function clothOf(cloth: Filled["cloth"]): Cloth {
  const { name, fibre, sheer, width, selvedge, weight, shrinkage } = cloth;
  const { "lines-lost": linesLost, ...plainRepeat } = cloth.repeat ?? { match: false };
  const repeat = cloth.repeat && tidy({ ...plainRepeat, linesLost });
  const tenfold = cloth["ten-layers"];
  const thickness = cloth.thickness ?? (tenfold && aTenth(tenfold));
  const { border } = cloth;
  return tidy({
    name,
    fibre,
    sheer,
    oneWay: cloth["one-way"],
    shaded: cloth.shaded,
    border:
      border &&
      tidy({
        depth: border.depth,
        edge: border.edge,
        at: border.at,
        fromEdge: border["from-edge"] ?? selvedge,
        aboveHem: border["above-hem"],
      }),
    width,
    selvedge,
    thickness,
    weight,
    repeat,
    shrinkage,
  });
}

function skirtOf(skirt: Filled["skirt"]): Skirt {
  const { run, lengths, breadths, round, seam, braid, placket, pocket, tucks, flounces } = skirt;
  const { kind, depth, cloth, edge } = skirt.hem;
  return tidy({
    run,
    lengths: run === "along" ? lengths : undefined,
    breadths,
    round,
    centreFront: skirt["centre-front"],
    seam,
    offFloor: skirt["off-floor"],
    hem: { kind, depth, cloth, edge: run === "along" && kind === "faced" ? edge : "cut" },
    braid,
    turnDown: skirt["turn-down"],
    placket,
    pocket,
    tucks,
    flounces,
  });
}

function fullnessOf(fullness: Filled["fullness"]): Fullness {
  const { method, zones, rows, stay, thread, strands, trial } = fullness;
  return tidy({
    method,
    zones,
    gaugedBack: fullness["gauged-back"],
    flatFront: fullness["flat-front"],
    backShare: fullness["back-share"],
    rows: toCount(rows),
    firstRow: fullness["first-row"],
    betweenRows: fullness["between-rows"],
    pleatsPerInch: fullness["pleats-per-inch"],
    pleatsAsWished: fullness["pleats-as-wished"],
    finestBite: fullness["finest-bite"],
    deepestPitch: fullness["deepest-pitch"],
    followRepeat: fullness["follow-repeat"],
    stay,
    thread,
    strands,
    trial: trial && { cloth: trial.cloth, pleats: trial.pleats, closesTo: trial["closes-to"] },
  });
}

function attachOf(attach: Filled["attach"]): Attach {
  const { to, made, band, piping, whip, opening } = attach;
  const { "hook-sets": hookSets, ...plainBand } = band;
  return tidy({
    to,
    made,
    band: tidy({ ...plainBand, hookSets }),
    otherWaists: attach["other-waists"],
    piping,
    waistEdge: attach["waist-edge"] && {
      shape: attach["waist-edge"].shape,
      depth: attach["waist-edge"].depth,
      fromCentre: attach["waist-edge"]["from-centre"],
      set: attach["waist-edge"].set,
    },
    flatParts: attach["flat-parts"],
    whip,
    placketHooks: attach["placket-hooks"],
    opening: tidy({
      at: opening.at,
      fromCentre: opening["from-centre"],
      underFold: opening["under-fold"],
    }),
  });
}

const workOf = ({ rates, price }: Filled["work"]): Work => tidy({ rates, price });

function commissionOf(commission: NonNullable<Filled["commission"]>): Commission {
  const { use, brings, deposit, "hem-within": hemWithin, "waist-within": waistWithin } = commission;
  return tidy({ use, brings, deposit, hemWithin, waistWithin });
}
