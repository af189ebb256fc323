import type { Team } from '@icewright/book';
import type { Outcome, Run } from '@icewright/engine';
import { memo, type ReactNode } from 'react';
import { DrillWords } from './drill-words.tsx';
import type { Selection } from './edit/selection.ts';
import { EventsPanel } from './events-panel.tsx';
import { FlowPanel } from './flow/flow-panel.tsx';
import type { Flowing } from './flow/use-flow.ts';
import type { Follow } from './follow.ts';
import { GamePanel } from './games/game-panel.tsx';
import { VersionsSection } from './library/versions-section.tsx';
import { ManyPanel } from './many/many-panel.tsx';
import { TunePanel } from './many/tune-panel.tsx';
import type { Many } from './many/use-many.ts';
import type { People } from './people/people-of.ts';
import { PeopleSentence } from './people/people-sentence.tsx';
import { useFollowed } from './use-follow.ts';
import type { Seen, ShownRep } from './use-studio.ts';

interface Props {
  readonly id: string;
  readonly seen: Seen;
  readonly atRest: ShownRep;
  readonly follow: Follow<ShownRep>;
  readonly run: Run | null;
  readonly many: Many;
  readonly flowing: Flowing;
  readonly team: Team;
  readonly onPick: (selection: Selection) => void;
  readonly onSeek: (timeS: number) => void;
}

/** The figures of the drill beside the ice: how often, what is found, the whole block, what happens, what is said. */
export function StudioMargin({ panels, ...props }: Props & { readonly panels: ReactNode }) {
  return (
    <>
      {props.run !== null && <HowOften seen={props.seen} many={props.many} team={props.team} />}
      {panels}
      <Block
        id={props.id}
        seen={props.seen}
        atRest={props.atRest}
        follow={props.follow}
        run={props.run}
        flowing={props.flowing}
        team={props.team}
        onPick={props.onPick}
        onSeek={props.onSeek}
      />
    </>
  );
}

const HowOften = memo(function HowOften({ seen, many, team }: Pick<Props, 'seen' | 'many' | 'team'>) {
  return (
    <>
      <ManyPanel drill={seen.hand.drill} many={many}>
        <PeopleSentence hand={seen.hand} team={team} />
      </ManyPanel>
      <TunePanel hand={seen.hand} outcome={many.wanted} people={many.people} lengths={team.lengths} />
    </>
  );
});

const Block = memo(function Block(props: Omit<Props, 'many'>) {
  const { id, seen, run, flowing, team, onPick, onSeek } = props;
  const { hand, rink } = seen;
  const { drill, keep } = hand;
  const { lengths } = team;
  return (
    <>
      <GamePanel
        drill={drill}
        rink={rink}
        here={flowing.here}
        onHere={flowing.onHere}
        lengths={lengths}
        onKeep={keep}
        onPick={game => onPick([{ kind: 'game', game }])}
      />
      <FlowPanel id={id} drill={drill} run={run} flowing={flowing} team={team} onKeep={keep} />
      <Events atRest={props.atRest} follow={props.follow} onSeek={onSeek} />
    </>
  );
});

const Events = memo(function Events(props: Pick<Props, 'atRest' | 'follow' | 'onSeek'>) {
  const { hand, run } = useFollowed(props.follow, props.atRest);
  return run === null ? null : <EventsPanel drill={hand.drill} run={run} onSeek={props.onSeek} />;
});

/** What else there is of the drill, and what is said of it: where the page is wide it fills the room below the work. */
export const StudioTail = memo(function StudioTail(
  props: Pick<Props, 'id' | 'seen' | 'team'> & { readonly wanted: Outcome | null; readonly people: People },
) {
  const { id, seen, team } = props;
  const { drill } = seen.hand;
  return (
    <div className="studio-tail margin">
      <VersionsSection id={id} drill={drill} team={team} outcome={props.wanted} people={props.people} />
      <DrillWords id={id} drill={drill} team={team} />
    </div>
  );
});
