import type { DrillAct } from '@icewright/book';
import type { ActId, SpotId } from '@icewright/engine';
import { actTimes, type Stave } from '@icewright/picture';
import { numberSaid } from '../../parts/figures.ts';
import { actSaid, cueSaid, roleOf } from '../act-words.ts';
import { removed } from '../edit/removed.ts';
import { pickedAct } from '../edit/selection.ts';
import { actsOf, newActId } from '../route-writes.ts';
import { Grab } from './grab.tsx';
import { retimed } from './retime.ts';
import { letGo, runAtStart, type ScoreHand, useStillUnderHand } from './score-hand.ts';

/** Acts that take no time are as wide as what can be pressed. */
const LEAST_PX = { mouse: 16, finger: 44 } as const;
const STEP_S = 0.1;

/** Every act that was played, on its stave from its start to its end: pressed it is chosen, drawn along it starts at another time. */
export function ScoreActs(props: { readonly score: ScoreHand }) {
  const { score } = props;
  const { run, layout, hand } = score;
  const placed = layout.staves.flatMap(stave => {
    const spot = hand.drill.spots[stave.spot];
    if (spot === undefined) return [];
    return actsOf(spot).flatMap(([actId, act]) => {
      const times = actTimes(run, stave.spot, actId);
      return times === null ? [] : [{ stave, actId, act, ...times }];
    });
  });
  // What takes no time lies above what does, or it could not be taken.
  const parts = [...useStillUnderHand(placed, keyOf, score.isHeld)];
  parts.sort((one, other) => other.endS - other.startS - (one.endS - one.startS));
  return parts.map(each => <ScoreAct key={keyOf(each)} score={score} {...each} />);
}

const keyOf = (part: { readonly stave: Stave; readonly actId: ActId }): string =>
  `${part.stave.spot} ${part.actId}`;

function ScoreAct(props: {
  readonly score: ScoreHand;
  readonly stave: Stave;
  readonly actId: ActId;
  readonly act: DrillAct;
  readonly startS: number;
  readonly endS: number;
}) {
  const { score, stave, actId, act, startS, endS } = props;
  const { hand, layout, chosen, run } = score;
  const spotId = stave.spot;
  const isChosen = chosen.spotId === spotId && chosen.actId === actId;
  const leastPx = LEAST_PX[score.forFingers ? 'finger' : 'mouse'];
  const fromX = layout.xOf(startS);
  const widthPx = Math.max(leastPx, layout.xOf(endS) - fromX);
  const x = widthPx > leastPx ? fromX : fromX - leastPx / 2;
  const y = stave.zeroY - stave.pitchPx + 2;
  return (
    <Grab
      className={isChosen ? 'score-act is-chosen' : 'score-act'}
      name={said(score, spotId, act, startS, endS)}
      isPressed={isChosen}
      onPress={() => score.onChoose({ spotId, actId })}
      onDrag={() => {
        const { kept } = hand;
        const before = runAtStart(run);
        const held = newActId();
        const aSecondPx = layout.xOf(1) - layout.xOf(0);
        score.onChoose({ spotId, actId });
        score.onHold(true);
        return ({ dxPx }) => {
          const change = retimed(kept, before, spotId, actId, startS + dxPx / aSecondPx, held);
          if (change === null) return;
          hand.hold(change.writes);
          score.onSay(`${change.said}: at ${numberSaid(change.startS)} s.`);
        };
      }}
      onDrop={() => letGo(score, true)}
      onCancel={() => letGo(score, false)}
      onKey={event => {
        const step = { ArrowLeft: -STEP_S, ArrowRight: STEP_S }[event.key];
        const isGone = event.key === 'Delete' || event.key === 'Backspace';
        if (step === undefined && !isGone) return;
        event.preventDefault();
        event.stopPropagation();
        if (step === undefined) {
          hand.keep(removed(hand.drill, [pickedAct(spotId, actId)]));
          score.onSay(`${roleOf(hand.drill, spotId)} ${actSaid(hand.drill, act)}: taken out.`);
          return;
        }
        const toS = startS + step * (event.shiftKey ? 10 : 1);
        const change = retimed(hand.drill, run, spotId, actId, toS);
        if (change === null) return;
        hand.keep(change.writes);
        score.onSay(`${change.said}: at ${numberSaid(change.startS)} s.`);
      }}
    >
      <rect className="hit" x={x} y={y} width={widthPx} height={stave.pitchPx - 2} />
      <line className="under" x1={x} x2={x + widthPx} y1={stave.zeroY} y2={stave.zeroY} />
      <line className="start" x1={fromX} x2={fromX} y1={y + 4} y2={stave.zeroY} />
    </Grab>
  );
}

const said = ({ hand }: ScoreHand, spotId: SpotId, act: DrillAct, startS: number, endS: number): string => {
  const { drill } = hand;
  const when =
    endS - startS < 0.05 ? `at ${numberSaid(startS)} s` : `${numberSaid(startS)} to ${numberSaid(endS)} s`;
  return `${roleOf(drill, spotId)} ${actSaid(drill, act)}, ${when}, starts ${cueSaid(drill, act.cue)}`;
};
