/** What the chapter "as made" prints of a record: plan beside work, differences, and what follows from them where a rule is known. */
import { decimal, printCloth, printExactly, printFine, vulgar } from "../quantity/print.ts";
import {
  abs,
  add,
  compare,
  div,
  type Fraction,
  isNegative,
  isZero,
  mul,
  plain,
  type Quantity,
  quantity,
  sub,
  TIME,
} from "../quantity/quantity.ts";
import { roundTo } from "../quantity/tape.ts";
import type { Entry, HemPlace } from "../recipe/as-made/as-made.ts";
import { type Standing, standing } from "../recipe/as-made/standing.ts";
import type { Plan } from "../solve/plan.ts";
import { shown } from "../solve/shown.ts";
import { madeHours, spanWords } from "./made-hours.ts";

/** The record as far as it goes; undefined where nothing is recorded. */
export const madeOf = ({ recipe }: Plan): Standing | undefined => {
  const { asMade } = recipe.recorded ?? {};
  return asMade && asMade.entries.length > 0 ? standing(asMade) : undefined;
};

interface Row {
  readonly what: string;
  readonly planned: string;
  readonly made: string;
  readonly difference: string;
  readonly why: string;
}

const NOTHING = {
  madeRows: [],
  madeTrials: [],
  madeSections: [],
  madeHem: [],
  madeHours: [],
  madeMeasures: [],
  madeWords: [],
  madePhotographs: [],
  sittings: [],
};

/** Every list of the chapter; empty ones where nothing is recorded. */
export function asMadeContext(plan: Plan) {
  const made = madeOf(plan);
  if (!made) return NOTHING;
  const entries = plan.recipe.recorded?.asMade?.entries ?? [];
  return {
    sittings: entries.map((entry) => sitting(entry, plan)),
    madeRows: rows(plan, made),
    madeTrials: trials(plan, made),
    madeSections: sections(plan, made),
    madeHem: hem(plan, made),
    madeHours: madeHours(plan, made),
    madeMeasures: otherMeasures(plan, made),
    madeWords: entries.flatMap(words),
    madePhotographs: made.photographs.map((path) => ({ path })),
  };
}

/** Measures that the garment was made with and the recipe has otherwise. */
export function otherMeasures({ recipe }: Plan, { measures }: Standing) {
  return Object.entries(measures).flatMap(([path, text]) => {
    const was = recipe.fields.find((field) => field.path === path)?.text ?? "";
    return text === was ? [] : [{ path, text: text || "taken out", was: was || "not given" }];
  });
}

const sign = (q: Quantity): string => (isNegative(q) ? "-" : "+");

/** A share of the planned as a signed per cent: "+0.9 %"; "none" where there is no difference. */
function percent(difference: Quantity, planned: Quantity): string {
  if (isZero(planned)) return "";
  if (isZero(difference)) return "none";
  const share: Fraction = difference.value.div(planned.value).mul(100);
  if (decimal(share.abs(), 1) === "0") return "under 0.1 %";
  return `${isNegative(difference) ? "-" : "+"}${decimal(share.abs(), 1)} %`;
}

function rows(plan: Plan, made: Standing): Row[] {
  const { show, tape, attach } = plan.recipe;
  const planned = (name: string): Quantity | undefined => plan.values.get(name)?.quantity;
  const text = (name: string): string => plan.values.get(name)?.shown ?? "";
  const found: Row[] = [];
  const put = (
    what: string,
    name: string,
    value: Quantity | undefined,
    print: (q: Quantity) => string,
    parts: Partial<Row>,
  ): void => {
    if (!planned(name)) return;
    found.push({
      what,
      planned: text(name),
      made: value ? print(value) : "",
      difference: "",
      why: "",
      ...parts,
    });
  };
  const length = (q: Quantity): string => printExactly(q, show);
  const apart = (value: Quantity | undefined, name: string): Quantity | undefined => {
    const plannedMark = planned(name);
    return value && plannedMark && sub(value, roundTo(plannedMark, tape));
  };
  const inLength = (value: Quantity | undefined, name: string): string => {
    const by = apart(value, name);
    if (!by) return "";
    return isZero(by) ? "none" : `${sign(by)}${length(abs(by))} (${percent(by, planned(name) as Quantity)})`;
  };
  const inShare = (value: Quantity | undefined, name: string): string => {
    const base = planned(name);
    return value && base ? percent(sub(value, base), base) : "";
  };
  const { round, closed, pleats, bite, thread, weight } = made.made;
  const seam = closed ?? planned("waist.seam");
  put("Round", "skirt.round", round, length, {
    difference: inLength(round, "skirt.round"),
    why: round && seam ? `the fullness is then ${decimal(round.value.div(seam.value), 2)} : 1` : "",
  });
  const longer = apart(closed, "waist.planned");
  put("Waist seam, closed", "waist.planned", closed, length, {
    difference: inLength(closed, "waist.planned"),
    why: longer && closed ? closedWords(longer, length, attach.to === "waistband", plan, closed) : "",
  });
  const cloth = planned("gauging.cloth");
  const count = planned("gauging.pleats");
  const morePleats = pleats && count && sub(pleats, count);
  put("Gauged pleats", "gauging.pleats", pleats, (q) => vulgar(q.value), {
    difference: morePleats
      ? isZero(morePleats)
        ? "none"
        : `${sign(morePleats)}${vulgar(morePleats.value.abs())}`
      : "",
    why:
      pleats && cloth && morePleats && !isZero(morePleats)
        ? `each bite was then ${printFine(div(cloth, mul(pleats, plain(2n))), show)} on average`
        : "",
  });
  put("Bite, on average", "gauging.bite", bite, length, { difference: inShare(bite, "gauging.bite") });
  put("Gauging thread used", "gauging.thread", thread, (q) => printCloth(q, show), {
    difference: inShare(thread, "gauging.thread"),
  });
  const heavier = weight && planned("skirt.weight");
  put("Weight", "skirt.weight", weight, (q) => shown(q, "weight", plan.recipe), {
    difference: inShare(weight, "skirt.weight"),
    why:
      heavier && compare(weight, heavier) > 0
        ? "the plan weighs the cloth alone, without thread, hooks, braid and band"
        : "",
  });
  return found;
}

