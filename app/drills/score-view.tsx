import type { Lengths, Rink, Run } from '@icewright/engine';
import { drawScore, type ScoreLayout, scoreLayout, svgPieces } from '@icewright/picture';
import { type PointerEvent, useMemo, useRef, useState } from 'react';
import { numberSaid } from '../parts/figures.ts';
import { useIsCoarse } from '../parts/use-is-narrow.ts';
import { useWidth } from '../parts/use-width.ts';
import type { Chosen } from './chosen.ts';
import { usePieces } from './edit/use-pieces.ts';
import { ScoreActs } from './score/score-acts.tsx';
import { ScoreCues } from './score/score-cues.tsx';
import type { ScoreHand } from './score/score-hand.ts';
import { ScoreLoop } from './score/score-loop.tsx';
import { ScoreNames } from './score/score-names.tsx';
import { ScoreNext } from './score/score-next.tsx';
import type { Hand } from './use-hand.ts';
import type { Playback } from './use-playback.ts';

const NARROWEST_PX = 320;
const STEP_S = 0.1;

/** The rep as staves over time, one stave a spot, worked by hand: acts, lozenges and staves are drawn along, the line of now pulled. */
export function ScoreView(props: {
  readonly hand: Hand;
  readonly run: Run;
  readonly rink: Rink;
  readonly playback: Playback;
  readonly chosen: Chosen;
  readonly lengths: Lengths;
  readonly onChoose: (chosen: Chosen) => void;
  readonly onSay: (words: string) => void;
}) {
  const { hand, run, rink, playback, chosen } = props;
  const { drill } = hand;
  const [box, boxPx] = useWidth<HTMLDivElement>();
  const width = Math.max(NARROWEST_PX, boxPx);
  const forFingers = useIsCoarse();
  const [heldSpanS, setHeldSpanS] = useState<number | null>(null);
  const spanS = heldSpanS ?? run.durationS;
  const layout = useMemo(
    () => scoreLayout(drill, run, { width, spanS, forFingers }),
    [drill, run, width, spanS, forFingers],
  );
  const drawing = useRef<SVGGElement>(null);
  const pieces = useMemo(
    () =>
      svgPieces(
        pen =>
          drawScore(pen, run, drill, rink, {
            width,
            spanS,
            forFingers,
            lengths: props.lengths,
            ...(chosen.spotId ? { selected: chosen.spotId } : {}),
          }),
        { digits: 1, idPrefix: 'score' },
      ),
    [run, drill, rink, width, spanS, forFingers, chosen.spotId, props.lengths],
  );
  usePieces(drawing, pieces);
  const score: ScoreHand = {
    hand,
    run,
    layout,
    chosen,
    forFingers,
    onChoose: props.onChoose,
    onSay: props.onSay,
    isHeld: heldSpanS !== null,
    onHold: isHeld => setHeldSpanS(isHeld ? run.durationS : null),
  };
  const seekTo = (event: PointerEvent<SVGSVGElement>) => {
    const x = event.clientX - event.currentTarget.getBoundingClientRect().left;
    playback.seek(((x - layout.left) / (layout.right - layout.left)) * spanS);
  };
  return (
    <div ref={box} className="score-box">
      <svg
        className="score"
        width={width}
        height={layout.height}
        viewBox={`0 0 ${width} ${layout.height}`}
        onPointerDown={event => {
          event.currentTarget.setPointerCapture(event.pointerId);
          seekTo(event);
        }}
        onPointerMove={event => event.buttons > 0 && seekTo(event)}
      >
        <title>The score</title>
        {/* biome-ignore-start lint/a11y/noAriaHiddenOnFocusable: nothing in it can be focused */}
        <g aria-hidden="true" ref={drawing} />
        {/* biome-ignore-end lint/a11y/noAriaHiddenOnFocusable: as above */}
        <NowLine playback={playback} layout={layout} durationS={run.durationS} />
        <ScoreNames score={score} />
        <ScoreNext score={score} />
        <ScoreActs score={score} />
        <ScoreCues score={score} />
        <ScoreLoop playback={playback} layout={layout} durationS={run.durationS} forFingers={forFingers} />
      </svg>
    </div>
  );
}

/** Where the play stands: pulled anywhere beside what can be taken, or moved by key. */
function NowLine(props: {
  readonly playback: Playback;
  readonly layout: ScoreLayout;
  readonly durationS: number;
}) {
  const { playback, layout } = props;
  const x = layout.xOf(playback.timeS);
  return (
    <g
      className="now-slider"
      role="slider"
      tabIndex={0}
      aria-label="Time of the rep"
      aria-valuemin={0}
      aria-valuemax={Number(props.durationS.toFixed(1))}
      aria-valuenow={Number(playback.timeS.toFixed(1))}
      aria-valuetext={`${numberSaid(playback.timeS)} seconds`}
      onKeyDown={event => {
        const step = { ArrowLeft: -STEP_S, ArrowRight: STEP_S, Home: -1e9, End: 1e9 }[event.key];
        if (step === undefined) return;
        event.preventDefault();
        event.stopPropagation();
        playback.seek(playback.timeS + step * (event.shiftKey ? 10 : 1));
      }}
    >
      <line className="now-line" x1={x} x2={x} y1={layout.top - 12} y2={layout.ruleY + 5} />
      <circle className="now-head" cx={x} cy={layout.ruleY + 2.5} r={5.5} />
    </g>
  );
}
