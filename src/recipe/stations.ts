/** The eight places of the waist and the hem, from centre front round by the wearer's left. */
export const STATIONS = [
  "centre front",
  "left front eighth",
  "left side",
  "left back eighth",
  "centre back",
  "right back eighth",
  "right side",
  "right front eighth",
] as const;
export type Station = (typeof STATIONS)[number];

type Hyphened<Words extends string> = Words extends `${infer First} ${infer Rest}`
  ? `${First}-${Hyphened<Rest>}`
  : Words;

/** A station as a key. */
export type StationKey = Hyphened<Station>;
export const stationKey = (station: Station): StationKey => station.replaceAll(" ", "-") as StationKey;
