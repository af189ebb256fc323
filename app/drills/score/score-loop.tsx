import type { ScoreLayout } from '@icewright/picture';
import { type KeyboardEvent, useRef } from 'react';
import { numberSaid } from '../../parts/figures.ts';
import { type Loop, type Playback, SHORTEST_LOOP_S } from '../use-playback.ts';

const STEP_S = 0.1;
const HIT_PX = { mouse: 9, finger: 22 } as const;

/** What is not played again and again lies under a veil; the loop has a handle at each end of it on the rule of seconds. */
export function ScoreLoop(props: {
  readonly playback: Playback;
  readonly layout: ScoreLayout;
  readonly durationS: number;
  readonly forFingers: boolean;
}) {
  const { playback, layout } = props;
  const { loop } = playback;
  if (loop === null) return null;
  const set = (end: 'fromS' | 'toS', timeS: number) =>
    playback.setLoop(
      end === 'fromS'
        ? { ...loop, fromS: Math.max(0, Math.min(loop.toS - SHORTEST_LOOP_S, timeS)) }
        : { ...loop, toS: Math.min(props.durationS, Math.max(loop.fromS + SHORTEST_LOOP_S, timeS)) },
    );
  return (
    <>
      {[
        [0, loop.fromS],
        [loop.toS, props.durationS],
      ].map(([fromS = 0, toS = 0]) => (
        <rect
          key={fromS === 0 ? 'before' : 'after'}
          className="not-looped"
          x={layout.xOf(fromS)}
          width={Math.max(0, layout.xOf(toS) - layout.xOf(fromS))}
          y={layout.top}
          height={layout.ruleY + 8 - layout.top}
        />
      ))}
      {(['fromS', 'toS'] as const).map(end => (
        <LoopEnd key={end} {...props} loop={loop} end={end} onSet={timeS => set(end, timeS)} />
      ))}
    </>
  );
}

function LoopEnd(props: {
  readonly layout: ScoreLayout;
  readonly durationS: number;
  readonly forFingers: boolean;
  readonly loop: Loop;
  readonly end: 'fromS' | 'toS';
  readonly onSet: (timeS: number) => void;
}) {
  const { layout, loop, end, onSet } = props;
  const from = useRef<{ readonly x: number; readonly timeS: number } | null>(null);
  const timeS = loop[end];
  const x = layout.xOf(timeS);
  const reach = HIT_PX[props.forFingers ? 'finger' : 'mouse'];
  const side = end === 'fromS' ? -1 : 1;
  return (
    <g
      role="slider"
      tabIndex={0}
      className="loop-end"
      aria-label={end === 'fromS' ? 'Loop from' : 'Loop to'}
      aria-valuemin={0}
      aria-valuemax={Number(props.durationS.toFixed(1))}
      aria-valuenow={Number(timeS.toFixed(1))}
      aria-valuetext={`${numberSaid(timeS)} seconds`}
      onPointerDown={event => {
        event.stopPropagation();
        event.currentTarget.setPointerCapture(event.pointerId);
        from.current = { x: event.clientX, timeS };
      }}
      onPointerMove={event => {
        if (from.current === null) return;
        onSet(from.current.timeS + (event.clientX - from.current.x) / (layout.xOf(1) - layout.xOf(0)));
      }}
      onPointerUp={() => {
        from.current = null;
      }}
      onPointerCancel={() => {
        from.current = null;
      }}
      onKeyDown={(event: KeyboardEvent) => {
        const step = { ArrowLeft: -STEP_S, ArrowRight: STEP_S, Home: -1e9, End: 1e9 }[event.key];
        if (step === undefined) return;
        event.preventDefault();
        event.stopPropagation();
        onSet(timeS + step * (event.shiftKey ? 10 : 1));
      }}
    >
      <rect className="hit" x={x - reach} y={layout.ruleY - reach} width={2 * reach} height={2 * reach} />
      <path
        className="shown"
        d={`M${x} ${layout.ruleY - 8}V${layout.ruleY + 10}M${x - side * 5} ${layout.ruleY - 8}H${x}M${x - side * 5} ${layout.ruleY + 10}H${x}`}
      />
    </g>
  );
}
