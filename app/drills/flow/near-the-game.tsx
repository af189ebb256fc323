import type { Drill, Team } from '@icewright/book';
import { type Likeness, likenessOf, MISSING_M, type Run } from '@icewright/engine';
import { type ReactNode, useMemo } from 'react';
import { countSaid, inUnitsOf, type Lengths, lengthSaid, numberSaid } from '../../parts/figures.ts';
import { Reading } from '../../parts/reading.tsx';
import { type FrozenOnIce, useFreezeScene } from '../edit/use-freeze-scene.ts';

/** How near the rep comes to the freeze it was made from, in the row of figures; a dash with its reason where that is not known. */
export function NearTheGame(props: {
  readonly drill: Drill;
  readonly from: NonNullable<Drill['from']>;
  readonly run: Run;
  readonly team: Team;
}) {
  const { drill, run, team } = props;
  const { lengths } = team;
  const frozen = useFreezeScene(props.from, team);
  const likeness = useMemo(
    () => (frozen.kind === 'scene' ? likenessOf(frozen.scene, frozen.attacks, drill, run) : null),
    [frozen, drill, run],
  );
  return (
    <div>
      <dt className="q3">from where they stood</dt>
      <dd>
        {likeness === null ? (
          <Reading value="–" why={<b>{noLikenessSaid(frozen)}</b>} />
        ) : (
          <Reading
            value={nearSaid(likeness, lengths)}
            estimate
            why={whySaid(likeness, frozen.kind === 'scene' && frozen.scene.puck !== undefined, lengths)}
          />
        )}
      </dd>
    </div>
  );
}

const nearSaid = ({ distanceM, speedsMps }: Likeness, lengths: Lengths): string =>
  speedsMps === null
    ? lengthSaid(distanceM, lengths)
    : `${lengthSaid(distanceM, lengths)}, ${inUnitsOf(lengths, speedsMps, 'm/s')}`;

/** Term by term, in the order in which they are put together. */
function whySaid(likeness: Likeness, hasPuck: boolean, lengths: Lengths): ReactNode {
  const { timeS, isMirrored, placesM, gapsM, speedsMps, missingCount, extraCount } = likeness;
  const apart = [
    missingCount > 0 && `${countSaid(missingCount, 'person', 'people')} of the freeze not in the drill`,
    extraCount > 0 && `${countSaid(extraCount, 'person', 'people')} of the drill not in the freeze`,
  ].filter(Boolean);
  return (
    <>
      <b>
        How far people stand from where they stood in the freeze, nearest {numberSaid(timeS)} s into the rep
        {isMirrored ? ', in a mirror: one side for the other' : ''}.
      </b>{' '}
      Places {lengthSaid(placesM, lengths)} apart{hasPuck ? ' with the puck' : ''}
      {hasPuck && <>, distances to the puck {lengthSaid(gapsM, lengths)}</>}: each the root of the mean
      square, together the root of the sum of their squares.{' '}
      {apart.length > 0 && (
        <>
          In the places, {apart.join(' and ')}, {lengthSaid(MISSING_M.value, lengths, 0)} each:{' '}
          {MISSING_M.source}.{' '}
        </>
      )}
      {speedsMps === null
        ? 'Speeds are not compared: one picture tells none. '
        : `Velocities differ by ${inUnitsOf(lengths, speedsMps, 'm/s')}. `}
      Our own measure: it orders drills.
    </>
  );
}

function noLikenessSaid(frozen: FrozenOnIce): string {
  if (frozen.kind === 'scene') return 'The freeze and the drill have nobody in common.';
  switch (frozen.reason) {
    case 'loading':
      return 'The game it was made from is being fetched.';
    case 'noGame':
      return 'The game it was made from is not on this machine.';
    case 'noFreeze':
      return 'The freeze it was made from is no longer in its game.';
    case 'notPinned':
      return 'The freeze it was made from has no pins that fit the sheet, so nobody in it has a place.';
  }
}
