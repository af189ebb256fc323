import type { Freeze } from '@icewright/book';
import {
  type FoundPerson,
  type IceCovariance,
  type IcePoint,
  iceFromFilm,
  type PinFit,
  SAME_PERSON,
} from '@icewright/engine';

/** Somebody found in the picture who is not placed: where the pins of this moment put his feet. */
export interface OfferedPerson extends Pick<FoundPerson, 'feetPx' | 'footSdPx' | 'group' | 'rgb'> {
  readonly id: string;
  readonly atM: IcePoint;
  readonly covM2: IceCovariance;
}

/**
 * Of those found, who can be offered: neither left out nor placed already. Who was taken from the offer and stands where he was found counts as
 * placed alone; of anybody a hand has set or moved, all within `SAME_PERSON` of him may be him.
 */
export const offeredOf = (
  found: readonly FoundPerson[],
  fit: PinFit,
  skaters: Freeze['skaters'],
  leftOut: ReadonlySet<string>,
): OfferedPerson[] => {
  const placed = Object.values(skaters);
  const taken = new Set(placed.filter(one => one.feetSdPx !== undefined).map(one => keyOf(one.feet)));
  const byHand = placed.flatMap(({ feet, feetSdPx }) => {
    const at = feetSdPx === undefined ? iceFromFilm(fit, feet) : undefined;
    return at?.kind === 'placed' ? [at.atM] : [];
  });
  return found.flatMap(({ feetPx, footSdPx, group, rgb }, rank): OfferedPerson[] => {
    const id = `found${rank}`;
    const at = iceFromFilm(fit, feetPx, { footSdPx });
    if (leftOut.has(id) || taken.has(keyOf(feetPx)) || at.kind === 'none') return [];
    const { atM, covM2 } = at;
    if (byHand.some(one => Math.hypot(one.xM - atM.xM, one.yM - atM.yM) < SAME_PERSON.value)) return [];
    return [{ id, feetPx, footSdPx, group, rgb, atM, covM2 }];
  });
};

/** People who wear the same, as the coach is offered them. */
export interface OfferedGroup {
  readonly group: number;
  /** A letter stands beside the rings of a group. */
  readonly letter: string;
  readonly people: readonly OfferedPerson[];
  /** The colour most of what they wear has in the picture. */
  readonly colour: string;
}

export const groupsOf = (offered: readonly OfferedPerson[]): OfferedGroup[] =>
  [...new Set(offered.flatMap(one => one.group ?? []))]
    .sort((a, b) => a - b)
    .map(group => {
      const people = offered.filter(one => one.group === group);
      const mean = [0, 1, 2].map(k =>
        Math.round((255 * people.reduce((sum, one) => sum + one.rgb[k]!, 0)) / people.length),
      );
      return { group, letter: letterOf(group), people, colour: `rgb(${mean.join(' ')})` };
    });

/** Whose dress does not tell is asked for. */
export const letterOf = (group: number | null): string => (group === null ? '?' : ('abcd'[group] ?? '?'));

/** As a document keeps it. */
const keyOf = ({ xPx, yPx }: { readonly xPx: number; readonly yPx: number }): string =>
  `${xPx.toFixed(2)},${yPx.toFixed(2)}`;
