import type { Lengths } from '@icewright/engine';
import { useState } from 'react';
import { Act } from '../parts/act.tsx';
import { numberSaid } from '../parts/figures.ts';
import type { Chosen } from './chosen.ts';
import './score/score.css';
import type { Follow } from './follow.ts';
import { ScoreView } from './score-view.tsx';
import { useFollowed } from './use-follow.ts';
import { type Playback, SPEEDS, type Speed } from './use-playback.ts';
import type { ShownRep } from './use-studio.ts';

const SPEED_SAID: Readonly<Record<Speed, { readonly figure: string; readonly words: string }>> = {
  0.25: { figure: '¼', words: 'Quarter speed' },
  0.5: { figure: '½', words: 'Half speed' },
  1: { figure: '1', words: 'Game speed' },
  2: { figure: '2', words: 'Double speed' },
};

/** The rep over time, and how it is played: how fast, once or again and again. */
export function ScoreSection(props: {
  readonly atRest: ShownRep;
  readonly follow: Follow<ShownRep>;
  readonly playback: Playback;
  readonly chosen: Chosen;
  readonly lengths: Lengths;
  readonly onChoose: (chosen: Chosen) => void;
}) {
  const { playback, chosen } = props;
  const { hand, run, rink, isStale } = useFollowed(props.follow, props.atRest);
  const [said, say] = useState('');
  const { loop } = playback;
  if (run === null) return null;
  return (
    <section className="sec score-section">
      <h2>
        <span>
          Score <span className="q3">one stave a spot; higher is faster; the marks are those on the ice</span>
        </span>
        <span className="transport">
          <span className={isStale ? 'stale' : 'cool b'}>{numberSaid(playback.timeS)} s</span>
          <span className="q3">speed</span>
          {SPEEDS.map(speed => (
            <Act
              key={speed}
              isOn={playback.speed === speed}
              label={SPEED_SAID[speed].words}
              onPress={() => playback.setSpeed(speed)}
            >
              {SPEED_SAID[speed].figure}
            </Act>
          ))}
          <Act
            isOn={loop !== null}
            label={
              loop === null ? 'Loop' : `Loop, ${numberSaid(loop.fromS)} to ${numberSaid(loop.toS)} seconds`
            }
            onPress={() => playback.setLoop(loop === null ? { fromS: 0, toS: run.durationS } : null)}
          >
            loop
          </Act>
        </span>
      </h2>
      <ScoreView
        hand={hand}
        run={run}
        rink={rink}
        playback={playback}
        chosen={chosen}
        lengths={props.lengths}
        onChoose={props.onChoose}
        onSay={say}
      />
      <p className="score-says">
        <span role="status">{said}</span>
        {said === '' && (
          <span className="q3">
            Draw an act along to start it at another time, a lozenge to another stave to change who gives the
            cue, a name to lay its stave elsewhere.
          </span>
        )}
      </p>
    </section>
  );
}
