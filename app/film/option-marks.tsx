import type { CarryOption, IcePoint, PassOption, PinFit } from '@icewright/engine';
import { filmPath } from './film-path.ts';
import type { FreezeView } from './freeze-view.ts';
import { legsOf, optionKey } from './options-of.ts';
import { laneKey, type PictureWords } from './picture-word-places.ts';
import { Cased } from './picture-words.tsx';
import { straight } from './rink-lines.ts';
import type { Word } from './word-places.ts';

/** The chosen options lying on the ice of the picture: the lane's edges, ruled once when contested and twice when shut. */
export function OptionMarks({
  view,
  options,
  words,
  unit,
}: {
  readonly view: FreezeView;
  readonly options: readonly (PassOption | CarryOption)[];
  readonly words: PictureWords;
  readonly unit: number;
}) {
  const { fit } = view;
  if (!fit) return null;
  return (
    <g className="pm-lane">
      {options.map(option => (
        <OptionMark
          key={optionKey(option)}
          fit={fit}
          legs={legsOf(view, option)}
          option={option}
          word={words.get(laneKey(option))}
          unit={unit}
        />
      ))}
    </g>
  );
}

function OptionMark({
  fit,
  legs,
  option,
  word,
  unit,
}: {
  readonly fit: PinFit;
  readonly legs: readonly IcePoint[];
  readonly option: PassOption | CarryOption;
  readonly word: Word | undefined;
  readonly unit: number;
}) {
  const [from, second] = legs;
  const to = legs[legs.length - 1];
  if (!from || !second || !to) return null;
  const way = legs.slice(1).flatMap((leg, i) => straight(legs[i]!, leg));
  return (
    <>
      {option.kind === 'direct' && (
        <path
          className="pm-lane-edge"
          d={filmPath(fit, wedge(from, to, START_M, END_M), true)}
          strokeWidth={1.4 * unit}
        />
      )}
      {option.kind === 'direct' && option.lane.band !== 'open' && (
        <path
          className="pm-ruling"
          d={rulingPath(fit, from, to, option.lane.band === 'shut')}
          strokeWidth={1.1 * unit}
        />
      )}
      <path className="under" d={filmPath(fit, way)} strokeWidth={5 * unit} />
      <path
        className="pm-pass"
        d={filmPath(fit, way)}
        strokeWidth={2.4 * unit}
        strokeDasharray={option.kind === 'carry' ? undefined : `${9 * unit} ${6 * unit}`}
      />
      <path
        className="pm-pass"
        d={filmPath(fit, headOf(legs[legs.length - 2]!, to))}
        strokeWidth={2.4 * unit}
      />
      <Cased word={word} tone="ink" />
    </>
  );
}

const START_M = 0.28;
const END_M = 0.8;
const RULED_EVERY_M = 0.7;

const wedge = (from: IcePoint, to: IcePoint, startM: number, endM: number): IcePoint[] => [
  beside(from, from, to, startM),
  ...straight(beside(from, from, to, startM), beside(to, from, to, endM)),
  ...straight(beside(to, from, to, -endM), beside(from, from, to, -startM)),
];

/** Strokes across the lane; both ways when it is shut. */
const rulingPath = (fit: PinFit, from: IcePoint, to: IcePoint, both: boolean): string => {
  const lengthM = Math.hypot(to.xM - from.xM, to.yM - from.yM);
  const strokes = Math.floor(lengthM / RULED_EVERY_M);
  let path = '';
  for (let i = 1; i < strokes; i++) {
    const at = (i / strokes) * lengthM;
    const half = START_M + (END_M - START_M) * (at / lengthM);
    const slant = Math.min(half, RULED_EVERY_M);
    for (const way of both ? [1, -1] : [1]) {
      const one = beside(between(from, to, (at - slant * way) / lengthM), from, to, half);
      const other = beside(between(from, to, (at + slant * way) / lengthM), from, to, -half);
      path += filmPath(fit, [one, other]);
    }
  }
  return path;
};

const headOf = (from: IcePoint, to: IcePoint): IcePoint[] => {
  const lengthM = Math.max(1e-6, Math.hypot(to.xM - from.xM, to.yM - from.yM));
  const back = between(from, to, 1 - 0.9 / lengthM);
  return [beside(back, from, to, 0.45), to, beside(back, from, to, -0.45)];
};

const between = (from: IcePoint, to: IcePoint, share: number): IcePoint => ({
  xM: from.xM + (to.xM - from.xM) * share,
  yM: from.yM + (to.yM - from.yM) * share,
});

const beside = (at: IcePoint, from: IcePoint, to: IcePoint, byM: number): IcePoint => {
  const lengthM = Math.max(1e-6, Math.hypot(to.xM - from.xM, to.yM - from.yM));
  return { xM: at.xM - ((to.yM - from.yM) / lengthM) * byM, yM: at.yM + ((to.xM - from.xM) / lengthM) * byM };
};
