import type { PinFit } from '@icewright/engine';
import { filmPath } from './film-path.ts';
import type { Pair } from './freeze-desk.ts';
import type { FreezeView, PersonView } from './freeze-view.ts';
import { measureOf } from './measure-of.ts';
import { ring, straight } from './rink-lines.ts';
import type { Word } from './word-places.ts';

/** A word over a picture: dark ink with a casing of ice, whatever lies below. */
export function Cased({
  word,
  tone,
  bold,
}: {
  readonly word: Word | undefined;
  readonly tone: 'ink' | 'cool' | 'warm';
  readonly bold?: boolean;
}) {
  if (!word) return null;
  return (
    <text
      className={`cased ${tone}`}
      x={word.x}
      y={word.y}
      fontSize={word.size}
      fontWeight={bold ? 650 : 500}
      textAnchor="middle"
      strokeWidth={word.size * 0.3}
    >
      {word.text}
    </text>
  );
}

/** From where the skater was to where the coach wanted them, lying on the ice. */
export function WantedMark({
  person,
  fit,
  word,
  unit,
}: {
  readonly person: PersonView;
  readonly fit: PinFit;
  readonly word: Word | undefined;
  readonly unit: number;
}) {
  const { placed, atM } = person;
  if (!placed.ghostM || !atM) return null;
  return (
    <g className="pm-wanted">
      <path className="under" d={filmPath(fit, straight(atM, placed.ghostM))} strokeWidth={4.5 * unit} />
      <path
        d={filmPath(fit, straight(atM, placed.ghostM))}
        strokeWidth={2 * unit}
        strokeDasharray={`${0.5 * unit} ${5 * unit}`}
        strokeLinecap="round"
      />
      <path
        d={filmPath(fit, ring(placed.ghostM, 0.8, 32), true)}
        strokeWidth={2 * unit}
        strokeDasharray={`${5 * unit} ${3 * unit}`}
      />
      <Cased word={word} tone="warm" bold />
    </g>
  );
}

/** Engineering bars between two who are measured, with the distance and its ±. */
export function LinkMark({
  pair,
  view,
  word,
  unit,
}: {
  readonly pair: Pair;
  readonly view: FreezeView;
  readonly word: Word | undefined;
  readonly unit: number;
}) {
  const measured = measureOf(view, pair);
  if (!measured || !view.fit) return null;
  const { a, b } = measured;
  const path = `M${a.xPx} ${a.yPx}L${b.xPx} ${b.yPx}`;
  return (
    <g className="pm-link">
      <path className="under" d={path} strokeWidth={4.5 * unit} />
      <path d={path} strokeWidth={1.8 * unit} />
      <Cased word={word} tone="ink" bold />
    </g>
  );
}
