/** Reads path data back into points, as a browser would, so that a test can look at what was drawn. */
import type { Element } from "hast";

export type Outline = readonly (readonly [number, number])[];

/** Every element of a tree by its tag, in order. */
export const all = (tree: Element, tagName: string): Element[] =>
  tree.children.flatMap((child) =>
    child.type === "element" ? [...(child.tagName === tagName ? [child] : []), ...all(child, tagName)] : [],
  );

/** The outlines of path data made of M, l, h, v and z; anything else in it is an error. */
export function outlinesOf(d: string): Outline[] {
  const outlines: [number, number][][] = [];
  let [x, y] = [0, 0];
  for (const [step, command, rest = ""] of d.matchAll(/([a-zA-Z])([^a-zA-Z]*)/g)) {
    const numbers = [...rest.matchAll(/-?(?:\d+\.?\d*|\.\d+)/g)].map(([text]) => Number(text));
    const [a = 0, b = 0] = numbers;
    if (command === "z") continue;
    if (command === "M") {
      [x, y] = [a, b];
      outlines.push([[x, y]]);
      continue;
    }
    if (command === "l") [x, y] = [x + a, y + b];
    else if (command === "h") x += a;
    else if (command === "v") y += a;
    else throw new Error(`"${step}" is not read`);
    outlines.at(-1)?.push([x, y]);
  }
  return outlines;
}
