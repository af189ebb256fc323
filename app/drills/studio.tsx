import type { Drill, Team } from '@icewright/book';
import type { SpotId } from '@icewright/engine';
import { useState } from 'react';
import { Link } from 'wouter';
import { Act } from '../parts/act.tsx';
import { numberSaid } from '../parts/figures.ts';
import { edit, redo, undo, useUndo } from '../shell/book.ts';
import { useKeys } from '../shell/keys.ts';
import { RunningHead } from '../shell/running-head.tsx';
import { ActsPanel } from './acts-panel.tsx';
import { Board } from './board.tsx';
import { DrillWords } from './drill-words.tsx';
import { EventsPanel } from './events-panel.tsx';
import { FindingsPanel } from './findings-panel.tsx';
import type { Chosen } from './grip.ts';
import { type Thing, thingAdded } from './new-things.ts';
import { PutInPractice } from './put-in-practice.tsx';
import { ScoreView } from './score-view.tsx';
import { ThingsLine } from './things-line.tsx';
import { useHand } from './use-hand.ts';
import { SPEEDS, usePlayback } from './use-playback.ts';
import { ownerAtEnd, useRun } from './use-run.ts';

const NOBODY: Chosen = { spotId: null, actId: null };

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
  const hand = useHand(id, kept);
  const { drill } = hand;
  const { rink, run, issues, isStale } = useRun(drill);
  const playback = usePlayback(run?.durationS ?? 0);
  const [chosen, setChosen] = useState<Chosen>(NOBODY);
  const [placing, setPlacing] = useState<Thing | null>(null);
  const [isPutting, setPutting] = useState(false);
  const { canUndo, canRedo } = useUndo(id);
  const lengths = team.lengths;

  useKeys([
    { keys: 'Space', says: 'run, stop', act: playback.toggle },
    { keys: 'ArrowLeft', says: 'a tenth of a second back', act: () => playback.seek(playback.timeS - 0.1) },
    { keys: 'ArrowRight', says: 'a tenth of a second on', act: () => playback.seek(playback.timeS + 0.1) },
    { keys: 'Home', says: 'to the whistle', act: () => playback.seek(0) },
    {
      keys: 'Escape',
      says: 'let go of everything',
      act: () => {
        hand.putBack();
        setPlacing(null);
        setChosen(NOBODY);
      },
    },
  ]);
  const ownsPuckAtEnd = (spotId: SpotId): boolean => ownerAtEnd(run) === spotId;
  const choosePlaced = (spotId: SpotId | null) => {
    setPlacing(null);
    if (spotId !== null) setChosen({ spotId, actId: null });
  };
  const placeAtCentre = (thing: Thing) => {
    const { writes, spotId } = thingAdded(drill, thing, { xM: 0, yM: 0 });
    hand.keep(writes);
    choosePlaced(spotId ?? null);
  };
  return (
    <>
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
        meta={<Origin drill={drill} team={team} />}
        acts={
          <>
            <Act notNow={canUndo ? undefined : 'nothing to undo'} onPress={() => undo(id)}>
              Undo
            </Act>
            <Act notNow={canRedo ? undefined : 'nothing to redo'} onPress={() => redo(id)}>
              Redo
            </Act>
            <Act notNow={run === null ? 'there is nobody on the ice' : undefined} onPress={playback.toggle}>
              {playback.isPlaying ? 'Stop' : 'Run'} <kbd>Space</kbd>
            </Act>
            <Act lead opens={isPutting} onPress={() => setPutting(!isPutting)}>
              Put in a practice
            </Act>
          </>
        }
      />
      <div className="place">
        {isPutting && (
          <PutInPractice team={team} drillId={id} drill={kept} onClose={() => setPutting(false)} />
        )}
        <div className="two">
          <div className="studio-work">
            <ThingsLine placing={placing} onPlacing={setPlacing} onPlaceAtCentre={placeAtCentre} />
            <Board
              hand={hand}
              rink={rink}
              run={run}
              lengths={lengths}
              timeS={playback.timeS}
              chosen={chosen}
              onChoose={setChosen}
              placing={placing}
              onPlaced={choosePlaced}
              ownsPuckAtEnd={ownsPuckAtEnd}
            />
            {run === null ? (
              <p className="q2 hint">Set somebody on the ice, then pull a route out of them.</p>
            ) : (
              <section className="sec">
                <h2>
                  <span>
                    Score{' '}
                    <span className="q3">
                      one stave a spot; higher is faster; the marks are those on the ice
                    </span>
                  </span>
                  <span className="transport">
                    <span className={isStale ? 'stale' : 'cool b'}>{numberSaid(playback.timeS)} s</span>
                    {SPEEDS.map(speed => (
                      <Act
                        key={speed}
                        isOn={playback.speed === speed}
                        onPress={() => playback.setSpeed(speed)}
                      >
                        {speed === 1 ? 'game speed' : speed === 0.5 ? 'half' : 'quarter'}
                      </Act>
                    ))}
                  </span>
                </h2>
                <ScoreView drill={drill} run={run} rink={rink} playback={playback} chosen={chosen.spotId} />
              </section>
            )}
          </div>
          <div className="margin">
            <FindingsPanel
              drill={drill}
              findings={run?.findings ?? []}
              issues={issues}
              lengths={lengths}
              onLook={finding => {
                playback.seek(finding.timeS);
                const [spotId] = finding.spots;
                if (spotId !== undefined) setChosen({ spotId, actId: finding.act ?? null });
              }}
            />
            {chosen.spotId !== null && (
              <ActsPanel
                hand={hand}
                spotId={chosen.spotId}
                actId={chosen.actId}
                lengths={lengths}
                onChooseAct={actId => setChosen({ spotId: chosen.spotId, actId })}
                onGone={() => setChosen(NOBODY)}
              />
            )}
            {run !== null && <EventsPanel drill={drill} run={run} onSeek={playback.seek} />}
            <DrillWords id={id} drill={drill} team={team} />
          </div>
        </div>
      </div>
    </>
  );
}

function Origin({ drill, team }: { readonly drill: Drill; readonly team: Team }) {
  const habit = drill.habits.map(each => team.habits[each]?.title).find(title => title !== undefined);
  return (
    <>
      {habit !== undefined && (
        <>
          for <i className="w">{habit}</i>
        </>
      )}
      {drill.from !== undefined && (
        <>
          , from the freeze{' '}
          <Link href={`/film/${drill.from.game}?freeze=${drill.from.freeze}`}>
            {drill.from.said || 'it was made of'}
          </Link>
        </>
      )}
    </>
  );
}