/** What an edge that closes otherwise than planned means for hooks and gauging. */
function closedWords(
  by: Quantity,
  length: (q: Quantity) => string,
  hooked: boolean,
  plan: Plan,
  closed: Quantity,
): string {
  if (isZero(by)) return "";
  const d = length(abs(by));
  const { made } = plan.recipe.attach;
  const follow =
    made && compare(made, closed) === 0
      ? "the spacing was worked out for it; the bites stayed"
      : `write made: ${length(closed)} under attach, and the spacing follows; the bites stay`;
  if (!hooked) return follow;
  const eyes = isNegative(by)
    ? `to close as planned the eyes go ${d} further out on the lap`
    : `to close as planned the eyes go ${d} further in`;
  return `${follow}; ${eyes}`;
}

function trials(plan: Plan, { trials: sewn }: Standing) {
  const { show } = plan.recipe;
  const [waist, cloth] = ["section.waist", "section.cloth"].map((name) => plan.values.get(name)?.quantity);
  return sewn.map(({ date, trial }) => {
    const reaches = waist && cloth && div(mul(trial.cloth, waist), cloth);
    const over = reaches && sub(trial.closesTo, reaches);
    const verdict = !over
      ? ""
      : isNegative(over) || isZero(over)
        ? "closes: the bites hold"
        : "does not close: longer bites";
    return {
      date,
      cloth: printExactly(trial.cloth, show),
      pleats: vulgar(trial.pleats.value),
      closesTo: printExactly(trial.closesTo, show),
      reaches: reaches ? printExactly(roundTo(reaches, plan.recipe.tape, "down"), show) : "",
      verdict,
    };
  });
}

function sections(plan: Plan, { sections: made }: Standing) {
  const { show } = plan.recipe;
  return plan.sections
    .filter(({ name }) => made.has(name))
    .map((section) => {
      const own = made.get(section.name);
      const count =
        section.set === "flat"
          ? "none"
          : section.set === "gauged"
            ? String(section.pleats)
            : vulgar(section.count.value);
      return {
        name: section.name,
        pleatsPlanned: count,
        pleats: own?.pleats ? vulgar(own.pleats.value) : "",
        waistPlanned: printExactly(roundTo(section.waist, plan.recipe.tape), show),
        waist: own?.waist ? printExactly(own.waist, show) : "",
      };
    });
}

/** Hem to floor: a hem that hangs too high or too low is put right at the fold. */
function hem(plan: Plan, { offFloor, hung }: Standing) {
  if (Object.keys(offFloor).length + Object.keys(hung).length === 0) return [];
  const { show, skirt } = plan.recipe;
  const length = (q: Quantity | undefined): string => (q ? printExactly(q, show) : "");
  return plan.balance.map(({ station }) => {
    const place = station.replaceAll(" ", "-") as HemPlace;
    const last = hung[place] ?? offFloor[place];
    const by = last && sub(last, skirt.offFloor);
    const why =
      !by || isZero(by)
        ? ""
        : `${length(abs(by))} ${isNegative(by) ? "too low: turn down so much more" : "too high: turn down so much less"}`;
    return {
      station,
      planned: length(skirt.offFloor),
      finished: length(offFloor[place]),
      hung: length(hung[place]),
      why: last && why === "" ? "as planned" : why,
    };
  });
}

/** One entry in a line: when, how long, what was done. */
function sitting(
  { date, hours, trial, made, offFloor, hung, finished, notes, photographs }: Entry,
  plan: Plan,
) {
  const { show } = plan.recipe;
  const spent = Object.values(hours).reduce(add, quantity(0n, TIME));
  const parts = [
    ...Object.entries(hours).map(([chapter, time]) => `${chapter.replaceAll("-", " ")} ${spanWords(time)}`),
    trial &&
      `trial of ${printExactly(trial.cloth, show)} with ${vulgar(trial.pleats.value)} pleats, drawn to ${printExactly(trial.closesTo, show)}`,
    Object.keys(made).length > 0 && "measured as made",
    Object.keys(offFloor).length + Object.keys(hung).length > 0 && "hem measured",
    Object.keys(notes).length > 0 && "notes",
    photographs.length > 0 &&
      (photographs.length === 1 ? "a photograph" : `${photographs.length} photographs`),
    finished && `finished (${finished})`,
  ];
  return { date, hours: isZero(spent) ? "" : spanWords(spent), what: parts.filter(Boolean).join("; ") };
}

/** "Note on gauging, step 3"; "second fitting, left side, Read" for what was read into a fitting's table. */
function noteOn(id: string): string {
  const [chapter = "", ...place] = id.split("/");
  const words = chapter.replaceAll("-", " ");
  const [step = ""] = place;
  return /^\d+$/.test(step) ? `Note on ${words}, step ${step}` : [words, ...place].filter(Boolean).join(", ");
}

function words({ date, changed, lessons, notes }: Entry) {
  return [
    ...(changed ? [{ date, about: "Changed", text: changed }] : []),
    ...(lessons ? [{ date, about: "Otherwise next time", text: lessons }] : []),
    ...Object.entries(notes).map(([id, text]) => ({
      date,
      about: noteOn(id),
      text: text === "" ? "taken back" : text,
    })),
  ];
}
