/**
 * Where a piece is laid and what room is left, against a grid of unit squares: each piece goes to the first row, then the first
 * column, where all its squares are free; the rooms are all the largest empty rectangles. And the bound under every layout.
 */
import fc from "fast-check";
import { expect, it } from "vitest";
import { bareCloth, covered, leastLength, occupy, placeFor, type Room } from "../../src/solve/rooms.ts";

const WIDE = 9;
const box = fc.record({
  width: fc.integer({ min: 1, max: WIDE }),
  length: fc.integer({ min: 1, max: 5 }),
  step: fc.constantFrom(1, 1, 2, 3),
});
const boxes = fc.array(box, { minLength: 1, maxLength: 6 });
type Small = { width: number; length: number; step: number };
const large = ({ width, length, step }: Small) => ({
  width: BigInt(width),
  length: BigInt(length),
  step: BigInt(step),
});

class Grid {
  private readonly taken = new Set<string>();
  private readonly long: number;
  constructor(long: number) {
    this.long = long;
  }
  free(x: number, y: number, right: number, bottom: number): boolean {
    if (x < 0 || y < 0 || right > WIDE || bottom > this.long) return false;
    for (let i = x; i < right; i += 1)
      for (let j = y; j < bottom; j += 1) if (this.taken.has(`${i} ${j}`)) return false;
    return true;
  }
  lay({ width, length, step }: Small): string {
    for (let y = 0; ; y += step)
      for (let x = 0; x + width <= WIDE; x += 1)
        if (this.free(x, y, x + width, y + length)) {
          for (let i = x; i < x + width; i += 1)
            for (let j = y; j < y + length; j += 1) this.taken.add(`${i} ${j}`);
          return `${x} ${y}`;
        }
  }
  /** Every empty rectangle that no side of can be moved outwards. */
  largest(): string[] {
    const found: string[] = [];
    for (let x = 0; x < WIDE; x += 1)
      for (let y = 0; y < this.long; y += 1)
        for (let r = x + 1; r <= WIDE; r += 1)
          for (let b = y + 1; b <= this.long; b += 1) {
            if (!this.free(x, y, r, b)) break;
            const grows =
              this.free(x - 1, y, r, b) ||
              this.free(x, y - 1, r, b) ||
              this.free(x, y, r + 1, b) ||
              this.free(x, y, r, b + 1);
            if (!grows) found.push(`${x} ${y} ${r} ${b}`);
          }
    return found.sort();
  }
}

it("every piece goes where the grid has it, and the rooms are the grid's largest empty rectangles", () => {
  fc.assert(
    fc.property(boxes, (list) => {
      const long = list.reduce((sum, { length, step }) => sum + length + step, 0);
      const grid = new Grid(long);
      let rooms: readonly Room[] = bareCloth(BigInt(WIDE), 0n, list.map(large));
      for (const one of list) {
        const place = placeFor(rooms, large(one));
        expect(`${place.x} ${place.y}`).toBe(grid.lay(one));
        rooms = occupy(rooms, covered(place, large(one)));
        expect(rooms.map(({ x, y, right, bottom }) => `${x} ${y} ${right} ${bottom}`).sort()).toEqual(
          grid.largest(),
        );
      }
    }),
    { numRuns: 40 },
  );
});

it("the bound: for every width e, what is too wide to lie beside an e takes the whole width, what is narrower nothing", () => {
  fc.assert(
    fc.property(boxes, (list) => {
      const bounds = list.map(({ length }) => length);
      // Of widths from e up, none wider than the rest of the cloth, at least e of the width is used wherever one lies.
      for (let e = 0; 2 * e <= WIDE + 1; e += 1) {
        const area = list
          .map(({ width, length }) => (width > WIDE - e ? WIDE : width < e ? 0 : width) * length)
          .reduce((a, b) => a + b);
        bounds.push(Math.ceil(area / WIDE));
      }
      expect(leastLength(BigInt(WIDE), list.map(large))).toBe(BigInt(Math.max(...bounds)));
    }),
  );
});
