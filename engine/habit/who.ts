import type { FrozenScene, FrozenSkater, PlaceIndex } from '../film/frozen-scene.ts';
import { type Pull, placeOf, SURELY_SDS, sceneEstimate } from '../film/frozen-scene.ts';
import type { Estimate, IcePoint } from '../units/points.ts';

/** Role letters: F, F1, LW, C, RW, W are forwards; D, D1, LD, RD defenders. Anything else is neither. */
export const isForwardRole = (role: string): boolean => /^(F\d?|LW|RW|W\d?|C)$/i.test(role.trim());
export const isDefenderRole = (role: string): boolean => /^(D\d?|LD|RD)$/i.test(role.trim());

/** U, U1 …: one of ours of whom only that is known; he may be a forward or a defender. */
export const isUnknownRole = (role: string): boolean => /^U\d*$/i.test(role.trim());

/** Indices of our skaters (no goalies) that pass the test, in the order of the scene. */
export const oursOf = (scene: FrozenScene, isOne: (skater: FrozenSkater) => boolean): number[] =>
  scene.skaters.flatMap((skater, index) =>
    skater.side === 'us' && skater.kind === 'skater' && isOne(skater) ? [index] : [],
  );

export const theirsOf = (scene: FrozenScene): number[] =>
  scene.skaters.flatMap((skater, index) =>
    skater.side === 'them' && skater.kind === 'skater' ? [index] : [],
  );

/** Middle of the goal line of the net we defend. */
export const ourNetOf = (scene: FrozenScene): IcePoint => ({
  xM: (scene.attacks === 'plusX' ? -1 : 1) * scene.rink.layout.goalLineXM,
  yM: 0,
});

export const theirNetOf = (scene: FrozenScene): IcePoint => ({ xM: -ourNetOf(scene).xM, yM: 0 });

/** A length and what it hangs on, so that two of them can be compared with their shared error. */
export interface Length {
  readonly valueM: number;
  readonly pulls: readonly Pull[];
}

export const distanceToPoint = (scene: FrozenScene, place: PlaceIndex, pointM: IcePoint): Length => {
  const at = placeOf(scene, place);
  const [dx, dy] = [at.xM - pointM.xM, at.yM - pointM.yM];
  const valueM = Math.hypot(dx, dy);
  return { valueM, pulls: [[place, ...unit(dx, dy, valueM)]] };
};

export const distanceApart = (scene: FrozenScene, a: PlaceIndex, b: PlaceIndex): Length => {
  const [from, to] = [placeOf(scene, a), placeOf(scene, b)];
  const [dx, dy] = [from.xM - to.xM, from.yM - to.yM];
  const valueM = Math.hypot(dx, dy);
  const [ux, uy] = unit(dx, dy, valueM);
  return {
    valueM,
    pulls: [
      [a, ux, uy],
      [b, -ux, -uy],
    ],
  };
};

export const differenceOf = (scene: FrozenScene, a: Length, b: Length): Estimate =>
  sceneEstimate(scene, a.valueM - b.valueM, [
    ...a.pulls,
    ...b.pulls.map(([place, x, y]): Pull => [place, -x, -y]),
  ]);

/**
 * Those who may be the nearest: the one with the least length, and everyone whose length is not surely more. One
 * entry means it is sure who it is. The nearest comes first.
 */
export const nearestOf = (
  scene: FrozenScene,
  candidates: readonly PlaceIndex[],
  lengthOf: (place: PlaceIndex) => Length,
): PlaceIndex[] => {
  const lengths = candidates.map(place => ({ place, length: lengthOf(place) }));
  lengths.sort((a, b) => a.length.valueM - b.length.valueM);
  const [nearest] = lengths;
  if (nearest === undefined) return [];
  return lengths
    .filter(({ length }) => {
      const more = differenceOf(scene, length, nearest.length);
      return more.value <= SURELY_SDS * more.sd;
    })
    .map(({ place }) => place);
};

/** Index of the skater with the puck, of either side; −1 when there is none. */
export const carrierIndex = (scene: FrozenScene): number =>
  scene.skaters.findIndex(skater => skater.id === scene.puck?.carrierId);

/** Those who may be their skater nearest to the net they defend, the nearest first. */
export const lastOfThem = (scene: FrozenScene): PlaceIndex[] => {
  const net = theirNetOf(scene);
  return nearestOf(scene, theirsOf(scene), place => distanceToPoint(scene, place, net));
};

const unit = (dx: number, dy: number, length: number): [number, number] =>
  length === 0 ? [1, 0] : [dx / length, dy / length];
