import type { Drill, Team } from '@icewright/book';
import type { Finding, SpotId } from '@icewright/engine';
import { useMemo, useRef, useState } from 'react';
import { Act } from '../parts/act.tsx';
import { useIsNarrow } from '../parts/use-is-narrow.ts';
import { edit } from '../shell/book.ts';
import { useKeys } from '../shell/keys.ts';
import { RunningHead } from '../shell/running-head.tsx';
import { UndoActs } from '../shell/undo-acts.tsx';
import { ActsPanel } from './acts-panel.tsx';
import { BelowLine } from './below-line.tsx';
import { Board } from './board.tsx';
import { DrillOrigin } from './drill-origin.tsx';
import { DrillWords } from './drill-words.tsx';
import { FreezeGhosts } from './edit/freeze-ghosts.tsx';
import { HandLine } from './edit/hand-line.tsx';
import { leadOf, NOTHING, type Selection, selectionOf, stillThere } from './edit/selection.ts';
import { useArrange } from './edit/use-arrange.ts';
import { useEditKeys } from './edit/use-edit-keys.ts';
import { EventsPanel } from './events-panel.tsx';
import { FindingsPanel } from './findings/findings-panel.tsx';
import { flowFindings } from './findings/flow-findings.ts';
import { useChosenFlag } from './findings/use-chosen-flag.ts';
import { FlowPanel } from './flow/flow-panel.tsx';
import { useFlow } from './flow/use-flow.ts';
import { GamePanel } from './games/game-panel.tsx';
import { VersionsSection } from './library/versions-section.tsx';
import { ManyMarks } from './many/many-marks.tsx';
import { ManyPanel } from './many/many-panel.tsx';
import { TunePanel } from './many/tune-panel.tsx';
import { useMany } from './many/use-many.ts';
import { WhereStrip } from './many/where-strip.tsx';
import { freePlaceNearCentre, type Thing, thingAdded } from './new-things.ts';
import { OutPanel } from './out/out-panel.tsx';
import { PutInPractice } from './put-in-practice.tsx';
import { ScoreSection } from './score-section.tsx';
import { SightSection } from './sight/sight-section.tsx';
import { ThingsLine } from './things-line.tsx';
import { useHand } from './use-hand.ts';
import { usePlayback } from './use-playback.ts';
import { hasPuckAtEnd, useRun } from './use-run.ts';

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
  const { rink, run: rep, issues, isStale } = useRun(drill);
  // One rep of it, with what is wrong with many of them after what is wrong with one.
  const flowing = useFlow(drill, rink, rep, team);
  const { run } = flowing;
  const playback = usePlayback(run?.durationS ?? 0);
  const many = useMany(drill, run !== null && issues.length === 0);
  // One selection for the ice and the score: what is picked in one is seen in the other.
  const [picked, select] = useState<Selection>(NOTHING);
  const selection = useMemo(() => stillThere(picked, drill), [picked, drill]);
  const chosen = leadOf(selection);
  const [said, say] = useState('');
  /** What was said belongs to what was selected then. */
  const pick = (next: Selection) => {
    say('');
    select(next);
  };
  const choose = (one: typeof chosen) => pick(selectionOf(one));
  const [placing, setPlacing] = useState<Thing | null>(null);
  const [isPutting, setPutting] = useState(false);
  const [isHanding, setHanding] = useState(false);
  const [isGhostly, setGhostly] = useState(false);
  const lengths = team.lengths;
  // Where the margin goes below the work, what is chosen and found stays beside the board.
  const isBelow = useIsNarrow(1100);
  const isStill =
    Object.keys(drill.games).length === 0 &&
    Object.values(drill.spots).every(spot => Object.keys(spot.acts).length === 0);

  useKeys([
    { keys: 'Space', says: 'run, stop', act: playback.toggle },
    { keys: 'ArrowLeft', says: 'a tenth of a second back', act: () => playback.seek(playback.timeS - 0.1) },
    { keys: 'ArrowRight', says: 'a tenth of a second on', act: () => playback.seek(playback.timeS + 0.1) },
    { keys: 'Home', says: 'to the whistle', act: () => playback.seek(0) },
    {
      keys: 'Escape',
      says: 'let go of everything',
      act: () => {
        const wasHolding = hand.isHolding;
        hand.putBack();
        setPlacing(null);
        say('');
        if (wasHolding) return;
        select(NOTHING);
        flag.choose(null);
      },
    },
  ]);
  const arrange = useArrange({ hand, rink, selection, onSelect: select, onSaid: say });
  useEditKeys(arrange, say);
  const ownsPuckAtEnd = (spotId: SpotId): boolean => hasPuckAtEnd(run, spotId);
  const choosePlaced = (spotId: SpotId | null) => {
    setPlacing(null);
    if (spotId !== null) choose({ spotId, actId: null });
  };
  const placeAtCentre = (thing: Thing) => {
    const { writes, spotId } = thingAdded(drill, thing, freePlaceNearCentre(drill));
    hand.keep(writes);
    choosePlaced(spotId ?? null);
  };
  const { findings } = flowing;
  const look = (finding: Finding) => {
    playback.seek(finding.timeS);
    const [spotId] = finding.spots;
    if (spotId !== undefined) choose({ spotId, actId: finding.act ?? null });
  };
  const work = useRef<HTMLDivElement>(null);
  const flag = useChosenFlag(work, findings, look);
  const panels = (
    <>
      <FindingsPanel
        hand={hand}
        rink={rink}
        findings={findings}
        issues={issues}
        isStale={isStale}
        isStill={isStill}
        lengths={lengths}
        chosen={flag.number}
        more={flowFindings(flowing.here)}
        onLook={(finding, number) => {
          flag.choose(number);
          look(finding);
        }}
      />
      {chosen.spotId !== null && (
        <ActsPanel
          hand={hand}
          spotId={chosen.spotId}
          actId={chosen.actId}
          lengths={lengths}
          onChooseAct={actId => choose({ spotId: chosen.spotId, actId })}
          onGone={() => select(NOTHING)}
        />
      )}
    </>
  );
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
        meta={<DrillOrigin drill={drill} team={team} />}
        acts={
          <>
            <UndoActs />
            <Act notNow={run === null ? 'there is nobody on the ice' : undefined} onPress={playback.toggle}>
              {playback.isPlaying ? 'Stop' : 'Run'} <kbd>Space</kbd>
            </Act>
            <Act opens={isHanding} onPress={() => setHanding(!isHanding)}>
              Hand out
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
        {isHanding && <OutPanel id={id} drill={kept} team={team} onClose={() => setHanding(false)} />}
        <div className="two">
          {/* biome-ignore lint/a11y/useKeyWithClickEvents lint/a11y/noStaticElementInteractions: flags are pressed by key in the list of findings */}
          <div
            className="studio-work"
            ref={work}
            onPointerDownCapture={flag.onPointerDownCapture}
            onClick={flag.onClick}
          >
            <ThingsLine placing={placing} onPlacing={setPlacing} onPlaceAtCentre={placeAtCentre}>
              {drill.from !== undefined && (
                <span className="things-end">
                  <Act isOn={isGhostly} onPress={() => setGhostly(!isGhostly)}>
                    Ghosts of the freeze
                  </Act>
                </span>
              )}
            </ThingsLine>
            {isBelow && <BelowLine drill={drill} chosen={chosen.spotId} findings={findings} />}
            <Board
              hand={hand}
              rink={rink}
              run={run}
              lengths={lengths}
              timeS={playback.timeS}
              selection={selection}
              onSelect={pick}
              placing={placing}
              onPlaced={choosePlaced}
              ownsPuckAtEnd={ownsPuckAtEnd}
              onSaid={say}
              under={
                <>
                  <ManyMarks tally={many.isStale ? null : many.tally} />
                  {isGhostly && drill.from !== undefined && <FreezeGhosts from={drill.from} team={team} />}
                </>
              }
            />
            <WhereStrip drill={drill} rink={rink} many={many} lengths={lengths} />
            <HandLine hand={hand} selection={selection} onSelect={pick} arrange={arrange} said={said} />
            {isBelow && panels}
            {run === null ? (
              <p className="q2 hint">Set somebody on the ice, then pull a route out of them.</p>
            ) : (
              <>
                <ScoreSection
                  hand={hand}
                  run={run}
                  rink={rink}
                  playback={playback}
                  isStale={isStale}
                  chosen={chosen}
                  lengths={lengths}
                  onChoose={choose}
                />

                <SightSection
                  drill={drill}
                  run={run}
                  rink={rink}
                  timeS={playback.timeS}
                  chosen={chosen.spotId}
                  lengths={lengths}
                />
              </>
            )}
          </div>
          <div className="margin">
            {run !== null && (
              <>
                <ManyPanel drill={drill} many={many} />
                <TunePanel hand={hand} outcome={many.wanted} lengths={lengths} />
              </>
            )}
            {!isBelow && panels}
            <GamePanel
              drill={drill}
              rink={rink}
              here={flowing.here}
              onHere={flowing.onHere}
              lengths={lengths}
              onKeep={hand.keep}
              onPick={game => pick([{ kind: 'game', game }])}
            />
            <FlowPanel id={id} drill={drill} flowing={flowing} lengths={lengths} onKeep={hand.keep} />
            {run !== null && <EventsPanel drill={drill} run={run} onSeek={playback.seek} />}
            <VersionsSection id={id} drill={drill} team={team} outcome={many.wanted} />
            <DrillWords id={id} drill={drill} team={team} />
          </div>
        </div>
      </div>
    </>
  );
}
