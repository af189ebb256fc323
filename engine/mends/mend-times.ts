import type { Cue } from '../drill/drill.ts';
import type { PlayableAct, PlayableSpot } from '../drill/playable-parts.ts';
import type { SpotId } from '../units/ids.ts';
import type { MendCandidate, MendCase, MendSays, MendWrite } from './mend.ts';
import { actThen, rounded, spotOf } from './mend-places.ts';
import { ACT_ADDED, SECOND_OF_DELAY } from './mend-rows.ts';

const LATER_S = [0.25, 0.5, 0.75, 1, 1.5, 2, 3, 4, 6];

/** The act under way then, or the first of the spot, starts later; or sooner where it counts from another. Empty for a spot without acts. */
export const startsShifted = (of: MendCase, id: SpotId | undefined): readonly MendCandidate[] => {
  const spot = spotOf(of, id);
  const act = spot && actThen(of, spot);
  if (!spot || !act) return [];
  const acts = act === spot.acts[0] ? [act] : [act, spot.acts[0]!];
  return acts.flatMap(one => [...later(of, spot, one), ...sooner(spot, one)]);
};

/** Only this act starts later. */
export const actLater = (of: MendCase, id: SpotId | undefined): readonly MendCandidate[] => {
  const spot = spotOf(of, id);
  const act = spot && actThen(of, spot);
  return spot && act ? later(of, spot, act) : [];
};

const later = (of: MendCase, spot: PlayableSpot, act: PlayableAct): readonly MendCandidate[] =>
  LATER_S.map(byS => ({
    says: { verb: 'startLater', spot: spot.id, number: byS, unit: 's', ...deedOf(spot, act) },
    writes: laterWrites(of, spot, act, byS),
    size: byS * SECOND_OF_DELAY.value + (isTimed(act.cue) ? 0 : ACT_ADDED.value / 4),
  }));

const deedOf = (spot: PlayableSpot, act: PlayableAct): Pick<MendSays, 'deed'> =>
  act === spot.acts[0] && act.kind !== 'pass' && act.kind !== 'shoot' ? {} : { deed: act.kind };

const isTimed = (cue: Cue | undefined): boolean => !cue || cue.on === 'whistle' || cue.on === 'after';

/** A cue that times itself is set later; any other goes to a wait of that long before the act. */
const laterWrites = (
  of: MendCase,
  spot: PlayableSpot,
  act: PlayableAct,
  byS: number,
): readonly MendWrite[] => {
  const path = ['spots', spot.id, 'acts', act.id, 'cue'];
  const { cue } = act;
  if (!cue || cue.on === 'after') {
    return [{ path, value: { on: 'after', seconds: rounded((cue?.seconds ?? 0) + byS) } }];
  }
  if (cue.on === 'whistle') {
    return [{ path, value: { on: 'after', seconds: rounded(of.level.model.expectedReactionS + byS) } }];
  }
  const before = spot.acts[spot.acts.indexOf(act) - 1];
  const rank = before ? (before.rank + act.rank) / 2 : act.rank - 1;
  return [
    { path: ['spots', spot.id, 'acts', of.newAct], value: { rank, kind: 'hold', seconds: byS, cue } },
    { path, value: undefined },
  ];
};

const sooner = (spot: PlayableSpot, act: PlayableAct): readonly MendCandidate[] => {
  const { cue } = act;
  if (cue?.on !== 'after') return [];
  return LATER_S.filter(byS => byS <= cue.seconds).map(byS => ({
    says: { verb: 'startSooner', spot: spot.id, number: byS, unit: 's', ...deedOf(spot, act) },
    writes: [
      {
        path: ['spots', spot.id, 'acts', act.id, 'cue'],
        value: { on: 'after', seconds: rounded(cue.seconds - byS) },
      },
    ],
    size: byS * SECOND_OF_DELAY.value,
  }));
};
