import { type Drill, type DrillSpot, newId } from '@icewright/book';
import { type IcePoint, rinkOf, type SpotId } from '@icewright/engine';
import { type Picked, pickedSpot } from './edit/selection.ts';
import { newGame } from './games/game-writes.ts';
import type { Write } from './write.ts';

/** What can be set on the ice from the line of things above the board. */
export const THINGS = [
  { what: 'us', said: 'One of us' },
  { what: 'them', said: 'One of them' },
  { what: 'goalie', said: 'Goalie' },
  { what: 'coach', said: 'Coach' },
  { what: 'puck', said: 'Puck' },
  { what: 'pylon', said: 'Pylon' },
  { what: 'net', said: 'Net' },
  { what: 'smallNet', said: 'Small net' },
  { what: 'divider', said: 'Divider' },
  { what: 'game', said: 'Small game' },
] as const;

export type Thing = (typeof THINGS)[number]['what'];

/** The writes that set a new thing down, what is new, and the spot, if it is one. */
export function thingAdded(
  drill: Drill,
  what: Thing,
  atM: IcePoint,
): { writes: Write[]; picked: Picked; spotId?: SpotId } {
  if (what === 'game') {
    const game = newId<'game'>();
    const value = newGame(drill, atM, rinkOf(drill.rink).area);
    return { writes: [{ path: ['games', game], value }], picked: { kind: 'game', game } };
  }
  if (what === 'puck') {
    const puck = newId<'puck'>();
    const value = { atM, ...ownerNear(drill, atM), count: 1 };
    return { writes: [{ path: ['pucks', puck], value }], picked: { kind: 'puck', puck } };
  }
  if (isGear(what)) {
    const gear = newId<'gear'>();
    const value = { kind: what, atM, facingRad: facingOf(drill, what, atM) };
    return { writes: [{ path: ['gear', gear], value }], picked: { kind: 'gear', gear } };
  }
  const spotId = newId<'spot'>();
  const value = spotAt(drill, what, atM);
  return { writes: [{ path: ['spots', spotId], value }], picked: pickedSpot(spotId), spotId };
}

const GEAR = ['pylon', 'net', 'smallNet', 'divider'] as const;
type GearKind = (typeof GEAR)[number];
const isGear = (what: Thing): what is GearKind => (GEAR as readonly string[]).includes(what);

/** A net turns its back to the boards that are nearest for the shape of the sheet; all else lies across the sheet. */
function facingOf(drill: Drill, what: GearKind, { xM, yM }: IcePoint): number {
  if (what !== 'net' && what !== 'smallNet') return 0;
  const { maxXM, maxYM } = rinkOf(drill.rink).area;
  if (Math.abs(yM) / maxYM > Math.abs(xM) / maxXM) return yM > 0 ? -Math.PI / 2 : Math.PI / 2;
  return xM > 0 ? Math.PI : 0;
}

const SHOULDER_ROOM_M = 3.5; // two discs of the drawing with the handle of one between, our choice
const A_SIDE = 3; // so many stand on either side of the middle before a new row is begun

/** A free place near centre ice, for what is set down by key: each beside the one before. */
export function freePlaceNearCentre(drill: Drill): IcePoint {
  const taken = [...Object.values(drill.spots), ...Object.values(drill.pucks), ...Object.values(drill.gear)];
  for (let step = 0; ; step += 1) {
    const row = Math.floor(step / (2 * A_SIDE + 1));
    const inRow = step % (2 * A_SIDE + 1);
    const away = Math.ceil(inRow / 2) * SHOULDER_ROOM_M;
    const atM = { xM: row * SHOULDER_ROOM_M, yM: inRow % 2 === 0 ? -away : away };
    if (row > 5) return atM;
    if (taken.every(each => Math.hypot(each.atM.xM - atM.xM, each.atM.yM - atM.yM) >= SHOULDER_ROOM_M))
      return atM;
  }
}

const STICK_REACH_M = 1.6; // where a puck counts as set down on a stick: a rule-book shaft, facts of the rule codes

function ownerNear(drill: Drill, atM: IcePoint): { ownerSpot?: SpotId } {
  const near = (Object.entries(drill.spots) as [SpotId, DrillSpot][])
    .filter(([, spot]) => spot.kind !== 'goalie')
    .map(([id, spot]) => ({ id, awayM: Math.hypot(spot.atM.xM - atM.xM, spot.atM.yM - atM.yM) }))
    .sort((a, b) => a.awayM - b.awayM)[0];
  return near !== undefined && near.awayM <= STICK_REACH_M ? { ownerSpot: near.id } : {};
}

function spotAt(drill: Drill, what: Exclude<Thing, 'puck' | 'game' | GearKind>, atM: IcePoint): DrillSpot {
  const ranks = Object.values(drill.spots).map(spot => spot.rank);
  // A goalie belongs to the net it stands before: we defend that of minusX.
  const side = what === 'them' || (what === 'goalie' && atM.xM > 0) ? 'them' : 'us';
  return {
    rank: Math.max(-1, ...ranks) + 1,
    side,
    kind: what === 'goalie' || what === 'coach' ? what : 'skater',
    role: freeRole(drill, what),
    atM,
    facingRad: side === 'us' ? 0 : Math.PI,
    waitingCount: 0,
    acts: {},
  };
}

function freeRole(drill: Drill, what: Thing): string {
  if (what === 'goalie') return 'G';
  if (what === 'coach') return 'Co';
  const taken = new Set(Object.values(drill.spots).map(spot => spot.role));
  const letter = what === 'them' ? 'X' : 'F';
  for (let number = 1; ; number += 1) if (!taken.has(`${letter}${number}`)) return `${letter}${number}`;
}
