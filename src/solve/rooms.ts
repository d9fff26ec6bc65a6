/**
 * Laying rectangles on a strip one after the other: free room is kept as the largest empty rectangles, and each piece
 * goes where it starts nearest the start of the cloth, then nearest its left edge. Whole numbers of any unit.
 */

export interface Box {
  readonly width: bigint;
  readonly length: bigint;
  /** The piece starts on a whole multiple of this along the cloth. 1: anywhere. */
  readonly step: bigint;
}

export interface Place {
  readonly x: bigint;
  readonly y: bigint;
}

/** An empty rectangle of cloth. Rooms overlap: each is as large as can be. */
export interface Room extends Place {
  readonly right: bigint;
  readonly bottom: bigint;
}

/** The larger of two whole numbers. */
export function larger(a: bigint, b: bigint): bigint {
  if (a > b) return a;
  return b;
}

/** Up to the next whole multiple of `step`. */
export const upTo = (at: bigint, step: bigint): bigint => ((at + step - 1n) / step) * step;

/** The bare cloth from `start` on, longer than these boxes can take. */
export const bareCloth = (width: bigint, start: bigint, boxes: readonly Box[]): readonly Room[] => [
  { x: 0n, y: start, right: width, bottom: boxes.reduce((sum, box) => sum + box.length + box.step, start) },
];

const holds = (outer: Room, inner: Room): boolean =>
  outer.x <= inner.x && outer.y <= inner.y && outer.right >= inner.right && outer.bottom >= inner.bottom;

/** What is left of a room round a piece that reaches into it: up to four largest rooms. */
function cutRoom(room: Room, piece: Room): Room[] {
  const rooms: Room[] = [];
  if (room.x < piece.x) rooms.push({ ...room, right: piece.x });
  if (piece.right < room.right) rooms.push({ ...room, x: piece.right });
  if (room.y < piece.y) rooms.push({ ...room, bottom: piece.y });
  if (piece.bottom < room.bottom) rooms.push({ ...room, y: piece.bottom });
  return rooms;
}

const apart = (room: Room, piece: Room): boolean =>
  piece.right <= room.x || piece.x >= room.right || piece.bottom <= room.y || piece.y >= room.bottom;

/** Where one box, no wider than the cloth, starts nearest the start, then nearest the left edge. */
export function placeFor(rooms: readonly Room[], box: Box): Place {
  let best: Place | undefined;
  for (const room of rooms) {
    if (box.width > room.right - room.x) continue;
    const y = upTo(room.y, box.step);
    if (y + box.length > room.bottom) continue;
    if (!best || y < best.y || (y === best.y && room.x < best.x)) best = { x: room.x, y };
  }
  return best as Place;
}

/** What a box covers that lies at a place. */
export const covered = ({ x, y }: Place, box: Box): Room => ({
  x,
  y,
  right: x + box.width,
  bottom: y + box.length,
});

/**
 * The rooms that are left once a piece lies there. A room it does not reach stays: it lies in no other, since none did
 * before and what is cut is only smaller.
 */
export function occupy(rooms: readonly Room[], piece: Room): readonly Room[] {
  const left: Room[] = [];
  const cut: Room[] = [];
  for (const room of rooms)
    if (apart(room, piece)) left.push(room);
    else cut.push(...cutRoom(room, piece));
  const isLargest = (room: Room, i: number): boolean =>
    !left.some((other) => holds(other, room)) &&
    !cut.some((other, j) => i !== j && holds(other, room) && (j < i || !holds(room, other)));
  return [...left, ...cut.filter(isLargest)];
}

/**
 * No layout of these boxes is shorter. For each width e of a box: one too wide to lie beside it counts as the full
 * width of the cloth, one narrower than e as nothing, the rest as they are. And no layout is shorter than a box.
 */
export function leastLength(width: bigint, boxes: readonly Box[]): bigint {
  const longest = boxes.reduce((most, box) => larger(most, box.length), 0n);
  return boxes
    .map(({ width: e }) => (2n * e > width ? width - e + 1n : e))
    .concat(0n)
    .reduce((least, e) => {
      const area = boxes.reduce((sum, box) => {
        const counted = box.width > width - e ? width : box.width < e ? 0n : box.width;
        return sum + counted * box.length;
      }, 0n);
      return larger(least, upTo(area, width) / width);
    }, longest);
}
