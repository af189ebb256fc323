import type { Team } from '@icewright/book';
import { type ComponentProps, type ReactNode, useMemo, useState } from 'react';
import { PutInMeeting } from '../../meeting/put-in-meeting.tsx';
import { Act } from '../../parts/act.tsx';
import { AgreementView } from './agreement-view.tsx';
import { CameSummary } from './came-summary.tsx';
import { ChangeShown } from './change-shown.tsx';
import { filterMoments, type ListedMoment, type MomentFilter } from './filter-moments.ts';
import { FilterSentence } from './filter-sentence.tsx';
import { MomentsDoor } from './moments-door.tsx';
import { MomentsKept } from './moments-kept.tsx';
import type { TakeInto } from './take-moments.ts';

/** Below the film: which moments are shown, the list of them, and what they say together. */
export function MomentsPanel(
  props: Omit<ComponentProps<typeof MomentsKept>, 'moments'> & {
    readonly moments: readonly ListedMoment[];
    readonly team: Team;
    readonly filter: MomentFilter;
    readonly onFilter: (filter: MomentFilter) => void;
    readonly onSecondLook?: () => void;
    readonly onShow?: (frameIndex: number) => void;
    /** What makes a reel of the moments that are shown. */
    readonly reel?: (shown: readonly ListedMoment[]) => ReactNode;
    /** The film that is open: without its frames nothing can come in or be tied to it. */
    readonly film?: Pick<TakeInto, 'film' | 'index' | 'knownToS'>;
  },
) {
  const { filter, onFilter, onSecondLook, onShow, film, reel, ...list } = props;
  const { game } = list;
  const { follows, opinions } = game;
  const shown = useMemo(() => filterMoments(list.moments, filter, follows), [list.moments, filter, follows]);
  const [isAgreementOpen, setAgreementOpen] = useState(false);
  const [isDoorOpen, setDoorOpen] = useState(false);
  const hasOpinions = Object.keys(opinions).length > 0;
  const door = film && list.here && (
    <MomentsDoorAct
      into={{ gameId: list.gameId, game, team: list.team, ...film }}
      shown={shown}
      hereS={() => list.here?.().filmTimeS ?? 0}
      isOpen={isDoorOpen}
      onOpen={setDoorOpen}
    />
  );
  const isEmpty = list.moments.length === 0;
  return (
    <>
      {isEmpty ? (
        <p className="q2 no-moments">
          No moment is marked here yet. <span className="by-key">Press M</span>
          <span className="by-finger">Press “Mark a moment”</span> when you see one.
        </p>
      ) : (
        <FilterSentence
          all={list.moments}
          shownCount={shown.length}
          filter={filter}
          onFilter={onFilter}
          team={list.team}
          follows={follows}
        />
      )}
      <MomentsKept {...list} moments={shown} />
      {!isEmpty && (
        <>
          <div className="moments-acts">
            {list.onPlay && shown.length > 1 && (
              <Act onPress={() => list.onPlay?.(shown)}>Play the {shown.length} shown</Act>
            )}
            <ChangeShown gameId={list.gameId} game={game} shown={shown} team={list.team} />
            <PutInMeeting
              team={list.team}
              gameId={list.gameId}
              game={game}
              says={`Put all ${shown.length} shown in a meeting`}
              chosen={shown.map(([id]) => ({ kind: 'moment', id }))}
            />
            {reel?.(shown)}
            {onSecondLook && <Act onPress={onSecondLook}>Give a second opinion</Act>}
            {onShow && hasOpinions && (
              <Act opens={isAgreementOpen} onPress={() => setAgreementOpen(!isAgreementOpen)}>
                Agreement
              </Act>
            )}
            {!isDoorOpen && door}
          </div>
          {onShow && isAgreementOpen && (
            <AgreementView moments={shown} opinions={opinions} team={list.team} onShow={onShow} />
          )}
          <CameSummary moments={shown} follows={follows} />
        </>
      )}
      {(isEmpty || isDoorOpen) && door}
    </>
  );
}

function MomentsDoorAct({
  isOpen,
  onOpen,
  ...door
}: Omit<ComponentProps<typeof MomentsDoor>, 'onClose'> & {
  readonly isOpen: boolean;
  readonly onOpen: (isOpen: boolean) => void;
}) {
  return isOpen ? (
    <MomentsDoor {...door} onClose={() => onOpen(false)} />
  ) : (
    <Act opens={false} onPress={() => onOpen(true)}>
      Moments in and out
    </Act>
  );
}
