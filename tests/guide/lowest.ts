/** The lowest place that a drawing names: of words, of level lines, of ends of upright ones. Millimetres of the sheet. */
export function lowest(svg: string): number {
  const ys = [...svg.matchAll(/"y":"([\d.]+)"|V([\d.]+)|[ML][\d.-]+ ([\d.]+)/g)].map(([, a, b, c]) =>
    Number(a ?? b ?? c),
  );
  return Math.max(...ys);
}
