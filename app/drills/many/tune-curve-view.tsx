import { type FreeQuantity, goodPointsOf, type TuneAnswer } from '@icewright/engine';
import { drawTuneCurve, svgParts, TUNE_CURVE_HEIGHT_PX, tuneRateAt, tuneY } from '@icewright/picture';
import { type KeyboardEvent, type PointerEvent, useMemo } from 'react';
import { useWidth } from '../../parts/use-width.ts';
import type { FreeWords } from './free-words.ts';

const STEP = 0.05;
const inSteps = (ratio: number): number =>
  Number(Math.min(0.95, Math.max(0.05, Math.round(ratio / STEP) * STEP)).toFixed(2));

/** The curve of what was tried and to which reps come: of the others there is no rate to draw. The wanted rate is a line that is pulled by mouse or finger, or moved by the arrow keys. */
export function TuneCurveView(props: {
  readonly free: FreeQuantity;
  readonly words: FreeWords;
  readonly answer: TuneAnswer;
  readonly range: { readonly low: number; readonly high: number };
  readonly wantedRatio: number;
  readonly onWanted: (ratio: number) => void;
}) {
  const { free, words, answer, range, wantedRatio, onWanted } = props;
  const [box, width] = useWidth<HTMLDivElement>();
  const markup = useMemo(
    () =>
      width === 0
        ? ''
        : svgParts(
            pen =>
              drawTuneCurve(
                pen,
                {
                  low: words.shown(range.low),
                  high: words.shown(range.high),
                  points: goodPointsOf(answer).map(({ value, rate, afterGap }) => ({
                    value: words.shown(value),
                    rate: rate.rateRatio,
                    lower: rate.lowerRatio,
                    upper: rate.upperRatio,
                    afterGap,
                  })),
                  wantedRatio,
                  now: words.shown(Math.min(range.high, Math.max(range.low, free.now))),
                  unit: words.unit,
                  ...(answer.kind === 'reached' && { answer: words.shown(answer.value) }),
                },
                width,
              ),
            { idPrefix: 'tune' },
          ),
    [width, words, range, answer, wantedRatio, free.now],
  );
  const pulled = (event: PointerEvent) => {
    if (!event.currentTarget.hasPointerCapture(event.pointerId)) return;
    const top = box.current?.getBoundingClientRect().top ?? 0;
    onWanted(inSteps(tuneRateAt(event.clientY - top)));
  };
  const keyed = (event: KeyboardEvent) => {
    const turn = { ArrowUp: 1, ArrowRight: 1, ArrowDown: -1, ArrowLeft: -1 }[event.key];
    if (turn === undefined) return;
    event.preventDefault();
    event.stopPropagation();
    onWanted(inSteps(wantedRatio + turn * STEP));
  };
  const said = `${Number((wantedRatio * 10).toFixed(1))} in 10`;
  return (
    <div ref={box} className="tune-curve">
      <svg
        className="ice-svg"
        width={width}
        height={TUNE_CURVE_HEIGHT_PX}
        viewBox={`0 0 ${Math.max(1, width)} ${TUNE_CURVE_HEIGHT_PX}`}
        role="img"
        aria-label={`How often it comes, by ${words.said}: ${answer.curve.length} values tried`}
        // biome-ignore lint/security/noDangerouslySetInnerHtml: markup of our own pen, with all words escaped there
        dangerouslySetInnerHTML={{ __html: markup }}
      />
      <div
        role="slider"
        tabIndex={0}
        className="tune-wanted"
        style={{ top: tuneY(wantedRatio) }}
        aria-label="Wanted rate"
        aria-orientation="vertical"
        aria-valuemin={0.5}
        aria-valuemax={9.5}
        aria-valuenow={wantedRatio * 10}
        aria-valuetext={said}
        onKeyDown={keyed}
        onPointerDown={event => event.currentTarget.setPointerCapture(event.pointerId)}
        onPointerMove={pulled}
      >
        <span className="n">wanted, {said}</span>
      </div>
    </div>
  );
}
