import { SURELY_SDS, type TimedEstimate } from '@icewright/engine';
import { useState } from 'react';
import { numberSaid } from '../../parts/figures.ts';
import { clockText } from '../film-clock.ts';
import { useWidth } from '../use-width.ts';

/** One quantity over a stretch of film: a line with its ± (95 %), the hands below it, and where the film stands. A press goes there. */
export function TimeChart({
  title,
  unit,
  series,
  fromS,
  toS,
  handsS,
  nowS,
  stepUp,
  onShow,
}: {
  readonly title: string;
  readonly unit: string;
  readonly series: readonly TimedEstimate[];
  readonly fromS: number;
  readonly toS: number;
  readonly handsS: readonly number[];
  readonly nowS: number;
  /** The axis goes up in such steps. */
  readonly stepUp: number;
  readonly onShow: (timeS: number) => void;
}) {
  const [box, setBox] = useState<HTMLDivElement | null>(null);
  const width = Math.max(120, useWidth(box));
  const top = Math.max(
    2 * stepUp,
    stepUp * Math.ceil(Math.max(0, ...series.map(({ value, sd }) => value + SURELY_SDS * sd)) / stepUp),
  );
  const x = (timeS: number) =>
    LEFT + ((timeS - fromS) / Math.max(1e-6, toS - fromS)) * (width - LEFT - RIGHT);
  const y = (value: number) => TOP + (1 - value / top) * (HIGH - TOP - BOTTOM);
  const runs = runsOf(series);
  const now = nearest(series, nowS);
  const last = series[series.length - 1];
  const peak = series.reduce<TimedEstimate | undefined>(
    (a, b) => (a && a.value >= b.value ? a : b),
    undefined,
  );
  const isElsewhere = nowS < fromS || nowS > toS;
  const says = now
    ? `${numberSaid(now.value)} ± ${numberSaid(SURELY_SDS * now.sd)} ${unit} here`
    : isElsewhere
      ? `from ${clockText(fromS, 1)} to ${clockText(toS, 1)}; the film stands elsewhere`
      : 'not told in this frame';
  return (
    <div className="time-chart" ref={setBox}>
      <p>
        <span className="b">{title}</span> <span className={now ? 'est' : 'q3'}>{says}</span>
      </p>
      <svg
        width={width}
        height={HIGH}
        role="img"
        aria-label={`${title} from ${numberSaid(fromS)} to ${numberSaid(toS)} s, at most ${numberSaid(peak?.value ?? 0)} ${unit}; ${says}`}
        onPointerDown={event => {
          const left = event.currentTarget.getBoundingClientRect().left;
          const part = (event.clientX - left - LEFT) / (width - LEFT - RIGHT);
          onShow(fromS + Math.max(0, Math.min(1, part)) * (toS - fromS));
        }}
      >
        {Array.from({ length: Math.round(top / stepUp) + 1 }, (_, i) => i * stepUp).map(value => (
          <g key={value} className="tc-rule">
            <line x1={LEFT} x2={width - RIGHT} y1={y(value)} y2={y(value)} />
            <text x={LEFT - 6} y={y(value) + 4} textAnchor="end">
              {value}
            </text>
          </g>
        ))}
        {runs.map(run => (
          <g key={run[0]!.timeS}>
            <path className="tc-band" d={bandOf(run, x, value => y(Math.max(0, Math.min(top, value))))} />
            <path className="tc-line" d={lineOf(run, x, y)} />
          </g>
        ))}
        {handsS.map(timeS => (
          <path key={timeS} className="tc-hand" d={`M${x(timeS)} ${HIGH - BOTTOM + 3}v5`} />
        ))}
        {nowS >= fromS && nowS <= toS && (
          <path className="tc-now" d={`M${x(nowS)} ${TOP - 4}V${HIGH - BOTTOM + 8}`} />
        )}
        {TIMES.map(part => (
          <text
            key={part}
            className="tc-unit"
            x={x(fromS + part * (toS - fromS))}
            y={HIGH - BOTTOM + 18}
            textAnchor={part === 0 ? 'start' : part === 1 ? 'end' : 'middle'}
          >
            {clockText(fromS + part * (toS - fromS), 1)}
          </text>
        ))}
        {last && (
          <text className="tc-unit" x={width - RIGHT} y={HIGH - 1} textAnchor="end">
            {handsS.length > 0 ? `${unit}; short lines: feet put down` : unit}
          </text>
        )}
      </svg>
    </div>
  );
}

/** The axis of time is read at such parts of it. */
const TIMES = [0, 0.5, 1];

const HIGH = 122;
const TOP = 8;
const BOTTOM = 36;
const LEFT = 26;
const RIGHT = 4;

/** A hole in what is told is a hole in the line. */
const runsOf = (series: readonly TimedEstimate[]): TimedEstimate[][] => {
  const runs: TimedEstimate[][] = [];
  let last: TimedEstimate | undefined;
  for (const one of series) {
    if (!last || one.timeS - last.timeS > HOLE_S) runs.push([]);
    runs[runs.length - 1]!.push(one);
    last = one;
  }
  return runs;
};
const HOLE_S = 0.5;

const lineOf = (
  run: readonly TimedEstimate[],
  x: (timeS: number) => number,
  y: (value: number) => number,
): string =>
  run.map((one, i) => `${i === 0 ? 'M' : 'L'}${x(one.timeS).toFixed(1)} ${y(one.value).toFixed(1)}`).join('');

const bandOf = (
  run: readonly TimedEstimate[],
  x: (timeS: number) => number,
  y: (value: number) => number,
): string => {
  const upper = run.map(one => ({ ...one, value: one.value + SURELY_SDS * one.sd }));
  const lower = run.map(one => ({ ...one, value: one.value - SURELY_SDS * one.sd })).reverse();
  return `${lineOf([...upper, ...lower], x, y)}Z`;
};

const nearest = (series: readonly TimedEstimate[], timeS: number): TimedEstimate | undefined => {
  let best: TimedEstimate | undefined;
  for (const one of series) {
    if (!best || Math.abs(one.timeS - timeS) < Math.abs(best.timeS - timeS)) best = one;
  }
  return best && Math.abs(best.timeS - timeS) < 0.1 ? best : undefined;
};
