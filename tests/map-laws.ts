/** Laws of the map, of other waists and of further hooks, from plan.json's own data and fraction.js alone. */
import Fraction from "fraction.js";
import type { planJson } from "../src/solve/json.ts";

type Json = ReturnType<typeof planJson>;
const F = (text: string): Fraction => new Fraction(text);

/** Every law of these that does not hold, in words. */
export function brokenMap(json: Json): string[] {
  const broken: string[] = [];
  const law = (holds: boolean, words: string): void => {
    if (!holds) broken.push(words);
  };
  const value = (name: string): Fraction => F((json.values[name] as { exact: string }).exact);
  const waist = value("waist.seam");
  const round = value("skirt.round");

  law(json.map[0] !== undefined && F(json.map[0].alongTop).equals(0), "the map begins at centre front");
  json.map.forEach((at, i) => {
    const before = json.map[i - 1];
    if (before) {
      law(
        F(at.alongTop).compare(F(before.alongTop)) >= 0,
        `${at.place} comes after ${before.place} along the top`,
      );
      law(F(at.waist).compare(F(before.waist)) >= 0, `${at.place} comes after ${before.place} on the waist`);
    }
    law(F(at.alongTop).compare(round) < 0 && F(at.waist).compare(waist) < 0, `${at.place} is in the ring`);
    law(F(at.turnDown).compare(value("balance.least")) >= 0, `${at.place} is turned down enough`);
    // Walking round the sections, waist and cloth keep step within each.
    let [w, c] = [F("0"), F("0")];
    let found = false;
    for (const section of json.sections) {
      const into = F(at.alongTop).sub(c);
      const cloth = F(section.cloth);
      if (into.compare(0) >= 0 && into.compare(cloth) <= 0) {
        const reached = w.add(into.mul(F(section.waist)).div(cloth));
        found ||= reached.equals(F(at.waist));
      }
      w = w.add(F(section.waist));
      c = c.add(cloth);
    }
    law(found, `${at.place}: its cloth lies where its waist is`);
  });
  for (const { station, alongTop, turnDown } of json.balance) {
    const at = json.map.find((place) => place.place.split(": ").includes(station));
    law(at?.alongTop === alongTop && at.turnDown === turnDown, `${station} is on the map as in the balance`);
  }
  for (const seam of json.seams) {
    const place = F(seam.station).mul(waist);
    law(
      json.map.some((at) => F(at.waist).equals(place)),
      `the ${seam.kind} at ${seam.station} is on the map`,
    );
  }
  const open = json.map.filter(({ unsewn }) => unsewn !== null);
  law(open.length === (json.pocket ? 2 : 1), "opening and pocket alone stay unsewn");
  law(
    open.some(
      ({ unsewnFrom, unsewn }) => unsewnFrom === "0" && F(unsewn as string).equals(value("placket.unsewn")),
    ),
    "the opening is unsewn from the cut top",
  );

  for (const set of json.hookSets) {
    const away = F(set.waist).sub(waist);
    law(away.abs().equals(F(set.away)), `hooks to ${set.waist}`);
    law(away.compare(0) > 0 === (set.on === "lap"), `hooks to ${set.waist} stand on the right side`);
    if (set.on === "lap")
      law(
        away.add("1/2").compare(value("attach.band.lap")) <= 0,
        `hooks to ${set.waist} have lap under them`,
      );
  }
  if (json.rows.length === 0) {
    law(json.otherWaists.length === 0, "no other waists without gauging");
    return broken;
  }
  const pleats = value("gauging.pleats");
  const plain = waist.sub(value("gauging.waist"));
  for (const row of json.otherWaists) {
    const spacing = F(row.spacing);
    law(spacing.mul(pleats).add(plain).equals(F(row.waist)), `spacing at ${row.waist}`);
    law(spacing.mul(F(row.perInch)).equals(1), `pleats an inch at ${row.waist}`);
    law(F(row.fullness).mul(spacing).mul(pleats).equals(value("gauging.cloth")), `fullness at ${row.waist}`);
    const wanted =
      shared(json, F(row.waist), plain, value) ??
      (spacing.compare(value("gauging.packed")) < 0
        ? "cannot"
        : spacing.compare(value("gauging.easy")) < 0
          ? "tight"
          : F(row.fullness).compare(3) < 0
            ? "gapes"
            : "serves");
    law(row.verdict === wanted, `verdict at ${row.waist}: ${row.verdict} is not ${wanted}`);
  }
  return broken;
}

/** With fullness thrown to the back: the verdict of the part behind for closeness, of the part before for gaping. */
function shared(
  json: Json,
  waist: Fraction,
  plain: Fraction,
  value: (name: string) => Fraction,
): string | undefined {
  if (!json.values["fullness.backShare"]) return undefined;
  const whole = value("waist.seam");
  const grows = waist.sub(plain).div(value("gauging.waist"));
  const parts = [true, false].map((behind) => {
    let from = F("0");
    const own = json.sections.filter((section) => {
      const share = from.add(F(section.waist).div(2)).div(whole);
      from = from.add(section.waist);
      return section.set === "gauged" && (share.compare("1/4") > 0 && share.compare("3/4") < 0) === behind;
    });
    const sum = (of: (section: (typeof own)[number]) => string): Fraction =>
      own.reduce((all, section) => all.add(of(section)), F("0"));
    const on = sum((section) => section.waist).mul(grows);
    return {
      spacing: on.div(sum((section) => String("pleats" in section ? section.pleats : 0))),
      fullness: sum((section) => section.cloth).div(on),
    };
  });
  const [back, front] = parts as [(typeof parts)[number], (typeof parts)[number]];
  if (back.spacing.compare(value("gauging.packed")) < 0) return "cannot";
  if (back.spacing.compare(value("gauging.easy")) < 0) return "tight";
  return front.fullness.compare(3) < 0 ? "gapes" : "serves";
}
