/** The laws of lengths estimated over a hoop, from first principles: floats and sums over small steps, no code of the solvers. */
import Fraction from "fraction.js";
import type { planJson } from "../src/solve/json.ts";

/** The girth of an ellipse by the trapezium rule over its angle, which closes in faster than any power for a closed curve. */
function girth(a: number, b: number): number {
  const steps = 4096;
  let sum = 0;
  for (let i = 0; i < steps; i += 1) {
    const angle = (2 * Math.PI * i) / steps;
    sum += Math.hypot(a * Math.sin(angle), b * Math.cos(angle));
  }
  return (sum * 2 * Math.PI) / steps;
}

/** A quarter of an ellipse as many small straight steps: a little short of the true path. */
function quarter(a: number, b: number): number {
  const steps = 4000;
  let sum = 0;
  for (let i = 0; i < steps; i += 1) {
    const [p, q] = [i, i + 1].map((n) => (Math.PI / 2) * (n / steps)) as [number, number];
    sum += Math.hypot(a * (Math.cos(p) - Math.cos(q)), b * (Math.sin(p) - Math.sin(q)));
  }
  return sum;
}

/** Every law of an estimate that does not hold; empty where lengths are measured. */
export function brokenEstimates(json: ReturnType<typeof planJson>): string[] {
  if (!json.values["domed.front"]) return [];
  const value = (name: string): number => new Fraction(json.values[name]?.exact ?? "0").valueOf();
  const tape = value("tape");
  const shape = value("wearer.hoop.shape");
  const halfWidth = value("wearer.hoop.round") / girth(1, shape);
  const halfDepth = halfWidth * shape;
  const back = value("wearer.hoop.offset");
  const waist = value("waist.seam") / (2 * Math.PI);
  const lowest = value("wearer.hoop.height");
  const fall = value("wearer.waistHeight") - lowest;
  const side = halfWidth * Math.sqrt(1 - (back / halfDepth) ** 2);
  const edges = { front: halfDepth - back, left: side, right: side, back: halfDepth + back };
  return Object.entries(edges).flatMap(([station, edge]) => {
    const reach = Math.max(0, edge - waist);
    const broken: string[] = [];
    const near = (name: string, wanted: number): void => {
      const found = value(`${name}.${station}`);
      if (Math.abs(found - wanted) > tape / 2 + 1e-5)
        broken.push(`${name} ${station}: ${found} is not ${wanted}`);
      if (
        new Fraction(json.values[`${name}.${station}`]?.exact ?? "0").div(json.values.tape?.exact ?? "1")
          .d !== 1n
      )
        broken.push(`${name} ${station} lies on a tape mark`);
    };
    near("straight", Math.hypot(reach, fall) + lowest);
    near("domed", quarter(reach, fall) + lowest);
    if (value(`domed.${station}`) < value(`straight.${station}`))
      broken.push(`a dome at the ${station} is no shorter way`);
    return broken;
  });
}
