import type { SpotId } from '@icewright/engine';
import { type ScoreCue, scoreCuesOf } from '@icewright/picture';
import { cueSaid, roleOf } from '../act-words.ts';
import { Grab } from './grab.tsx';
import { refired } from './refire.ts';
import { letGo, type ScoreHand, staveNear, useStillUnderHand } from './score-hand.ts';

const HIT_PX = { mouse: 10, finger: 22 } as const;

/** The lozenges: laid on another stave, it is somebody else who fires them. */
export function ScoreCues({ score }: { readonly score: ScoreHand }) {
  const { run, layout, hand } = score;
  const played = scoreCuesOf(run, hand.drill, layout).filter(
    ({ sign }) => sign.cue.on !== 'whistle' && sign.cue.on !== 'after',
  );
  const cues = useStillUnderHand(played, keyOf, score.isHeld);
  return cues.map(cue => <CueGrab key={keyOf(cue)} score={score} cue={cue} />);
}

const keyOf = ({ sign }: ScoreCue): string => `${sign.way} ${sign.spot} ${sign.act}`;

function CueGrab({ score, cue }: { readonly score: ScoreHand; readonly cue: ScoreCue }) {
  const { hand, layout } = score;
  const { sign, x, y } = cue;
  const { drill } = hand;
  const fires = cueSaid(drill, sign.cue);
  const radius = HIT_PX[score.forFingers ? 'finger' : 'mouse'];
  const name =
    sign.way === 'fires'
      ? `Cue ${sign.letter} is given ${fires}`
      : `${roleOf(drill, sign.spot)} waits for cue ${sign.letter}, ${fires}`;
  const own = layout.staves.findIndex(({ spot }) => spot === firing(cue));
  return (
    <Grab
      className="score-cue"
      name={name}
      onPress={() => score.onChoose({ spotId: sign.spot, actId: sign.act })}
      onDrag={() => {
        const { kept } = hand;
        score.onHold(true);
        // The lozenge as it was taken: what is drawn of it moves while the hand does.
        return ({ dyPx }) => {
          const spot = staveNear(layout, y - 12 + dyPx)?.spot;
          const change = spot === undefined ? null : refired(kept, sign, spot);
          hand.hold(change?.writes ?? []);
          score.onSay(change === null ? `Stays: starts ${fires}.` : `${change.said}.`);
        };
      }}
      onDrop={() => letGo(score, true)}
      onCancel={() => letGo(score, false)}
      onKey={event => {
        const step = { ArrowUp: -1, ArrowDown: 1 }[event.key];
        const spot = step === undefined ? undefined : layout.staves[own + step]?.spot;
        if (spot === undefined) return;
        event.preventDefault();
        event.stopPropagation();
        const change = refired(drill, sign, spot);
        if (change === null) return;
        hand.keep(change.writes);
        score.onSay(`${change.said}.`);
      }}
    >
      <rect className="hit" x={x - radius} y={y - radius} width={2 * radius} height={2 * radius} />
    </Grab>
  );
}

/** Whose doing it is; of a cue that names nobody, whose act waits. */
const firing = ({ sign }: ScoreCue): SpotId => ('spot' in sign.cue ? sign.cue.spot : sign.spot);
