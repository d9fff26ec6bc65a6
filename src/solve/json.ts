/** plan.json: the plan as data for other programs. Lengths are exact rationals of inches as text. */
import { decimal, ends } from "../quantity/print.ts";
import { type Fraction, LENGTH, MONEY, PLAIN, type Quantity, toInches } from "../quantity/quantity.ts";
import { tally } from "../quantity/tape.ts";
import type { Layout, Plan, Section } from "./plan.ts";
import { stateOf } from "./state.ts";

const text = (f: Fraction): string => f.toFraction();

/** A quantity as exact text in inches, grams, seconds; money that is whole in cents as decimal text. */
export const exact = (q: Quantity): string =>
  q.dim === MONEY && ends(q.value, 2) ? decimal(q.value, 2, true) : text(toInches(q));

/** The unit of `exact`: "in", "in2", "g", "s", "1" for plain numbers, and their combinations ("g/in2", "1/in"). */
export function unitOf({ dim }: Quantity): string {
  if (dim === PLAIN) return "1";
  if (dim === LENGTH) return "in";
  if (dim === MONEY) return "money";
  const power = (name: string, n: number): string => (n === 1 ? name : `${name}${n}`);
  const parts = [
    ["money", dim.money],
    ["g", dim.mass],
    ["in", dim.length],
    ["s", dim.time],
  ] as const;
  const over = parts.filter(([, n]) => n > 0).map(([name, n]) => power(name, n));
  const under = parts.filter(([, n]) => n < 0).map(([name, n]) => power(name, -n));
  return [over.join(".") || "1", ...under].join("/");
}

const tallyJson = (parts: readonly Quantity[]) =>
  tally(parts).map(({ size, count }) => ({ size: exact(size), count }));

function sectionJson(section: Section) {
  const { name, half, set } = section;
  const base = { name, half, set, cloth: exact(section.cloth), waist: exact(section.waist) };
  if (section.set === "flat") return base;
  if (section.set !== "gauged") {
    return {
      ...base,
      pleats: section.count.value.valueOf(),
      faces: tallyJson(section.faces),
      depths: tallyJson(section.depths),
    };
  }
  return {
    ...base,
    pleats: section.pleats,
    bites: tallyJson(section.bites),
    style: section.style,
    ...(section.longSide ? { longSide: section.longSide } : {}),
    spacing: exact(section.spacing),
    marks: section.marks.map(exact),
  };
}

/** What kind of garment it is and how far it has come, for lists of many. */
function garmentJson(plan: Plan) {
  const { garment, year, cloth, fullness } = plan.recipe;
  const sets = [...new Set(fullness.zones?.map(({ set }) => set))];
  return {
    kind: garment,
    year: year ?? null,
    fibre: cloth.fibre ?? null,
    cloth: cloth.name,
    method: fullness.zones ? sets.join(", ") : (fullness.method ?? "gauged"),
    state: stateOf(plan),
  };
}
const layoutJson = ({ width: across, length: along, pieces, waste }: Layout) => ({
  width: exact(across),
  length: exact(along),
  pieces: pieces.map(({ name, x, y, width, length }) => ({
    name,
    x: exact(x),
    y: exact(y),
    width: exact(width),
    length: exact(length),
    count: 1,
  })),
  waste: exact(waste),
});

/** The plan as a plain object ready for JSON; keys in a fixed order, so that the same plan gives the same bytes. */
export function planJson(plan: Plan, version: string) {
  return {
    plainwork: version,
    recipe: plan.recipe.title,
    size: plan.recipe.size ?? null,
    garment: garmentJson(plan),
    values: Object.fromEntries(
      [...plan.values.values()].map(({ name, quantity, shown, how }) => [
        name,
        { exact: exact(quantity), unit: unitOf(quantity), shown, how },
      ]),
    ),
    balance: plan.balance.map(({ station, alongTop, toFloor, finished, turnDown }) => ({
      station,
      alongTop: exact(alongTop),
      toFloor: exact(toFloor),
      finished: exact(finished),
      turnDown: exact(turnDown),
    })),
    sections: plan.sections.map(sectionJson),
    rows: plan.rows.map((below) => ({ below: exact(below) })),
    sensitivity: plan.sensitivity.map(({ section, change, pleats, perInch, closes }) => ({
      section,
      change: exact(change),
      pleats,
      perInch: exact(perInch),
      closes,
    })),
    seams: plan.seams.map(({ station, kind }) => ({ station: exact(station), kind })),
    breadths: plan.breadths.map(({ name, from, to }) => ({
      name,
      from: exact(from),
      to: exact(to),
    })),
    tucks: plan.tucks.map(({ seam, edge, crease }) => ({
      seam: exact(seam),
      edge: exact(edge),
      crease: exact(crease),
    })),
    flounces: plan.flounces.map(({ edge, heading }) => ({ edge: exact(edge), heading: exact(heading) })),
    pocket: plan.pocket ? { station: exact(plan.pocket.share), alongTop: exact(plan.pocket.alongTop) } : null,
    map: plan.map.map(({ place, waist, alongTop, turnDown, unsewn }) => ({
      place,
      waist: exact(waist),
      alongTop: exact(alongTop),
      turnDown: exact(turnDown),
      unsewnFrom: unsewn ? exact(unsewn.from) : null,
      unsewn: unsewn ? exact(unsewn.to) : null,
    })),
    otherWaists: plan.otherWaists.map(({ waist, spacing, perInch, fullness, verdict }) => ({
      waist: exact(waist),
      spacing: exact(spacing),
      perInch: exact(perInch),
      fullness: exact(fullness),
      verdict,
    })),
    hookSets: plan.hookSets.map(({ waist, away, on }) => ({ waist: exact(waist), away: exact(away), on })),
    layout: layoutJson(plan.layout),
    linings: plan.linings.map(({ which, layout }) => ({ which, ...layoutJson(layout) })),
    stages: plan.stages.map(({ name, low, high }) => ({ name, low: exact(low), high: exact(high) })),
    ...(plan.sampler
      ? {
          sampler: {
            bites: tallyJson(plan.sampler.bites ?? []),
            stages: plan.sampler.stages.map(({ name, low, high }) => ({
              name,
              low: exact(low),
              high: exact(high),
            })),
          },
        }
      : {}),
    messages: plan.messages.map(({ code, level, text: said, place }) => ({
      code,
      level,
      text: said,
      place: place ? { file: place.file, line: place.line, column: place.column } : null,
    })),
  };
}
