/** A garment's small picture as lines in the catalogue: the program's own is taken over, nothing but numbers comes with it. */
import { describe, expect, it } from "vitest";
import { picture } from "../../src/figure/picture.ts";
import { svgFile } from "../../src/figure/serialize.ts";
import { sketchOf } from "../../src/shelf/catalogue/sketch.ts";
import { planOf } from "../recipes.ts";

const own = svgFile(picture(planOf()));

describe("the small picture", () => {
  it("is taken over as two paths, within its own bounds", () => {
    const sketch = sketchOf(own) ?? "";
    const paths = [...sketch.matchAll(/ d="([^"]*)"/g)].map(([, d]) => d as string);
    expect(paths).toHaveLength(2);
    for (const d of paths) {
      expect(own).toContain(` d="${d}"`);
      expect(outside(d)).toEqual([]);
    }
  });

  it("is small: a list of a thousand stays light", () => {
    expect(own.length).toBeLessThan(3000);
  });

  it.each([
    ["a script beside the lines", own.replace("</svg>", "<script>1</script></svg>")],
    ["an event", own.replace('fill="none"', 'fill="none" onload="x()"')],
    ["a picture of something else", '<svg><path d="M0 0" fill="none"/></svg>'],
    ["lines with more in them", own.replace(/ d="/g, ' d="url(javascript:x) ')],
    ["a line too many", own.replace("</svg>", '<path d="M0 0" fill="none" stroke="currentColor"/></svg>')],
    ["nothing", ""],
  ])("%s: nothing but lines comes over", (_, text) => {
    const sketch = sketchOf(text);
    if (sketch !== undefined)
      expect(sketch).toMatch(
        /^<svg [\w="\s-]+>(<path (class="outline" )?d="[MLHVZmlhvz\d .-]+"\/>){2}<\/svg>$/,
      );
    expect(sketch ?? "").not.toMatch(/script|onload/);
  });
});

/** The points of path data that lie outside 150 by 100. */
function outside(d: string): string[] {
  let [x, y] = [0, 0];
  const far: string[] = [];
  for (const [step, kind = "", numbers = ""] of d.matchAll(/([Mlhvz])([^Mlhvz]*)/g)) {
    const [a = 0, b = 0] = numbers.match(/-?(\d+\.?\d*|\.\d+)/g)?.map(Number) ?? [];
    if (kind === "M") [x, y] = [a, b];
    if (kind === "l") [x, y] = [x + a, y + b];
    if (kind === "h") x += a;
    if (kind === "v") y += a;
    if (x < 0 || x > 150 || y < 0 || y > 100) far.push(step);
  }
  return far;
}
