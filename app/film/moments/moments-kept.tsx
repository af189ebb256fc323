import type { Team } from '@icewright/book';
import { type ComponentProps, useState } from 'react';
import { Act } from '../../parts/act.tsx';
import { undo } from '../../shell/book.ts';
import { MomentList } from './moment-list.tsx';
import { removeMoments } from './remove-moments.ts';
import { keep } from './who-marks.ts';

type ListProps = ComponentProps<typeof MomentList>;

/** The moments of a film as a list from which one can be taken out, and put back at once. */
export function MomentsKept(
  props: Omit<ListProps, 'onBy' | 'onRemove'> & {
    readonly team: Team;
    readonly onGone: () => void;
  },
) {
  const { gameId, onGone, ...list } = props;
  // How many were left when one went: with any other number the offer to put it back is out of date.
  const [leftCount, setLeftCount] = useState<number>();
  return (
    <>
      {leftCount === list.moments.length && (
        <p className="undone" role="status">
          The moment is taken out.{' '}
          <Act
            onPress={() => {
              undo(gameId);
              setLeftCount(undefined);
            }}
          >
            Put it back
          </Act>
        </p>
      )}
      <MomentList
        gameId={gameId}
        {...list}
        onBy={keep}
        onRemove={id => {
          removeMoments(gameId, list.game, [id]);
          onGone();
          setLeftCount(list.moments.length - 1);
        }}
      />
    </>
  );
}
