import type { Level } from '../skater/level.ts';
import type { IcePoint } from '../units/points.ts';
import type { PuckPlace } from './drill.ts';
import { BLADE_AHEAD_M } from './drill-rows.ts';
import type { PlayableSpot, PuckStart } from './playable-parts.ts';

/**
 * The pucks at the whistle. A puck named to a spot is on its stick; when a heap is named to it, the rest lies at its blade. Of
 * the others, spots that carry, pass or shoot and have a heap within a lunge take one from it, in the order of who needs one
 * soonest: not waiting for a puck first, then the lower place in its list of acts, then the rank of the spot. Who waits for a
 * pass takes none, unless nobody else has one. What is left lies where it is drawn. Pucks on sticks come first, in that
 * order; empty when there is none.
 */
export const puckStartsOf = (
  pucks: Readonly<Record<string, PuckPlace>>,
  spots: readonly PlayableSpot[],
  level: Level,
): readonly PuckStart[] => {
  const heaps: Heap[] = Object.entries(pucks)
    .filter(([, place]) => place.count > 0)
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([, { atM, ownerSpot, count }]) => ({ atM, ownerSpot, left: count }));
  const wants = spots.map((spot, rank) => wantOf(spots, spot, rank, heaps)).sort(byOrder);
  const onSticks: PuckStart[] = [];
  for (const { spot, own, needsOne, waits } of wants) {
    const heap =
      own ?? (needsOne && !(waits && onSticks.length > 0) ? heapNear(heaps, spot, level) : undefined);
    if (!heap) continue;
    heap.left--;
    onSticks.push({ atM: own ? spot.atM : heap.atM, ownerSpot: spot.id, count: 1 });
    if (own) heap.atM = bladeOf(spot);
  }
  const lying = heaps
    .filter(({ left }) => left > 0)
    .map(({ atM, left }) => ({ atM, ownerSpot: null, count: left }));
  return [...onSticks, ...lying];
};

export const isPuckAct = (kind: string): boolean => kind === 'carry' || kind === 'pass' || kind === 'shoot';

interface Heap {
  readonly ownerSpot: string | undefined;
  atM: IcePoint;
  left: number;
}

/** A spot that may have a puck at the whistle; `order` says who goes first. */
interface Want {
  readonly spot: PlayableSpot;
  readonly own: Heap | undefined;
  readonly needsOne: boolean;
  readonly waits: boolean;
  readonly order: readonly number[];
}

const wantOf = (
  spots: readonly PlayableSpot[],
  spot: PlayableSpot,
  rank: number,
  heaps: readonly Heap[],
): Want => {
  const needAt = spot.acts.findIndex(act => isPuckAct(act.kind));
  const own = heaps.find(heap => heap.ownerSpot === spot.id);
  const answersPass = spot.acts.slice(0, needAt + 1).some(act => act.cue?.on === 'receive');
  const isPassedTo = spots.some(one => one.acts.some(act => act.kind === 'pass' && act.toSpot === spot.id));
  return {
    spot,
    own,
    needsOne: needAt >= 0,
    waits: answersPass || (isPassedTo && needAt > 0),
    order: [needAt < 0 ? 2 : answersPass ? 1 : 0, needAt, own ? 0 : 1, rank],
  };
};

const byOrder = (a: Want, b: Want): number => {
  const at = a.order.findIndex((value, i) => value !== b.order[i]);
  return at < 0 ? 0 : a.order[at]! - b.order[at]!;
};

const heapNear = (heaps: readonly Heap[], spot: PlayableSpot, level: Level): Heap | undefined =>
  heaps.find(
    ({ ownerSpot, atM, left }) =>
      left > 0 &&
      ownerSpot === undefined &&
      Math.hypot(atM.xM - spot.atM.xM, atM.yM - spot.atM.yM) <= level.model.lungeReachM,
  );

const bladeOf = ({ atM, facingRad }: PlayableSpot): IcePoint => ({
  xM: atM.xM + BLADE_AHEAD_M.value * Math.cos(facingRad),
  yM: atM.yM + BLADE_AHEAD_M.value * Math.sin(facingRad),
});
