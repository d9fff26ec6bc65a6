/**
 * The laws of a plan, checked from first principles on plan.json's own data and the recipe as read: it shares no code
 * with the solvers. Exact arithmetic is fraction.js's, straight.
 */
import Fraction from "fraction.js";
import { planJson } from "../src/solve/json.ts";
import type { Plan } from "../src/solve/plan.ts";
import { edgeLaws } from "./edge-laws.ts";
import { brokenEstimates } from "./laws-over-hoop.ts";
import { liningLaws, matchLaws } from "./lining-laws.ts";
import { brokenMap } from "./map-laws.ts";
import { placeLaws } from "./place-laws.ts";
import { ringLaws } from "./ring-laws.ts";
import { isRoundPiece, runLaws, runsAlong } from "./run-laws.ts";
import { brokenShare } from "./share-laws.ts";
import { threadLaws } from "./thread-laws.ts";
import { brokenValues } from "./value-laws.ts";

type Json = ReturnType<typeof planJson>;

const F = (text: string | number): Fraction => new Fraction(typeof text === "number" ? BigInt(text) : text);
const total = (list: readonly Fraction[]): Fraction => list.reduce((a, b) => a.add(b), F(0));

/** Tucks, flounces, pocket: where they lie, what they take, enough cloth, nothing where it cannot be sewn. */
function trimLaws(
  json: Json,
  value: (name: string) => Fraction,
  has: (name: string) => boolean,
  law: (holds: boolean, words: string) => void,
  alongBody: boolean,
): void {
  const shortest = json.balance
    .map(({ finished }) => F(finished))
    .reduce((a, b) => (b.compare(a) < 0 ? b : a));
  const round = value("skirt.round");
  const seam = value("skirt.seam");

  // A tuck laid on the flat cloth: its two seam lines lie a depth from its crease; the tucks below are sewn out of it.
  const depth = has("skirt.tucks.depth") ? value("skirt.tucks.depth") : F(0);
  law(json.tucks.length === (has("skirt.tucks.count") ? value("skirt.tucks.count").valueOf() : 0), "tucks");
  let flat = F(0);
  json.tucks.forEach(({ seam: sewn, edge, crease }, i) => {
    const lower = F(crease).sub(depth);
    law(lower.compare(flat) >= 0, `tuck ${i + 1} begins above the one below it on the flat cloth`);
    law(lower.sub(depth.mul(2 * i)).equals(F(sewn)), `tuck ${i + 1} is sewn at its height`);
    law(F(sewn).sub(F(edge)).equals(depth), `tuck ${i + 1} hangs its depth`);
    law(F(edge).compare(value("skirt.hem.depth")) >= 0, `tuck ${i + 1} hangs clear of the hem`);
    if (has("border.head"))
      law(F(edge).compare(value("border.head")) >= 0, `tuck ${i + 1} hangs clear of the border`);
    law(F(sewn).compare(shortest) < 0, `tuck ${i + 1} lies below the waist seam`);
    flat = F(crease).add(depth);
  });
  if (json.tucks.length > 0) {
    const left = value("breadths.cut")
      .sub(value("hem.allowance"))
      .sub(depth.mul(2 * json.tucks.length));
    const foot = left.sub(value("turnDown.opening")).sub(value("skirt.placket")).sub("1/4");
    const across = json.tucks.filter((tuck) => F(tuck.seam).compare(foot) >= 0).length;
    law(value("tucks.crossing").equals(F(across)), "tucks across the opening");
    const unsewn = value("placket.unsewn").sub(depth.mul(2 * across));
    law(
      unsewn.equals(value("skirt.placket").add(value("turnDown.opening")).add("1/4")),
      "unsewn, tucks taken",
    );
  }

  let heading = F(0);
  json.flounces.forEach((flounce, i) => {
    law(
      F(flounce.heading).sub(F(flounce.edge)).equals(value("skirt.flounces.depth")),
      `depth of flounce ${i + 1}`,
    );
    law(F(flounce.edge).compare(0) >= 0, `flounce ${i + 1} does not hang below the hem`);
    if (i > 0)
      law(heading.sub(F(flounce.edge)).equals(value("skirt.flounces.lap")), `lap of flounce ${i + 1}`);
    heading = F(flounce.heading);
    law(heading.compare(shortest) < 0, `flounce ${i + 1} lies below the waist seam`);
    for (const tuck of json.tucks) law(F(tuck.edge).compare(heading) > 0, "tucks hang above the flounces");
  });
  if (json.flounces.length > 0) {
    const wished = value("skirt.flounces.fullness").mul(round);
    const strips = value("flounces.strips");
    // Strips are joined as breadths are, so that a pattern meets in them too.
    const join = has("seam.lost") ? value("seam.lost") : seam.mul(2);
    const width = value("cloth.width").sub(value("cloth.selvedge").mul(2)).sub(join);
    const cross = json.layout.pieces.some(({ name }) => name === "flounces, on the true bias");
    // Squared on both sides, since a strip on the cross is the root of 2 longer.
    const reach = (n: Fraction): Fraction =>
      n
        .mul(width)
        .pow(2)
        ?.mul(cross ? 2 : 1) as Fraction;
    const lengthwise = alongBody && !cross;
    if (lengthwise) {
      const each = value("flounces.strip").sub(seam.mul(2));
      law(strips.mul(each).compare(wished) >= 0, "the strips reach the flounce's round");
      law(strips.mul(each.sub(value("tape"))).compare(wished) < 0, "shorter strips would not");
      law(
        each.sub(value("tape")).compare(value("breadths.finished")) < 0,
        "no strip is longer than a length of the skirt",
      );
    } else {
      law(reach(strips).compare(wished.mul(wished)) >= 0, "the strips reach the flounce's round");
      law(reach(strips.sub(1)).compare(wished.mul(wished)) < 0, "one strip fewer would not");
    }
    const all = strips.mul(json.flounces.length);
    law(value("flounces.pieces").equals(all), "strips of all flounces");
    const cut = value("skirt.flounces.depth").add(seam.mul(2));
    const along = value("flounces.along");
    if (!cross) law(along.equals(cut), "a straight strip takes its depth");
    else {
      const over = along.mul(along).sub(cut.mul(cut).mul(2));
      const less = along.sub(value("tape"));
      law(over.compare(0) >= 0 && less.mul(less).compare(cut.mul(cut).mul(2)) < 0, "a strip on the cross");
    }
    const laid = json.layout.pieces.filter(({ name }) => name.startsWith("flounce"));
    const length = total(laid.map((piece) => F(lengthwise ? piece.width : piece.length)));
    law(
      laid.every((piece) =>
        F(lengthwise ? piece.length : piece.width).equals(
          value(lengthwise ? "flounces.strip" : "cloth.width"),
        ),
      ),
      "flounce strips are whole widths, or as long as they are cut along the cloth",
    );
    law(length.equals(all.mul(along).add(cross ? value("cloth.width") : 0)), "cloth of the flounces");
  }

  law(
    json.layout.pieces.filter(({ name }) => name.startsWith("pocket")).length === (json.pocket ? 4 : 0),
    "pocket pieces",
  );
  if (!json.pocket) return;
  const at = F(json.pocket.station);
  law(
    json.seams.some(({ station, kind }) => kind === "seam" && F(station).equals(at)),
    "the pocket is in a plain seam",
  );
  // Sewn by the waist as planned; on the edge as made no place moves by more than the edge came out otherwise.
  const moved = value("waist.planned").div(value("waist.seam")).sub(1).abs();
  law(
    [F("1/4"), F("3/4")].some((side) => at.sub(side).abs().compare(F("1/8").add(moved)) <= 0),
    "the pocket is at a side",
  );
  law(
    value("pocket.from").sub(value("turnDown.pocket")).equals(value("skirt.pocketBelow")),
    "pocket below the waist",
  );
  law(
    value("pocket.to").sub(value("pocket.from")).equals(value("skirt.pocketSlit")),
    "length of the pocket's slit",
  );
  for (const tuck of json.tucks)
    law(F(tuck.seam).compare(value("pocket.foot")) < 0, "no tuck crosses the pocket");
}

