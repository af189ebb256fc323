import type { SpotId } from '../units/ids.ts';
import type { PlayableAct, PlayableSpot } from './playable-parts.ts';

/**
 * Which spots play together: the number of its group for each spot. Two spots are of one group when an act or a cue of one names the other,
 * or both are joined so over others. Spots that only share the whistle, the ice or a net are not.
 */
export const groupsOf = (spots: readonly PlayableSpot[]): ReadonlyMap<SpotId, number> => {
  const group = new Map<SpotId, number>(spots.map(({ id }, index) => [id, index]));
  const join = (a: SpotId, b: SpotId): void => {
    const from = group.get(b);
    const to = group.get(a);
    if (from === undefined || to === undefined || from === to) return;
    for (const [id, number] of group) if (number === from) group.set(id, to);
  };
  for (const spot of spots) {
    for (const act of spot.acts) for (const other of namedBy(act)) join(spot.id, other);
  }
  return group;
};

const namedBy = (act: PlayableAct): readonly SpotId[] => {
  const named: (SpotId | undefined)[] = [];
  if (act.cue && 'spot' in act.cue) named.push(act.cue.spot);
  if ('toSpot' in act) named.push(act.toSpot);
  if ('whom' in act) named.push(act.whom);
  if (act.kind === 'screen') named.push(act.from, act.to);
  return named.filter(id => id !== undefined);
};
