import type { Team } from '@icewright/book';
import type { Id } from '@icewright/engine';
import { type ComponentProps, useState } from 'react';
import { createPortal } from 'react-dom';
import { Act } from '../../parts/act.tsx';
import { undo } from '../../shell/book.ts';
import type { ListedMoment } from './filter-moments.ts';
import { MomentBeside } from './moment-beside.tsx';
import { MomentList } from './moment-list.tsx';
import { removeMoments } from './remove-moments.ts';
import { keep } from './who-marks.ts';

type ListProps = ComponentProps<typeof MomentList>;

/** The moments of a film as a list from which one can be taken out, and put back at once. */
export function MomentsKept(
  props: Omit<ListProps, 'onBy' | 'onRemove' | 'opensBelow'> & {
    readonly team: Team;
    readonly onGone: () => void;
    /** Where the chosen moment opens, beside the picture; absent: below its row. */
    readonly beside?: HTMLElement | undefined;
    readonly onPlay?: ((moments: readonly ListedMoment[]) => void) | undefined;
  },
) {
  const { gameId, onGone, beside, ...list } = props;
  // How many were left when one went: with any other number the offer to put it back is out of date.
  const [leftCount, setLeftCount] = useState<number>();
  const acts = {
    onBy: keep,
    onRemove: (id: string) => {
      removeMoments(gameId, list.game, [id]);
      onGone();
      setLeftCount(list.moments.length - 1);
    },
  };
  const chosen = list.chosen === undefined ? undefined : list.game.moments[list.chosen as Id<'moment'>];
  return (
    <>
      {beside &&
        chosen &&
        createPortal(
          <MomentBeside gameId={gameId} {...list} {...acts} id={list.chosen!} moment={chosen} />,
          beside,
        )}
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
      <MomentList gameId={gameId} {...list} {...acts} opensBelow={beside === undefined} />
    </>
  );
}
