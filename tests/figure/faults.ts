/** What is wrong with the labels of a drawing, in words; nothing where all is well. */
import { type Box, inside, overlap } from "../../src/figure/box.ts";
import type { Drawing } from "../../src/figure/drawing.ts";
import { PICTURE } from "../../src/figure/language.ts";

/** Finishes the drawing and looks at every label: does it leave the picture, meet another, or lie under another's leader? */
export function faults(drawing: Drawing): string[] {
  const { svg } = drawing.finish("title", "description");
  const height = Number(String(svg.properties.viewBox).split(" ")[3]);
  const { placed } = drawing.labels;
  const out = ({ x, y, width, height: tall }: Box): boolean =>
    x < 0 || y < 0 || x + width > PICTURE.width + 1e-6 || y + tall > height;
  return placed.flatMap((label, i) => [
    ...(out(label.box) ? [`"${label.wish.text}" leaves the picture`] : []),
    ...placed
      .slice(i + 1)
      .filter((other) => overlap(label.box, other.box))
      .map((other) => `"${label.wish.text}" lies on "${other.wish.text}"`),
    ...placed
      .filter(({ leader }, j) => j !== i && leader && inside(leader, label.box))
      .map((other) => `the leader of "${other.wish.text}" runs through "${label.wish.text}"`),
  ]);
}
