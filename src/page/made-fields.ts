/** Fields for what was really made: entered once the work is done, kept and given out with the record. */
import { STATIONS, stationKey } from "../recipe/stations.ts";
import { labelled, make } from "./make.ts";
import type { Store } from "./store.ts";

const LENGTH = "26 1/2 in";

/** What a record calls it, its words, an example. */
const MADE: readonly (readonly [name: string, words: string, example: string])[] = [
  ["made.round", "Round at the hem", "170 in"],
  ["made.closed", "Waist seam, closed", LENGTH],
  ["made.pleats", "Pleats gauged, in all", "180"],
  ["made.bite", "Bite, on average", "7/16 in"],
  ["made.thread", "Gauging thread used", "9 yd"],
  ["made.weight", "Weight", "2 lb 3 oz"],
];

const GROUPS: readonly (readonly [legend: string, fields: typeof MADE])[] = [
  ["What was made", MADE],
  ["Hem off the floor, finished", STATIONS.map((place) => [`off-floor.${stationKey(place)}`, place, "2 in"])],
  [
    "Hem off the floor, after hanging a day",
    STATIONS.map((place) => [`hung.${stationKey(place)}`, place, "2 in"]),
  ],
];

/** What was made, in words: for the printed record. */
export const madeWords = (said: Readonly<Record<string, string>>): string[] =>
  GROUPS.flatMap(([legend, fields]) =>
    fields.flatMap(([name, words]) =>
      said[name] === undefined ? [] : `${fields === MADE ? words : `${legend}, ${words}`}: ${said[name]}`,
    ),
  );

/** A number, and for all but pleats a unit behind it: the program that adds the record reads it exactly. */
const FITS =
  /^[\d½⅓⅔¼¾⅛⅜⅝⅞][\d\s./⁄½⅓⅔¼¾⅛⅜⅝⅞]*(?:in|inch|inches|ft|yds?|cm|mm|m|nails?|["″”'′]|g|kg|oz|lbs?)(?:[\s\d].*)?$/i;
const WHOLE = /^\d{1,5}(?: 1\/2|½)?$/;

/** What is wrong with an entry, or nothing. */
export function entryFault(name: string, text: string): string {
  const word = text.trim();
  if (word === "") return "";
  if (name === "made.pleats") return WHOLE.test(word) ? "" : "✗ write a number, as 180";
  const example = name === "made.weight" ? "2 lb 3 oz, or 990 g" : "26 1/2 in, or 67.3 cm";
  return FITS.test(word) ? "" : `✗ write a number with its unit, as ${example}`;
}

/** The fields, in groups that open; each keeps what is typed under its name in what is said. */
export function madeFields(document: Document, store: Store, kept: () => void): HTMLElement[] {
  const field = ([name, words, example]: (typeof MADE)[number]): HTMLElement => {
    const id = `said-${name.replace(".", "-")}`;
    const input = make(document, "input", {
      id,
      type: "text",
      autocomplete: "off",
      placeholder: example,
      maxlength: "40",
    });
    input.dataset.said = name;
    const fault = make(document, "small", { class: "field-message", role: "alert" });
    const check = (): void => {
      fault.textContent = entryFault(name, input.value);
    };
    input.addEventListener("change", check);
    input.addEventListener("input", () => {
      const { [name]: _, ...others } = store.kept.said;
      store.keep({ said: input.value.trim() === "" ? others : { ...others, [name]: input.value } });
      if (fault.textContent !== "") check();
      kept();
    });
    const frame = labelled(document, words, input);
    frame.append(fault);
    return frame;
  };
  return GROUPS.map(([legend, fields]) =>
    make(
      document,
      "details",
      { class: "made-fields" },
      make(document, "summary", {}, legend),
      ...fields.map(field),
    ),
  );
}
