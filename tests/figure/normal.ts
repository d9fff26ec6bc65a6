/** A drawing's text as lines that can be compared by eye: one element a line, one outline of a path a line. */
export const normal = (svg: string): string =>
  svg
    .replace(/></g, ">\n<")
    .replace(/(?<=[\dz])M/g, "\nM")
    .trim();

/** The first line in which two drawings differ, in words; undefined where they are the same. */
export function firstChange(kept: string, drawn: string): string | undefined {
  const [before, after] = [normal(kept).split("\n"), normal(drawn).split("\n")];
  const at = after.findIndex((line, i) => line !== before[i]);
  if (at < 0 && before.length === after.length) return undefined;
  const line = at < 0 ? after.length : at;
  return `line ${line + 1}: was ${before[line] ?? "nothing"}, is ${after[line] ?? "nothing"}`;
}
