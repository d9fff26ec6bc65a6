/** Row 25, second part: the net of a frustum, from the same exact root that gives the straight path over a hoop. */
import { expect, it } from "vitest";
import { enclosed, middle, root } from "../../src/quantity/enclosure.ts";
import { fraction } from "../../src/quantity/quantity.ts";

it("row 25: ring diameters 5 and 8, rise 4: radii 7.12 and 11.39, angle 126.4 degrees [a frustum net worked on a teacher's page; seen]", () => {
  const [small, large, rise] = [fraction("5/2"), fraction(4n), fraction(4n)];
  const out = large.sub(small);
  const slant = middle(root(enclosed(out.mul(out).add(rise.mul(rise)))), 12);
  const radii = [small, large].map((radius) => radius.mul(slant).div(out));
  expect(radii[0]?.sub("7.12").abs().compare("0.005")).toBeLessThanOrEqual(0);
  expect(radii[1]?.sub("11.39").abs().compare("0.005")).toBeLessThanOrEqual(0);
  const angle = large.mul(360).div(radii[1] ?? 1);
  expect(angle.sub("126.4").abs().compare("0.05")).toBeLessThanOrEqual(0);
});
