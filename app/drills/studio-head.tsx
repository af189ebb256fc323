import type { Drill, Team } from '@icewright/book';
import { memo } from 'react';
import { Act } from '../parts/act.tsx';
import { edit } from '../shell/book.ts';
import { RunningHead } from '../shell/running-head.tsx';
import { UndoActs } from '../shell/undo-acts.tsx';
import { DrillOrigin } from './drill-origin.tsx';

/** The title of the drill, where it came from, and what can be done with all of it. */
export const StudioHead = memo(function StudioHead(props: {
  readonly id: string;
  readonly drill: Drill;
  readonly team: Team;
  readonly canRun: boolean;
  readonly isPlaying: boolean;
  readonly onToggle: () => void;
  readonly isPutting: boolean;
  readonly onPutting: (isPutting: boolean) => void;
  readonly isHanding: boolean;
  readonly onHanding: (isHanding: boolean) => void;
}) {
  const { id, drill, isPutting, isHanding } = props;
  return (
    <RunningHead
      back={{ to: '/drills', said: 'Drills' }}
      titleWords={drill.title}
      title={
        <input
          className="title-entry"
          aria-label="Title of the drill"
          data-book="words"
          value={drill.title}
          maxLength={200}
          size={Math.max(8, drill.title.length + 1)}
          onChange={event => edit(id).text(['title'], event.target.value)}
        />
      }
      meta={<DrillOrigin drill={drill} team={props.team} />}
      acts={
        <>
          <UndoActs />
          <Act notNow={props.canRun ? undefined : 'there is nobody on the ice'} onPress={props.onToggle}>
            {props.isPlaying ? 'Stop' : 'Run'} <kbd>Space</kbd>
          </Act>
          <Act opens={isHanding} onPress={() => props.onHanding(!isHanding)}>
            Hand out
          </Act>
          <Act lead opens={isPutting} onPress={() => props.onPutting(!isPutting)}>
            Put in a practice
          </Act>
        </>
      }
    />
  );
});
