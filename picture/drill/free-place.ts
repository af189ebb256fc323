import type { SheetPoint } from '../ice/sheet-point.ts';

/** Something that a label should not cover. */
export interface Obstacle {
  readonly at: SheetPoint;
  readonly radius: number;
}

const WAY_COUNT = 16;
/** Directions from the anchor: up first, then in turn to both sides. */
const WAYS: readonly SheetPoint[] = Array.from({ length: WAY_COUNT }, (_, way) => {
  const turnRad = -Math.PI / 2 + (way % 2 === 0 ? 1 : -1) * Math.ceil(way / 2) * ((2 * Math.PI) / WAY_COUNT);
  return { x: Math.cos(turnRad), y: Math.sin(turnRad) };
});

/** The place alone, for a mark that is drawn wherever there is most room. */
export const freePlace = (...asked: Parameters<typeof findFreePlace>): SheetPoint =>
  findFreePlace(...asked).place;

/**
 * A place for a small mark beside an anchor: the freest of a ring of places, and among equally free ones the first in
 * order, so that a drawing is the same each time. `isOnSheet` keeps it inside the picture. The room
 * is below 0 where it covers something.
 */
export const findFreePlace = (
  anchor: SheetPoint,
  reaches: readonly number[],
  radius: number,
  obstacles: readonly Obstacle[],
  isOnSheet: (point: SheetPoint) => boolean,
  /** Half extent beyond the radius, for words: wide on a lying sheet, tall on one on end. */
  extent: SheetPoint = { x: 0, y: 0 },
): { readonly place: SheetPoint; readonly room: number } => {
  let best: SheetPoint = { x: anchor.x, y: anchor.y - (reaches[0] ?? 0) };
  let bestRoom = Number.NEGATIVE_INFINITY;
  let roomThere = Number.NEGATIVE_INFINITY;
  const near = withinReach(anchor, Math.max(0, ...reaches), radius, extent, obstacles);
  for (let ring = 0; ring < reaches.length; ring++) {
    const reach = reaches[ring]!;
    const handicap = ring * 0.25 * radius;
    for (let way = 0; way < WAY_COUNT; way++) {
      // No place of this ring or a farther one can be better: on most sheets the first is as free as any.
      if (FREE_ENOUGH * radius - handicap <= bestRoom + BETTER) return { place: best, room: roomThere };
      const { x, y } = WAYS[way]!;
      const place = { x: anchor.x + x * reach, y: anchor.y + y * reach };
      if (!isOnSheet(place)) continue;
      const free = roomAt(place, radius, extent, near, bestRoom + handicap);
      const room = free - handicap;
      if (room > bestRoom + BETTER) {
        bestRoom = room;
        roomThere = free;
        best = place;
      }
    }
  }
  return { place: best, room: roomThere };
};

/** A place is better by no less than this. */
const BETTER = 1e-6;

/** What can come near to any of the places at all: on a full sheet that is one in ten, and the rest need not be asked each time. */
const withinReach = (
  anchor: SheetPoint,
  reach: number,
  radius: number,
  extent: SheetPoint,
  obstacles: readonly Obstacle[],
): Obstacle[] => {
  const x = reach + extent.x + radius * (1 + FREE_ENOUGH);
  const y = reach + extent.y + radius * (1 + FREE_ENOUGH);
  const near: Obstacle[] = [];
  for (const obstacle of obstacles) {
    const { at, radius: own } = obstacle;
    if (Math.abs(at.x - anchor.x) < x + own && Math.abs(at.y - anchor.y) < y + own) near.push(obstacle);
  }
  return near;
};

/** More room than this part of the radius makes no place better. */
const FREE_ENOUGH = 0.5;

/** Stops looking once there is no more room than is wanted; what leaves so little comes first in the list from then on, for it mostly does beside there too. */
const roomAt = (
  place: SheetPoint,
  radius: number,
  extent: SheetPoint,
  obstacles: Obstacle[],
  wanted: number,
): number => {
  let room = FREE_ENOUGH * radius;
  for (let i = 0; i < obstacles.length; i++) {
    const obstacle = obstacles[i]!;
    const { at, radius: own } = obstacle;
    const x = Math.abs(at.x - place.x) - extent.x;
    const y = Math.abs(at.y - place.y) - extent.y;
    const dx = Math.max(x, 0);
    const dy = Math.max(y, 0);
    const apart2 = dx * dx + dy * dy;
    // Plainly farther off than the room there is: most are, and need no root.
    const most = room + own + radius + 1e-9;
    if (most > 0 && apart2 > most * most) continue;
    room = Math.min(room, Math.sqrt(apart2) - own - radius);
    if (room > wanted) continue;
    obstacles[i] = obstacles[0]!;
    obstacles[0] = obstacle;
    return room;
  }
  return room;
};