/** Every law that does not hold, in words; empty for a good plan. */
export function brokenLaws(plan: Plan): string[] {
  const json: Json = planJson(plan, "0");
  const broken: string[] = [];
  const law = (holds: boolean, words: string): void => {
    if (!holds) broken.push(words);
  };
  const value = (name: string): Fraction => {
    const found = json.values[name];
    if (!found) throw new Error(`no value ${name}`);
    return F(found.exact);
  };
  const has = (name: string): boolean => json.values[name] !== undefined;
  const same = (a: Fraction, b: Fraction, words: string): void =>
    law(a.equals(b), `${words}: ${a.toFraction()} is not ${b.toFraction()}`);
  const notLess = (a: Fraction, b: Fraction, words: string): void =>
    law(a.compare(b) >= 0, `${words}: ${a.toFraction()} is less than ${b.toFraction()}`);

  // Waist, breadths, round.
  const waist = value("waist.seam");
  const round = value("skirt.round");
  const count = value("breadths.count");
  const pieces = count.ceil();
  const usable = value("cloth.width").sub(value("cloth.selvedge").mul(2));
  const lost = has("seam.lost") ? value("seam.lost") : value("skirt.seam").mul(2);
  if (!runsAlong(plan)) same(round, count.mul(usable).sub(pieces.mul(lost)), "round");
  runLaws({ value, has, law, same, notLess, plan });
  matchLaws({ value, has, law, same, notLess, plan });
  same(value("waist.quarter").mul(4), waist, "four quarters of the waist");
  same(value("skirt.fullness").mul(waist), round, "fullness x waist");

  // Lengths and balance: hem allowance, finished length and turn-down make the cut length at every station.
  const tape = value("tape");
  const cut = value("breadths.cut");
  const tucked = has("skirt.tucks.count")
    ? value("skirt.tucks.count").mul(2).mul(value("skirt.tucks.depth"))
    : F(0);
  const allowance = value("hem.allowance").add(tucked);
  law(cut.div(tape).d === 1n, "the cut length lies on a tape mark");
  const least = value("balance.least");
  const beside = has("finished.level") ? value("finished.level") : F(0);
  const longest = json.balance.reduce((a, b) => (F(b.finished).compare(a) > 0 ? F(b.finished) : a), beside);
  law(
    cut.sub(longest.add(allowance).add(least)).compare(tape) < 0,
    "the cut length is less than a mark over the longest",
  );
  law(json.balance.length === 8, "eight stations");
  // A pointed edge drops below the straight waist, by its whole depth at centre front, by nothing where the slant ends.
  const point = plan.recipe.attach.waistEdge;
  const drop = (i: number): Fraction => {
    if (point?.set !== "edge") return F(0);
    const n = i % 8;
    const away = F(Math.min(n, 8 - n))
      .div(8)
      .mul(value("waist.planned"));
    const left = F(1).sub(away.div(value("edge.slant")));
    return left.compare(0) > 0 ? left.mul(value("attach.waistEdge.depth")) : F(0);
  };
  if (point) {
    const [deep, along, slant] = ["attach.waistEdge.depth", "attach.waistEdge.fromCentre", "edge.slant"].map(
      value,
    ) as [Fraction, Fraction, Fraction];
    const square = deep.mul(deep).add(along.mul(along));
    const [under, over] = [slant.sub(tape.div(2)), slant.add(tape.div(2))];
    law(
      under.mul(under).compare(square) <= 0 && square.compare(over.mul(over)) <= 0,
      "the slant of the point",
    );
    const plain = value("wearer.waist").add(value("wearer.ease"));
    same(value("edge.length"), plain.add(slant.sub(along).mul(2)), "the pointed edge");
    same(
      value("waist.planned"),
      point.set === "edge" ? value("edge.length") : plain,
      "what the skirt is set to",
    );
  }
  json.balance.forEach((station, i) => {
    same(
      F(station.finished).add(F(station.turnDown)).add(allowance),
      cut,
      `cut length at ${station.station}`,
    );
    same(
      F(station.toFloor).sub(F(station.finished)),
      value("skirt.offFloor"),
      `off the floor at ${station.station}`,
    );
    notLess(F(station.turnDown), least, `turn-down at ${station.station}`);
    const [before, after] = [json.balance[(i + 7) % 8], json.balance[(i + 1) % 8]];
    if (i % 2 === 1 && before && after) {
      const level = (at: { finished: string }, n: number): Fraction => F(at.finished).add(drop(n));
      const [low, high] = [level(before, i - 1), level(after, i + 1)].sort((a, b) => a.compare(b)) as [
        Fraction,
        Fraction,
      ];
      law(
        level(station, i).compare(low) >= 0 && level(station, i).compare(high) <= 0,
        `${station.station} lies between its neighbours`,
      );
    }
  });
  const given: Record<string, string> = {
    "centre front": "front",
    "left side": "left",
    "centre back": "back",
    "right side": "right",
  };
  for (const [i, station] of json.balance.entries()) {
    const key = given[station.station];
    const measured = has("domed.front") ? `domed.${key}` : `wearer.waistToFloor.${key}`;
    if (key) same(F(station.toFloor).add(drop(i)), value(measured), `${station.station} as measured`);
  }
  plan.balance.forEach((station) => {
    const marks = [station.finishedMark, station.turnDownMark].map((q) =>
      F(q.value.toFraction()).div("25.4"),
    );
    same(total(marks).add(allowance), cut, `printed lengths at ${station.station}`);
  });
  let along = F(-1);
  for (const station of json.balance) {
    law(F(station.alongTop).compare(along) > 0, "stations run one way round");
    along = F(station.alongTop);
  }

  broken.push(...brokenEstimates(json));
  broken.push(...brokenMap(json));

  broken.push(...brokenShare(json));
  broken.push(...brokenValues(json, plan));

  // Sections: the ring is covered once; bites sum; needles' marks; limits.
  same(total(json.sections.map((section) => F(section.waist))), waist, "the sections' waists");
  same(total(json.sections.map((section) => F(section.cloth))), round, "the sections' cloth");
  const gauged = json.sections.flatMap((section) => ("bites" in section ? [section] : []));
  for (const section of json.sections) {
    if (section.set === "flat") same(F(section.cloth), F(section.waist), `flat ${section.name}`);
    if (!("faces" in section)) continue;
    const take = { knife: 2, box: 4, "double-box": 8 }[section.set as "knife"];
    const of = (list: readonly { size: string; count: number }[]): Fraction =>
      total(list.map(({ size, count }) => F(size).mul(count)));
    same(of(section.faces), F(section.waist), `faces of the ${section.name}`);
    same(
      of(section.faces).add(of(section.depths).mul(take)),
      F(section.cloth),
      `faces and depths of the ${section.name}`,
    );
    law(
      section.depths.every(({ size }) => F(size).compare(0) >= 0),
      `depths of the ${section.name} are depths`,
    );
    law(section.faces.length <= 4 && section.depths.length <= 4, `sizes of the ${section.name} are few`);
  }
  const packed = has("gauging.packed") ? value("gauging.packed") : F(0);
  const trialSewn = has("fullness.trial.closesTo");
  for (const section of gauged) {
    const { name } = section;
    const cloth = F(section.cloth);
    same(total(section.bites.map((bite) => F(bite.size).mul(bite.count))), cloth, `bites of the ${name}`);
    law(
      section.bites.every((bite) => F(bite.size).compare(0) > 0),
      `every bite of the ${name} is a bite`,
    );
    law(section.marks.length === 2 * section.pleats + 1, `marks of the ${name} are two a pleat and one`);
    same(F(section.marks[0] as string), F(0), `first mark of the ${name}`);
    same(F(section.marks.at(-1) as string), cloth, `last mark of the ${name}`);
    const bites = section.marks.slice(1).map((mark, i) => F(mark).sub(F(section.marks[i] as string)));
    const locked = has("section.lines");
    const onTape = locked || bites.slice(0, -1).every((bite) => bite.div(tape).d === 1n);
    law(onTape, `bites of the ${name} lie on tape marks, but for a remainder in the last`);
    const lots = (list: readonly Fraction[]): Fraction => {
      const sizes = list.map((bite) => bite.div(tape).floor());
      const sorted = sizes.sort((a, b) => a.compare(b));
      return (sorted.at(-1) as Fraction).sub(sorted[0] as Fraction);
    };
    if (locked) {
      const sizes = new Set(bites.slice(0, -2).map((bite) => bite.toFraction()));
      law(sizes.size <= 1, `bites of the ${name} follow the lines`);
      law(value("section.lines").mod(2).equals(0), `lines of the ${name} are even`);
    } else if (section.style === "even")
      law(lots(bites).compare(1) <= 0, `bites of the ${name} differ by one mark at most`);
    else {
      const outside = bites.filter((_, i) => i % 2 === 0);
      const inside = bites.filter((_, i) => i % 2 === 1);
      law(lots(outside).compare(1) <= 0, `long bites of the ${name} differ by one mark at most`);
      law(
        inside.slice(0, -1).every((bite) => bite.equals(value("fullness.shortBite"))),
        `short bites of the ${name}`,
      );
      law(section.longSide === "outside", `the long side of the ${name}: depth stands inside`);
    }
    const comfortable = value("fullness.comfortableBite");
    law(
      locked || cloth.div(2 * section.pleats).compare(comfortable) <= 0 === (section.style === "even"),
      `style of the ${name}`,
    );
    same(F(section.spacing).mul(section.pleats), F(section.waist), `spacing of the ${name}`);
    // Sections are those of the waist as planned: one may be longer by its share of what a made edge is wider.
    const wider = waist.sub(value("waist.planned"));
    const most = waist.div(4).add(wider.compare(0) > 0 ? wider.div(4) : 0);
    notLess(most, F(section.waist), `the ${name} is a quarter of the waist at most`);
    if (!trialSewn && !locked) {
      notLess(
        F(section.pleats),
        cloth.div(value("fullness.deepestPitch")).ceil(),
        `pleats of the ${name}, deepest pitch`,
      );
      notLess(
        cloth,
        value("fullness.finestBite").mul(2 * section.pleats),
        `cloth of the ${name} for its bites`,
      );
    }
    if (!has("attach.made"))
      notLess(F(section.waist), packed.mul(section.pleats), `waist of the ${name} for its pleats`);
  }
  const centre = [F(0), waist.div(2)];
  let at = F(0);
  for (const section of json.sections) {
    const end = at.add(F(section.waist));
    for (const line of centre)
      law(!(at.compare(line) < 0 && line.compare(end) < 0), `the ${section.name} crosses no centre line`);
    at = end;
  }

  // Whipping, thread, band, hooks.
  const pleats = F(gauged.reduce((sum, section) => sum + section.pleats, 0));
  if (gauged.length > 0) {
    same(value("gauging.pleats"), pleats, "pleats in all");
    const whipped = value("whip.stitches").sub(value("whip.doubled"));
    same(
      whipped,
      plan.recipe.attach.whip === "every" ? pleats : pleats.div(2).ceil(),
      "whip stitches but for the doubled",
    );
    same(value("whip.doubled"), whipped.div(4).floor(), "doubled whip stitches");
    const thread = value("gauging.thread").div(value("fullness.rows")).div(value("fullness.strands"));
    notLess(thread, total(gauged.map((section) => F(section.waist))), "thread enough to draw along");
    law(json.rows.length >= 2, "two rows at least");
    notLess(least, F((json.rows.at(-1) as { below: string }).below), "the turn-down covers the rows");
  } else law(json.rows.length === 0, "no rows where nothing is gauged");
  edgeLaws({ json, plan, law, same, value, has });
  ringLaws({ plan, law, same, value, has });
  placeLaws({ plan, law, value, has });
  threadLaws({ json, plan, law, same, value, has });

  // Layout: nothing overlaps, nothing sticks out, enough to buy.
  const boxes = json.layout.pieces.map((piece) => ({
    name: piece.name,
    x: F(piece.x),
    y: F(piece.y),
    r: F(piece.x).add(F(piece.width)),
    b: F(piece.y).add(F(piece.length)),
  }));
  boxes.forEach((a, i) => {
    law(
      a.x.compare(0) >= 0 &&
        a.y.compare(0) >= 0 &&
        a.r.compare(F(json.layout.width)) <= 0 &&
        a.b.compare(F(json.layout.length)) <= 0,
      `${a.name} lies on the cloth`,
    );
    for (const b of boxes.slice(i + 1)) {
      law(
        a.r.compare(b.x) <= 0 || b.r.compare(a.x) <= 0 || a.b.compare(b.y) <= 0 || b.b.compare(a.y) <= 0,
        `${a.name} and ${b.name} do not overlap`,
      );
    }
  });
  const area = total(boxes.map((a) => a.r.sub(a.x).mul(a.b.sub(a.y))));
  same(
    area.add(F(json.layout.waste)),
    F(json.layout.width).mul(F(json.layout.length)),
    "pieces and waste make the cloth",
  );
  const breadths = boxes.filter(({ name }) => isRoundPiece(name)).length;
  same(F(breadths), pieces, "every breadth is laid out");
  const wholeWidth = F(json.layout.width);
  for (const a of boxes) {
    if (
      has("cloth.repeat.down") &&
      !runsAlong(plan) &&
      (a.name.startsWith("breadth") || a.name === "half breadth")
    )
      law(a.y.div(value("cloth.repeat.down")).d === 1n, `${a.name} starts on a whole repeat`);
    if (a.name.startsWith("breadth"))
      law(
        boxes.every((b) => b.name.startsWith("breadth") || b.y.compare(a.b) >= 0),
        `${a.name} is cut before anything that is no whole breadth`,
      );
  }
  // What a strip of facing gives: all of it but its selvedges, of which one narrower than the cloth has one at most.
  const strips = boxes.filter(({ name }) => name.startsWith("facing"));
  if (strips.length > 0) {
    const selvedge = value("cloth.selvedge");
    const lengthwise = runsAlong(plan) && strips.every((a) => a.r.sub(a.x).equals(value("facing.depth")));
    const gives = strips.map((a) =>
      lengthwise
        ? a.b.sub(a.y)
        : a.r.sub(a.x).equals(wholeWidth)
          ? wholeWidth.sub(selvedge.mul(2))
          : a.r.sub(a.x).sub(selvedge),
    );
    const joins = value("skirt.seam").mul(2 * strips.length);
    notLess(total(gives).sub(joins), round, "the facing, joined, goes round the hem");
  }
  notLess(
    value("cloth.buy").mul(F(1).sub(value("cloth.shrinkage"))),
    value("cloth.length"),
    "cloth to buy after shrinking",
  );

  // Seams and opening.
  law(json.seams.filter(({ kind }) => kind !== "seam").length === 1, "one opening");
  same(F(json.seams.filter(({ kind }) => kind !== "slit").length), pieces, "a seam a piece");
  notLess(
    value("placket.unsewn"),
    value("skirt.placket").add(value("turnDown.opening")),
    "unsewn from the cut top",
  );

  trimLaws(json, value, has, law, runsAlong(plan));
  liningLaws({ json, plan, value, has, law, same, notLess });
  if (has("skirt.weight")) {
    const straight = plan.recipe.skirt.flounces?.cut === "straight";
    const facing = json.layout.pieces.some(({ name }) => name.startsWith("facing strip"));
    const cloth = [
      count.mul(value(runsAlong(plan) ? "run.length" : "cloth.width")).mul(cut),
      facing ? value("facing.length").mul(value("facing.depth")) : F(0),
      has("flounces.pieces")
        ? value("flounces.pieces")
            .mul(value(runsAlong(plan) && straight ? "flounces.strip" : "cloth.width"))
            .mul(value("flounces.along"))
        : F(0),
    ];
    same(value("skirt.weight"), total(cloth).mul(value("cloth.weight")), "weight");
  }
  // Cost: what is priced, to the cent, adds up.
  if (has("cost.low")) {
    const sumOf = (...names: string[]): Fraction => total(names.filter(has).map(value));
    same(
      sumOf("cost.cloth", "cost.lining", "cost.interlining", "cost.notions", "cost.workLow"),
      value("cost.low"),
      "cost, low",
    );
    same(
      sumOf("cost.cloth", "cost.lining", "cost.interlining", "cost.notions", "cost.workHigh"),
      value("cost.high"),
      "cost, high",
    );
    const near = (name: string, wanted: Fraction): void =>
      law(value(name).sub(wanted).abs().compare(F("1/200")) <= 0, `${name} is within half a cent`);
    if (has("cost.cloth")) near("cost.cloth", value("cloth.buy").mul(value("work.price.cloth")));
    if (has("cost.workLow")) near("cost.workLow", value("work.low").mul(value("work.price.hour")));
    if (has("cost.workHigh")) near("cost.workHigh", value("work.high").mul(value("work.price.hour")));
  }

  // Time.
  same(total(json.stages.map((stage) => F(stage.low))), value("work.low"), "stages, low");
  same(total(json.stages.map((stage) => F(stage.high))), value("work.high"), "stages, high");
  return broken;
}
