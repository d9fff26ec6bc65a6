/** A sheet that is sound, to change in one place: practice's worked example, four breadths into 27 1/2 in. */
const SHEET: Readonly<Record<string, string>> = {
  original: "1",
  title: "A brown print for the tests (invented)",
  year: "1846",
  breadths: "[{width: 43 in, count: 4}]",
  seam: "1/2 in",
  "hem-round": "172 in",
  "pleats-in-all": "220",
  waist: "27 1/2 in",
  lengths: "{front: 38 1/2 in, side: 39 1/2 in}",
  fold: "{front: 2 3/4 in, side: 1 3/4 in, back: 3/4 in}",
};

/** Its text; null takes a key out. */
export const sheetText = (changes: Readonly<Record<string, string | null>> = {}): string =>
  Object.entries({ ...SHEET, ...changes })
    .filter(([, text]) => text !== null)
    .map(([key, text]) => `${key}: ${text}\n`)
    .join("");
