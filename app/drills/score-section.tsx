import type { Drill } from '@icewright/book';
import type { Lengths, Rink, Run, SpotId } from '@icewright/engine';
import { Act } from '../parts/act.tsx';
import { numberSaid } from '../parts/figures.ts';
import { ScoreView } from './score-view.tsx';
import { type Playback, SPEEDS } from './use-playback.ts';

/** The rep over time, and how fast it plays. */
export function ScoreSection(props: {
  readonly drill: Drill;
  readonly run: Run;
  readonly rink: Rink;
  readonly playback: Playback;
  readonly isStale: boolean;
  readonly chosen: SpotId | null;
  readonly lengths: Lengths;
}) {
  const { playback } = props;
  return (
    <section className="sec">
      <h2>
        <span>
          Score{' '}
          <span className="q3">
            one line of staves a spot; higher is faster; the marks are those on the ice
          </span>
        </span>
        <span className="transport">
          <span className={props.isStale ? 'stale' : 'cool b'}>{numberSaid(playback.timeS)} s</span>
          {SPEEDS.map(speed => (
            <Act key={speed} isOn={playback.speed === speed} onPress={() => playback.setSpeed(speed)}>
              {speed === 1 ? 'game speed' : speed === 0.5 ? 'half' : 'quarter'}
            </Act>
          ))}
        </span>
      </h2>
      <ScoreView
        drill={props.drill}
        run={props.run}
        rink={props.rink}
        playback={playback}
        chosen={props.chosen}
        lengths={props.lengths}
      />
    </section>
  );
}
