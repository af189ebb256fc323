import type { Drill, DrillAct, DrillSpot } from '@icewright/book';
import type { SpotId } from '@icewright/engine';
import type { Made } from './half-ice.ts';
import { lookFindingsOf } from './new-findings.ts';

/**
 * The drill with one skater fewer: of those whom nobody else's act or cue names, who do not start with the puck, whom what is wanted
 * does not speak of, and beside whom another of the side does the same, the last one whose leaving brings no new finding to look
 * at. Who alone does a thing is what the drill is about: without her it is another problem. The rest stays as it is.
 */
export function withFewer(drill: Drill): Made {
  const skaters = (Object.entries(drill.spots) as [SpotId, DrillSpot][])
    .filter(([, spot]) => spot.kind === 'skater')
    .sort(([, a], [, b]) => b.rank - a.rank);
  if (skaters.length < 3) return { whyNot: 'two are the fewest who set each other a problem' };
  const before = lookCountOf(drill);
  let alone: string | undefined;
  for (const [id, spot] of skaters) {
    if (isNamed(drill, id) || isWanted(drill, id)) continue;
    if (!skaters.some(([other, each]) => other !== id && each.side === spot.side && doesLike(each, spot))) {
      alone ??= spot.role;
      continue;
    }
    const { [id]: _, ...spots } = drill.spots;
    const fewer: Drill = { ...drill, spots, ...flowWithout(drill, id) };
    const after = lookCountOf(fewer);
    if (after !== null && (before === null || after <= before)) return { drill: fewer, without: spot.role };
  }
  return {
    whyNot:
      alone === undefined
        ? 'everybody in it is waited for, passed to, chased or covered by another'
        : `nobody else does what ${alone} does: without ${alone} it is another problem`,
  };
}

/** What is wanted of the reps speaks of her. */
const isWanted = (drill: Drill, id: SpotId): boolean =>
  Object.values(drill.wanted ?? {}).some(value => value === id);

/** The same acts in the same order, and both from the whistle on or both late. */
const doesLike = (one: DrillSpot, other: DrillSpot): boolean => doingOf(one) === doingOf(other);

const doingOf = (spot: DrillSpot): string =>
  Object.values(spot.acts)
    .sort((a, b) => a.rank - b.rank)
    .map(({ kind, cue }) => (cue?.on === 'after' && cue.seconds > 0 ? `late ${kind}` : kind))
    .join(' ');

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
