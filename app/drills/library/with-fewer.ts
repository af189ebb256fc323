import type { Drill, DrillAct, DrillSpot } from '@icewright/book';
import type { SpotId } from '@icewright/engine';
import type { Made } from './half-ice.ts';
import { lookFindingsOf } from './new-findings.ts';

/**
 * The drill with one skater fewer: of those whom nobody else's act or cue names and who do not start with the puck, the last one whose
 * leaving brings no new finding to look at. The rest stays as it is.
 */
export function withFewer(drill: Drill): Made {
  const skaters = (Object.entries(drill.spots) as [SpotId, DrillSpot][])
    .filter(([, spot]) => spot.kind === 'skater')
    .sort(([, a], [, b]) => b.rank - a.rank);
  if (skaters.length < 3) return { whyNot: 'two are the fewest who set each other a problem' };
  const before = lookCountOf(drill);
  for (const [id] of skaters) {
    if (isNamed(drill, id)) continue;
    const { [id]: _, ...spots } = drill.spots;
    const fewer: Drill = { ...drill, spots, ...flowWithout(drill, id) };
    const after = lookCountOf(fewer);
    if (after !== null && (before === null || after <= before)) return { drill: fewer };
  }
  return { whyNot: 'everybody in it is waited for, passed to, chased or covered by another' };
}

const isNamed = (drill: Drill, id: SpotId): boolean =>
  Object.values(drill.pucks).some(puck => puck.ownerSpot === id) ||
  Object.entries(drill.spots).some(
    ([other, spot]) => other !== id && Object.values(spot.acts).some(act => names(act, id)),
  );

const names = (act: DrillAct, id: SpotId): boolean => {
  const { cue, ...deed } = act;
  return (
    Object.values(deed).some(value => value === id) || (cue !== undefined && 'spot' in cue && cue.spot === id)
  );
};

const flowWithout = (drill: Drill, id: SpotId): Pick<Drill, 'flow'> | object => {
  if (drill.flow === undefined) return {};
  const goesTo = Object.fromEntries(
    Object.entries(drill.flow.goesTo).filter(([from, to]) => from !== id && to !== id),
  ) as NonNullable<Drill['flow']>['goesTo'];
  return { flow: { ...drill.flow, goesTo } };
};

const lookCountOf = (drill: Drill): number | null => lookFindingsOf(drill)?.length ?? null;
