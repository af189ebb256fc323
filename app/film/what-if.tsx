import type { CarryOption, LevelId, PassOption } from '@icewright/engine';
import { useDeferredValue, useMemo } from 'react';
import { percentSaid, pointsSaid } from '../parts/figures.ts';
import type { FreezeView } from './freeze-view.ts';
import { nameOf } from './measure-of.ts';
import { type OptionsView, optionKey, optionsOf } from './options-of.ts';
import { movedView } from './what-if-view.ts';
import { WhyRow } from './why-row.tsx';

/** What changes for the carrier when skaters stand at their wanted places: each lane that opens or shuts, and by how much. */
export function WhatIf({
  view,
  level,
  options,
}: {
  readonly view: FreezeView;
  readonly level: LevelId;
  /** As they stand. */
  readonly options: OptionsView;
}) {
  // A ghost in the hand moves faster than passes are worked out.
  const settled = useDeferredValue(view);
  const moved = useMemo(() => movedView(settled), [settled]);
  const then = useMemo(() => moved && optionsOf(moved.view, level), [moved, level]);
  if (!moved || options.kind !== 'options' || then?.kind !== 'options') return null;
  const names = moved.ids.map(id => nameOf(view, id)).join(', ');
  const rows = changesOf(options, then);
  return (
    <table className="tt readings what-if" data-testid="what-if">
      <thead>
        <tr>
          <th>If {names} stood where wanted</th>
          <th className="r">now</th>
          <th className="r">then</th>
          <th className="r">points</th>
        </tr>
      </thead>
      <tbody>
        {rows.length === 0 && (
          <tr>
            <td colSpan={4} className="q3">
              no pass of {nameOf(view, options.carrierId)} changes by a point
            </td>
          </tr>
        )}
        {rows.map(({ key, now, after }) => {
          const one = (after ?? now)!;
          return (
            <WhyRow
              key={key}
              columns={4}
              estimate
              value={after ? percentSaid(after.chance) : 'none'}
              why={`The same reckoning as under the options, once with everybody where he was placed and once with ${names} at the wanted place, standing as everybody stands in a picture; who has the puck stays. Lane: ${laneSaid(now)} now, ${laneSaid(after)} then.`}
            >
              {figure => (
                <>
                  <td>
                    {one.kind === 'carry'
                      ? 'Skate it'
                      : `${one.kind === 'bank' ? 'Off the boards to' : 'To'} ${nameOf(view, one.toId)}`}
                    , {turnSaid(now, after)}
                  </td>
                  <td className="r">
                    <span className="est">{now ? percentSaid(now.chance) : 'none'}</span>
                  </td>
                  <td className="r">{figure}</td>
                  <td className="r">{pointsSaid((after?.chance ?? 0) - (now?.chance ?? 0))}</td>
                </>
              )}
            </WhyRow>
          );
        })}
      </tbody>
    </table>
  );
}

type Option = PassOption | CarryOption;
type Options = Extract<OptionsView, { kind: 'options' }>;

/** Those that change by a point at least, the most changed first. */
const changesOf = (before: Options, after: Options): { key: string; now?: Option; after?: Option }[] => {
  const [now, then] = [before, after].map(
    one => new Map<string, Option>(one.found.options.map(option => [optionKey(option), option])),
  ) as [Map<string, Option>, Map<string, Option>];
  const change = (key: string) => (then.get(key)?.chance ?? 0) - (now.get(key)?.chance ?? 0);
  return [...new Set([...now.keys(), ...then.keys()])]
    .filter(key => Math.abs(change(key)) >= 0.01)
    .sort((a, b) => Math.abs(change(b)) - Math.abs(change(a)))
    .slice(0, MOST)
    .map(key => {
      const [a, b] = [now.get(key), then.get(key)];
      return { key, ...(a ? { now: a } : {}), ...(b ? { after: b } : {}) };
    });
};
const MOST = 6;

const turnSaid = (now: Option | undefined, then: Option | undefined): string => {
  if (!now) return 'a new one';
  if (!then) return 'no longer there';
  const [a, b] = [bandOf(now), bandOf(then)];
  if (a !== b && b === 'open') return 'opens';
  if (a !== b && b === 'shut') return 'shuts';
  return then.chance > now.chance ? 'better' : 'worse';
};

const bandOf = (option: Option): PassOption['lane']['band'] | undefined =>
  option.kind === 'carry' ? undefined : option.lane.band;

const laneSaid = (option: Option | undefined): string =>
  option === undefined ? 'none' : (bandOf(option) ?? 'none, he skates it');
