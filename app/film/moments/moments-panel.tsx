import type { Game, Team } from '@icewright/book';
import { type ComponentProps, useMemo, useState } from 'react';
import { Act } from '../../parts/act.tsx';
import { AgreementView } from './agreement-view.tsx';
import { CameSummary } from './came-summary.tsx';
import { ChangeShown } from './change-shown.tsx';
import { filterMoments, type ListedMoment, type MomentFilter } from './filter-moments.ts';
import { FilterSentence } from './filter-sentence.tsx';
import { MomentsKept } from './moments-kept.tsx';

/** Below the film: which moments are shown, the list of them, and what they say together. */
export function MomentsPanel(
  props: Omit<ComponentProps<typeof MomentsKept>, 'follows' | 'moments'> & {
    readonly moments: readonly ListedMoment[];
    readonly game: Game;
    readonly team: Team;
    readonly filter: MomentFilter;
    readonly onFilter: (filter: MomentFilter) => void;
    readonly onSecondLook?: () => void;
    readonly onShow?: (frameIndex: number) => void;
  },
) {
  const { game, filter, onFilter, onSecondLook, onShow, ...list } = props;
  const { follows, opinions } = game;
  const shown = useMemo(() => filterMoments(list.moments, filter, follows), [list.moments, filter, follows]);
  const [isAgreementOpen, setAgreementOpen] = useState(false);
  const hasOpinions = Object.keys(opinions).length > 0;
  if (list.moments.length === 0) {
    return (
      <p className="q2 no-moments">
        No moment is marked in this film yet. <span className="by-key">Press M</span>
        <span className="by-finger">Press “Mark a moment”</span> when you see one.
      </p>
    );
  }
  return (
    <>
      <FilterSentence
        all={list.moments}
        shownCount={shown.length}
        filter={filter}
        onFilter={onFilter}
        team={list.team}
        follows={follows}
      />
      <MomentsKept {...list} moments={shown} follows={follows} />
      <div className="moments-acts">
        <ChangeShown gameId={list.gameId} shown={shown} team={list.team} />
        {onSecondLook && <Act onPress={onSecondLook}>Give a second opinion</Act>}
        {onShow && hasOpinions && (
          <Act opens={isAgreementOpen} onPress={() => setAgreementOpen(!isAgreementOpen)}>
            Agreement
          </Act>
        )}
      </div>
      {onShow && isAgreementOpen && (
        <AgreementView moments={shown} opinions={opinions} team={list.team} onShow={onShow} />
      )}
      <CameSummary moments={shown} follows={follows} />
    </>
  );
}
