import type { Team } from '@icewright/book';
import { type SpotId, weAttack } from '@icewright/engine';
import { memo, type ReactNode, useState } from 'react';
import { Act } from '../parts/act.tsx';
import { useIsNarrow, useIsShort } from '../parts/use-is-narrow.ts';
import { BelowLine } from './below-line.tsx';
import { Board } from './board.tsx';
import { FreezeGhosts } from './edit/freeze-ghosts.tsx';
import { HandLine } from './edit/hand-line.tsx';
import { focusWhenDrawn } from './edit/things-in-focus.ts';
import { useAim } from './edit/use-aim.ts';
import { useArrange } from './edit/use-arrange.ts';
import { useEditKeys } from './edit/use-edit-keys.ts';
import { ManyMarks } from './many/many-marks.tsx';
import { WhereStrip } from './many/where-strip.tsx';
import { freePlaceNearCentre, type Thing, thingAdded } from './new-things.ts';
import { RunFrame } from './run-frame.tsx';
import { ScoreSection } from './score-section.tsx';
import { SightSection } from './sight/sight-section.tsx';
import { ThingsLine } from './things-line.tsx';
import type { StudioState } from './use-studio.ts';
import { useStudioKeys } from './use-studio-keys.ts';

/** The ice, worked by hand, and the rep over time below it. */
export function StudioWork(props: {
  readonly studio: StudioState;
  readonly team: Team;
  readonly isBelow: boolean;
  readonly panels: ReactNode;
  /** What stands below the score. */
  readonly children: ReactNode;
}) {
  const { studio, team, isBelow } = props;
  const { hand, rink, seen, run, rep, many, selection, chosen, flag, playback, say } = studio;
  const { drill } = hand;
  const { lengths } = team;
  const [placing, setPlacing] = useState<Thing | null>(null);
  const isPhone = useIsNarrow(701);
  // What leads to the panels below may stand above the ice only where it leaves the ice its room.
  const isSmall = useIsShort(601) || isPhone;
  const [isGhostly, setGhostly] = useState(false);
  const [aim, setAim] = useAim();
  useStudioKeys(studio, () => {
    setPlacing(null);
    setAim(null);
  });
  const arrange = useArrange({ hand, rink, selection, onSelect: studio.select, onSaid: say });
  useEditKeys(arrange, say);
  const choosePlaced = (spotId: SpotId | null) => {
    setPlacing(null);
    if (spotId !== null) studio.choose({ spotId, actId: null });
  };
  const placeAtCentre = (thing: Thing) => {
    const { writes, spotId, picked } = thingAdded(drill, thing, freePlaceNearCentre(drill));
    hand.keep(writes);
    choosePlaced(spotId ?? null);
    // The arrows that come next are meant for it.
    focusWhenDrawn(picked);
  };
  const below = isBelow && <BelowLine drill={drill} chosen={chosen.spotId} findings={studio.flags} />;
  return (
    // biome-ignore lint/a11y/useKeyWithClickEvents lint/a11y/noStaticElementInteractions: flags are pressed by key in the list of findings
    <div
      className="studio-work"
      ref={studio.work}
      onPointerDownCapture={flag.onPointerDownCapture}
      onClick={flag.onClick}
    >
      <ThingsLine placing={placing} onPlacing={setPlacing} onPlaceAtCentre={placeAtCentre}>
        {drill.from !== undefined && (
          <span className="things-end">
            <Act isOn={isGhostly} label="Ghosts of the freeze" onPress={() => setGhostly(!isGhostly)}>
              Ghosts
            </Act>
          </span>
        )}
      </ThingsLine>
      {!isSmall && below}
      <RunFrame isSmall={isSmall && isBelow} playback={playback}>
        <Board
          hand={hand}
          rink={rink}
          run={rep}
          findings={studio.flags}
          lengths={lengths}
          timeS={playback.timeS}
          selection={selection}
          onSelect={studio.pick}
          placing={placing}
          onPlaced={choosePlaced}
          aim={aim}
          onAimed={() => setAim(null)}
          ownsPuckAtEnd={studio.ownsPuckAtEnd}
          onSaid={say}
          under={
            <>
              <ManyMarks tally={many.isStale ? null : many.tally} />
              {isGhostly && drill.from !== undefined && (
                <FreezeGhosts from={drill.from} attacks={weAttack(Object.values(drill.spots))} team={team} />
              )}
            </>
          }
        />
      </RunFrame>
      {isSmall && below}
      <Strip drill={seen.hand.drill} rink={rink} many={many} lengths={lengths} hasRep={run !== null} />
      <HandLine
        hand={hand}
        selection={selection}
        onSelect={studio.pick}
        arrange={arrange}
        aim={aim}
        onAim={setAim}
        said={studio.said}
      />
      {props.panels}
      {run === null ? (
        Object.keys(drill.spots).length === 0 && (
          <p className="q2 hint">Set somebody on the ice, then pull a route out of them.</p>
        )
      ) : (
        <>
          <Score
            atRest={studio.atScore}
            follow={studio.follow}
            playback={playback}
            chosen={chosen}
            lengths={lengths}
            onChoose={studio.choose}
          />
          <Sight
            drill={seen.hand.drill}
            run={run}
            rink={rink}
            timeS={playback.timeS}
            chosen={chosen.spotId}
            lengths={lengths}
          />
        </>
      )}
      {props.children}
    </div>
  );
}

const Strip = memo(WhereStrip);
const Score = memo(ScoreSection);
const Sight = memo(SightSection);
