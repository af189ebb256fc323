import { filmFromIce, type PinFit } from '@icewright/engine';
import type { ReactNode } from 'react';
import { filmPath } from './film-path.ts';
import type { Pair } from './freeze-desk.ts';
import type { FreezeView, PersonView } from './freeze-view.ts';
import { measureOf } from './measure-of.ts';
import { ring, straight } from './rink-lines.ts';

/** Words over a picture: dark ink with a casing of ice, whatever lies below. */
export function Cased(props: {
  readonly x: number;
  readonly y: number;
  readonly size: number;
  readonly tone: 'ink' | 'cool' | 'warm';
  readonly anchor?: 'start' | 'middle' | 'end';
  readonly bold?: boolean;
  readonly children: ReactNode;
}) {
  return (
    <text
      className={`cased ${props.tone}`}
      x={props.x}
      y={props.y}
      fontSize={props.size}
      fontWeight={props.bold ? 650 : 500}
      textAnchor={props.anchor ?? 'start'}
      strokeWidth={props.size * 0.3}
    >
      {props.children}
    </text>
  );
}

/** From where the skater was to where the coach wanted them, lying on the ice. */
export function WantedMark({
  person,
  fit,
  unit,
}: {
  readonly person: PersonView;
  readonly fit: PinFit;
  readonly unit: number;
}) {
  const { placed, atM } = person;
  if (!placed.ghostM || !atM) return null;
  const label = filmFromIce(fit, placed.ghostM);
  const lengthM = Math.hypot(placed.ghostM.xM - atM.xM, placed.ghostM.yM - atM.yM);
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
      {label && (
        <Cased x={label.xPx} y={label.yPx + 22 * unit} size={13 * unit} tone="warm" anchor="middle" bold>
          {placed.role} here, {lengthM.toFixed(1)} m
        </Cased>
      )}
    </g>
  );
}

/** Engineering bars between two who are measured, with the distance and its ±. */
export function LinkMark({
  pair,
  view,
  unit,
}: {
  readonly pair: Pair;
  readonly view: FreezeView;
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
      <Cased
        x={(a.xPx + b.xPx) / 2}
        y={(a.yPx + b.yPx) / 2 - 8 * unit}
        size={15 * unit}
        tone="ink"
        anchor="middle"
        bold
      >
        {measured.distance
          ? `${measured.distance.value} ${measured.distance.plusMinus}`
          : 'cannot be measured'}
      </Cased>
    </g>
  );
}
