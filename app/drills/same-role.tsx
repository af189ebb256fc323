import type { Drill, DrillSpot } from '@icewright/book';
import type { SpotId } from '@icewright/engine';
import { Act } from '../parts/act.tsx';
import { freeRole } from './edit/free-role.ts';
import type { Hand } from './use-hand.ts';

/**
 * Said where two skaters have one name: findings, cues and the paper speak of both in the same words. Goalies and coaches share theirs, for
 * the net and the place tell them apart.
 */
export function SameRole(props: { readonly hand: Hand; readonly spotId: SpotId; readonly spot: DrillSpot }) {
  const { hand, spotId, spot } = props;
  if (!sharesRole(hand.drill, spotId)) return null;
  const free = freeRole(spot, new Set(Object.values(hand.drill.spots).map(({ role }) => role)));
  return (
    <p className="warm same-role" role="status">
      Somebody else is called {spot.role} too: what is found and printed cannot tell the two apart.{' '}
      <Act onPress={() => hand.keep([{ path: ['spots', spotId, 'role'], value: free }])}>
        Call this one {free}
      </Act>
    </p>
  );
}

export const sharesRole = (drill: Drill, spotId: SpotId): boolean => {
  const own = drill.spots[spotId];
  if (own?.kind !== 'skater' || own.role.trim() === '') return false;
  return Object.entries(drill.spots).some(
    ([id, { kind, role }]) => id !== spotId && kind === 'skater' && isSameName(role, own.role),
  );
};

/** x1 and X1 are one name to whoever hears it. */
const isSameName = (one: string, other: string): boolean =>
  one.trim().toLocaleLowerCase() === other.trim().toLocaleLowerCase();
