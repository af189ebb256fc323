import type { Standard } from '@icewright/engine';
import { useId, useMemo } from 'react';
import { type Lengths, lengthSaid, plusMinusSaid } from '../parts/figures.ts';
import type { Chance } from './chance.ts';
import { type AtLimit, atLimits } from './limits.ts';

const WIDTH = 432;
const LEFT = 34;
const RIGHT = WIDTH - 16;
const TOP = 10;
const BASE = 92;
const STEP_M = 0.1;

/** What would be said of the same freezes if the limit were another; the knob moves the limit of the sentence. */
export function LimitSection(props: {
  readonly chances: readonly Chance[];
  readonly standard: Standard;
  readonly lengths: Lengths;
  readonly onChange: (limitM: number) => void;
}) {
  const { chances, standard, lengths } = props;
  const isMetres = standard.kind !== 'numbers';
  const limitM = isMetres ? standard.withinM : 0;
  const toM = Math.max(4, Math.ceil(limitM) + 1);
  const limits = useMemo(() => atLimits(chances, standard, toM, STEP_M), [chances, standard, toM]);
  const hatchId = useId();
  const first = limits[0];
  const total = first === undefined ? 0 : first.done + first.cannotTell + first.missed;
  if (!isMetres || total === 0) return null;
  const x = (atM: number) => LEFT + (atM / toM) * (RIGHT - LEFT);
  const y = (count: number) => BASE - (count / total) * (BASE - TOP);
  const area = (from: (at: AtLimit) => number, to: (at: AtLimit) => number) =>
    `M${limits.map(at => `${x(at.limitM).toFixed(1)} ${y(to(at)).toFixed(1)}`).join('L')}L${[...limits]
      .reverse()
      .map(at => `${x(at.limitM).toFixed(1)} ${y(from(at)).toFixed(1)}`)
      .join('L')}Z`;
  const here = limits[Math.round(limitM / STEP_M)] ?? first!;
  return (
    <section className="sec limit-section">
      <h2>
        If the limit were another{' '}
        <span className="q3">
          {standard.kind === 'within' ? 'within' : 'give or take'}, {lengths}
        </span>
      </h2>
      <div className="limit-hand">
        <input
          type="range"
          aria-label="The limit"
          aria-valuetext={`${lengthSaid(limitM, lengths)}: ${saidAt(here)}`}
          min={0}
          max={toM}
          step={STEP_M}
          value={limitM}
          onChange={event => props.onChange(Math.round(Number(event.target.value) * 10) / 10)}
        />
        <svg
          viewBox={`0 0 ${WIDTH} 118`}
          role="img"
          aria-label={`At ${lengthSaid(limitM, lengths)}: ${saidAt(here)}.`}
        >
          <defs>
            <pattern
              id={hatchId}
              width="4"
              height="4"
              patternUnits="userSpaceOnUse"
              patternTransform="rotate(45)"
            >
              <path className="hatch" d="M0 2H4" />
            </pattern>
          </defs>
          <rect className="limit-missed" x={LEFT} y={TOP} width={RIGHT - LEFT} height={BASE - TOP} />
          <path
            fill={`url(#${hatchId})`}
            d={area(
              at => at.done,
              at => at.done + at.cannotTell,
            )}
          />
          <path
            className="limit-done"
            d={area(
              () => 0,
              at => at.done,
            )}
          />
          <text className="tx-axis" x={LEFT - 6} y={TOP + 5} textAnchor="end" fontSize={11}>
            {total}
          </text>
          <text className="tx-axis" x={LEFT - 6} y={BASE} textAnchor="end" fontSize={11}>
            0
          </text>
          {Array.from({ length: toM * 2 }, (_, index) => (
            <rect
              // biome-ignore lint/suspicious/noArrayIndexKey: segments of a rule are nothing but their place
              key={index}
              className={index % 2 === 0 ? 'zf' : 'zo'}
              x={x(index / 2)}
              y={BASE + 4}
              width={x(0.5) - x(0)}
              height={5}
            />
          ))}
          {Array.from({ length: toM + 1 }, (_, atM) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: the index is the metre
            <text key={atM} className="tx-axis" x={x(atM)} y={BASE + 22} textAnchor="middle" fontSize={11}>
              {atM === toM ? lengthSaid(atM, lengths, 0) : lengthSaid(atM, lengths, 0).split('\u2009')[0]}
            </text>
          ))}
          <path className="limit-now" d={`M${x(limitM)} ${TOP - 6}V${BASE + 6}`} />
          <circle className="limit-knob" cx={x(limitM)} cy={BASE + 6} r={5} />
        </svg>
      </div>
      <p className="q2">
        At {lengthSaid(limitM, lengths)}: {saidAt(here)}.{' '}
        <span className="q3">
          Only freezes are counted here; {plusMinusSaid(halfWidthOf(chances), lengths)} is how well they
          measure it.
        </span>
      </p>
    </section>
  );
}

const saidAt = ({ done, cannotTell, missed }: AtLimit) =>
  `${done} done, ${missed} missed${cannotTell === 0 ? '' : `, ${cannotTell} cannot tell`}`;

/** The middle one of the 95 % half widths. */
function halfWidthOf(chances: readonly Chance[]): number {
  const halves = chances
    .flatMap(({ measured }) =>
      measured?.judgement.reading === undefined ? [] : [1.96 * measured.judgement.reading.sd],
    )
    .sort((a, b) => a - b);
  return halves[Math.floor(halves.length / 2)] ?? 0;
}
