import type { Drill, Team } from '@icewright/book';
import { useMemo, useState } from 'react';
import { useIsNarrow } from '../parts/use-is-narrow.ts';
import { OutPanel } from './out/out-panel.tsx';
import { StudioPaper } from './out/studio-paper.tsx';
import { PutInPractice } from './put-in-practice.tsx';
import { StudioHead } from './studio-head.tsx';
import { StudioMargin, StudioTail } from './studio-margin.tsx';
import { StudioPanels } from './studio-panels.tsx';
import { StudioWork } from './studio-work.tsx';
import { useSteady } from './use-steady.ts';
import { useStudio } from './use-studio.ts';
import './studio.css';

/** One drill on the ice: drawn by hand, run at every change, read before the whistle. */
export function Studio({
  id,
  kept,
  team,
}: {
  readonly id: string;
  readonly kept: Drill;
  readonly team: Team;
}) {
  const studio = useStudio(id, kept, team);
  const { seen, playback, chosen, choose, flag } = studio;
  const [isPutting, setPutting] = useState(false);
  const [isHanding, setHanding] = useState(false);
  // Where the margin goes below the work, what is chosen and found stays beside the board.
  const isBelow = useIsNarrow(1100);
  const { lengths } = team;
  const onGone = useSteady(() => studio.select([]));
  const { wanted: outcome, habitWants, tally, isKnown, onNeeded } = studio.many;
  const wanted = useMemo(
    () => outcome && { outcome, habitWants, tally: isKnown ? tally : null, onNeeded },
    [outcome, habitWants, tally, isKnown, onNeeded],
  );
  const panels = (
    <StudioPanels
      atRest={studio.atRest}
      follow={studio.follow}
      isHolding={studio.hand.isHolding}
      people={studio.people}
      here={studio.flowing.here}
      chosen={chosen}
      flag={flag.number}
      lengths={lengths}
      wanted={wanted}
      onLook={studio.onLook}
      onChoose={choose}
      onGone={onGone}
    />
  );
  const tail = (
    <StudioTail id={id} seen={seen} team={team} wanted={studio.many.wanted} people={studio.people} />
  );
  return (
    <>
      <StudioHead
        id={id}
        drill={seen.hand.drill}
        team={team}
        canRun={studio.run !== null}
        isPlaying={playback.isPlaying}
        onToggle={playback.toggle}
        isPutting={isPutting}
        onPutting={setPutting}
        isHanding={isHanding}
        onHanding={setHanding}
      />
      <div className="place">
        {isPutting && (
          <PutInPractice team={team} drillId={id} drill={kept} onClose={() => setPutting(false)} />
        )}
        {isHanding && <OutPanel id={id} drill={kept} team={team} onClose={() => setHanding(false)} />}
        <StudioPaper drill={kept} team={team} />
        <div className="two">
          <StudioWork studio={studio} team={team} isBelow={isBelow} panels={isBelow && panels}>
            {!isBelow && tail}
          </StudioWork>
          <div className="margin">
            <StudioMargin
              id={id}
              seen={seen}
              atRest={studio.atRest}
              follow={studio.follow}
              run={studio.run}
              many={studio.many}
              flowing={studio.flowing}
              team={team}
              panels={!isBelow && panels}
              onPick={studio.pick}
              onSeek={playback.seek}
            />
            {isBelow && tail}
          </div>
        </div>
      </div>
    </>
  );
}
