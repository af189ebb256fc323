import type { Drill } from '@icewright/book';
import type { Lengths, Rink, Run, SpotId } from '@icewright/engine';
import { drawScore, scoreHeight, scoreX, svgParts } from '@icewright/picture';
import { type PointerEvent, useLayoutEffect, useMemo, useRef, useState } from 'react';
import { numberSaid } from '../parts/figures.ts';
import type { Playback } from './use-playback.ts';

/** The rep as staves over time, one stave a spot. The line of now is pulled by hand or moved by key. */
export function ScoreView(props: {
  readonly drill: Drill;
  readonly run: Run;
  readonly rink: Rink;
  readonly playback: Playback;
  readonly chosen: SpotId | null;
  readonly lengths: Lengths;
}) {
  const { drill, run, rink, playback } = props;
  const box = useRef<HTMLDivElement>(null);
  const [width, setWidth] = useState(880);
  useLayoutEffect(() => {
    const element = box.current;
    if (element === null) return;
    const watch = new ResizeObserver(() => setWidth(Math.max(320, Math.round(element.clientWidth))));
    watch.observe(element);
    return () => watch.disconnect();
  }, []);
  const height = useMemo(() => scoreHeight(drill, run), [drill, run]);
  const markup = useMemo(
    () =>
      svgParts(
        pen =>
          drawScore(pen, run, drill, rink, {
            width,
            lengths: props.lengths,
            ...(props.chosen ? { selected: props.chosen } : {}),
          }),
        { digits: 1, idPrefix: 'score' },
      ),
    [run, drill, rink, width, props.chosen, props.lengths],
  );
  const startPx = scoreX(drill, run, width, 0);
  const endPx = scoreX(drill, run, width, run.durationS);
  const nowPx = scoreX(drill, run, width, playback.timeS);
  const seekTo = (event: PointerEvent<HTMLDivElement>) =>
    playback.seek(
      ((event.clientX - event.currentTarget.getBoundingClientRect().left - startPx) / (endPx - startPx)) *
        run.durationS,
    );
  return (
    <div
      ref={box}
      className="score-box"
      role="slider"
      tabIndex={0}
      aria-label="Time of the rep"
      aria-valuemin={0}
      aria-valuemax={Number(run.durationS.toFixed(1))}
      aria-valuenow={Number(playback.timeS.toFixed(1))}
      aria-valuetext={`${numberSaid(playback.timeS)} seconds`}
      onPointerDown={event => {
        event.currentTarget.setPointerCapture(event.pointerId);
        seekTo(event);
      }}
      onPointerMove={event => event.buttons > 0 && seekTo(event)}
      onKeyDown={event => {
        const step = { ArrowLeft: -0.1, ArrowRight: 0.1, Home: -1e9, End: 1e9 }[event.key];
        if (step === undefined) return;
        event.preventDefault();
        event.stopPropagation();
        playback.seek(playback.timeS + step * (event.shiftKey ? 10 : 1));
      }}
    >
      <svg className="score" viewBox={`0 0 ${width} ${height}`} height={height} aria-hidden="true">
        {/* biome-ignore lint/security/noDangerouslySetInnerHtml: markup of our own pen, with all words escaped there */}
        <g dangerouslySetInnerHTML={{ __html: markup }} />
        <line className="now-line" x1={nowPx} x2={nowPx} y1={12} y2={height - 14} />
      </svg>
    </div>
  );
}
