/** The laws of the edge a skirt is set to: band, part band, piping, hooks. From first principles, as laws.ts. */
import Fraction from "fraction.js";
import type { planJson } from "../src/solve/json.ts";
import type { Plan } from "../src/solve/plan.ts";

interface Checks {
  readonly json: ReturnType<typeof planJson>;
  readonly plan: Plan;
  law(holds: boolean, words: string): void;
  same(a: Fraction, b: Fraction, words: string): void;
  value(name: string): Fraction;
  has(name: string): boolean;
}

const two = new Fraction(2n);

export function edgeLaws({ json, plan, law, same, value, has }: Checks): void {
  const { to, opening } = plan.recipe.attach;
  const share = new Fraction(json.seams.find(({ kind }) => kind !== "seam")?.station ?? "0");
  const near = share.compare("1/2") > 0 ? new Fraction(1n).sub(share) : share;
  same(value("opening.fromFront"), near.mul(value("waist.seam")), "the opening from centre front");
  const slit = json.seams.some(({ kind }) => kind === "slit");
  // A slit's place is the one asked for; once the edge is made, tests/solve/made.test.ts holds it against the plan before.
  const part =
    slit && opening.fromCentre && !plan.opening.under
      ? value("attach.opening.fromCentre")
      : has("opening.planned")
        ? value("opening.planned")
        : near.mul(value("waist.planned"));
  if (plan.opening.under && !has("attach.made")) law(underFold(plan), "the opening lies under a fold's line");
  const planned = value("waist.planned");
  const pieces = json.layout.pieces;

  // Flat and pleated parts: one layer in the seam, or turned down; past 5 mm never whipped unless it is asked for.
  const rest = plan.sections.filter(({ set }) => set !== "gauged");
  law((plan.flatParts !== undefined) === rest.length > 0, "flat parts are set where there are any");
  if (plan.flatParts) {
    const most = rest.reduce((n, part) => Math.max(n, "layers" in part ? part.layers : 1), 1);
    const cloths = most * (plan.flatParts === "whip" ? 2 : 1);
    same(value("plain.cloths"), new Fraction(cloths), "cloths in the seam of the flat parts");
    same(
      value("plain.waist").add(has("gauging.waist") ? value("gauging.waist") : new Fraction(0n)),
      value("waist.seam"),
      "flat and gauged waist",
    );
    const asked = plan.recipe.attach.flatParts;
    if (asked) law(plan.flatParts === asked, "flat parts are set as asked");
    else if (has("cloth.thickness"))
      law(
        // Two layers of cloth, and of what lies behind it none, one or both, wherever a fold is turned down.
        (
          [
            ["lining", plan.recipe.lining],
            ["interlining", plan.recipe.interlining],
          ] as const
        )
          .reduce((sum, [name, own]) => {
            const layers = own ? { separate: 0, short: 0, fold: 1, turned: 2 }[own.to] : 0;
            return layers === 0 ? sum : sum.add(value(`${name}.thickness`).mul(layers));
          }, value("cloth.thickness").mul(2))
          .mul("25.4")
          .mul(most)
          .compare(5) >
          0 ===
          (plan.flatParts === "seam"),
        "flat parts go by their thickness",
      );
  }

  // Band and hooks.
  const banded = to !== "bodice-edge";
  law(has("band.length") === banded && has("band.depth") === banded, "a band where there is a band");
  law(pieces.some(({ name }) => /band/.test(name)) === banded, "a band is laid out where there is one");
  if (banded) {
    same(
      value("band.length"),
      (to === "part-band" ? part : planned)
        .add(value("attach.band.lap"))
        .add(value("attach.band.turning").mul(two)),
      "band",
    );
    law(value("hooks.band").compare(2) >= 0, "two hooks at a band's end at least");
    const spaces = value("hooks.bandFirst").mul(value("hooks.band")).mul(two);
    same(spaces, value("attach.band.depth"), "hooks over the band's depth");
  }
  const down = has("hooks.placketApart")
    ? value("hooks.placketApart").mul(value("hooks.placket").sub(1n))
    : value("hooks.placketFirst").mul(two);
  same(down, value("skirt.placket"), "hooks down the placket");
  same(
    value("hooks.count"),
    (banded ? value("hooks.band") : new Fraction(0n)).add(value("hooks.placket")),
    "hooks",
  );

  // Piping.
  const square = pieces.filter(({ name }) => name === "bias square for piping");
  const piped = to !== "waistband" || plan.recipe.attach.piping !== undefined;
  law(square.length === (piped ? 1 : 0) && has("piping.length") === piped, "piping where there is piping");
  if (!piped) return;
  const run =
    to === "bodice-edge"
      ? has("edge.length")
        ? value("edge.length")
        : planned
      : to === "part-band"
        ? planned.sub(part)
        : planned.add(value("attach.band.lap"));
  const turning = value("attach.piping.turning");
  const tape = value("tape");
  const [width, length, along] = [
    value("piping.width"),
    value("piping.length"),
    value("piping.alongSelvedge"),
  ];
  same(length, run.add(turning.mul(two)), "piping length");
  const needed = turning.mul(two).add(value("attach.piping.cord").mul("22/7"));
  law(width.div(tape).d === 1n && along.div(tape).d === 1n, "the strip lies on the tape");
  law(
    width.compare(needed) >= 0 && width.sub(tape).compare(needed) < 0,
    "the strip is wide enough by less than a mark",
  );
  const twice = width.mul(width).mul(two);
  const less = along.sub(tape);
  law(
    along.mul(along).compare(twice) >= 0 && less.mul(less).compare(twice) < 0,
    "root 2 along the selvedge, up to a mark",
  );
  const side = new Fraction(square[0]?.width ?? "0");
  same(side, new Fraction(square[0]?.length ?? "0"), "the bias square is square");
  law(side.mul(side).compare(length.mul(width)) >= 0, "no more piping than the square's area gives");
  // n strips of root(2) side - (1, 3, 3, 5, 5 ...) widths, less n - 1 joins, reach the length; n - 1 do not, or but just.
  const reach = (n: number): boolean => {
    let lost = value("attach.piping.join").mul(n - 1);
    for (let i = 1; i <= n; i += 1) lost = lost.add(width.mul(i % 2 ? i : i + 1));
    const wanted = length.add(lost);
    return (
      side
        .mul(side)
        .mul(2 * n * n)
        .compare(wanted.mul(wanted)) >= 0
    );
  };
  const strips = Number(value("piping.strips").n);
  law(reach(strips), "the strips reach the piping's length");
  law(strips === 1 || !reach(strips - 1), "no strip more than it takes");
}

/** Is the opening at the end of a laid pleat (where a fold is laid to), counted pleat by pleat from the part's front end? */
function underFold(plan: Plan): boolean {
  const F = (q: { readonly value: { toFraction(): string } }): Fraction => new Fraction(q.value.toFraction());
  const round = plan.sections.reduce((sum, { cloth }) => sum.add(F(cloth)), new Fraction(0n));
  const at = F(plan.opening.alongTop);
  const near = at.mul(two).compare(round) > 0 ? round.sub(at) : at;
  return plan.sections.some((section) => {
    if (section.half !== "left" || section.set === "flat" || section.set === "gauged") return false;
    const take = { knife: 2, box: 4, "double-box": 8 }[section.set];
    let place = F(section.clothFrom);
    const ends = section.faces.map((face, i) => {
      place = place.add(F(face)).add(F(section.depths[i] as { value: Fraction }).mul(take));
      return place;
    });
    return [F(section.clothFrom), ...ends].some((end) => end.equals(near));
  });
}
