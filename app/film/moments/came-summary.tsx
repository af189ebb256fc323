import type { Follow, Game } from '@icewright/book';
import { type WhatCame, whatCameOf } from '@icewright/engine';
import { useMemo } from 'react';
import { Reading } from '../../parts/reading.tsx';
import type { ListedMoment } from './filter-moments.ts';
import { followSaid } from './follow-words.ts';

/** The pairs a coach asks about: did the hunt win the puck back, and what came of that. */
const PAIRS: readonly (readonly [Follow['step'], Follow['step']])[] = [
  ['lost', 'hunted'],
  ['lost', 'regained'],
  ['regained', 'transition'],
  ['transition', 'chanceForUs'],
  ['lost', 'chanceForThem'],
];

/** Of the moments shown: how often one thing came of another, and how soon. Nothing where nothing was followed. */
export function CameSummary({
  moments,
  follows,
}: {
  readonly moments: readonly ListedMoment[];
  readonly follows: Game['follows'];
}) {
  const lines = useMemo(() => {
    const steps = new Map<string, { step: Follow['step']; timeS: number }[]>(moments.map(([id]) => [id, []]));
    for (const { moment, step, filmTimeS } of Object.values(follows))
      steps.get(moment)?.push({ step, timeS: filmTimeS });
    const chains = [...steps.values()];
    return PAIRS.map(([first, second]) => ({
      first,
      second,
      came: whatCameOf(chains, first, second),
    })).filter(({ came }) => came.startedCount > 0);
  }, [moments, follows]);
  if (lines.length === 0) return null;
  return (
    <section className="sec came" aria-label="What came of the moments shown">
      <h2>
        What came of them <span className="q3">of the moments shown, where it was followed</span>
      </h2>
      <ul>
        {lines.map(({ first, second, came }) => (
          <li key={`${first} ${second}`}>
            <span className="w">
              {followSaid(first)}, then {followSaid(second)}:
            </span>{' '}
            <Reading value={`${came.cameCount} of ${came.startedCount}`} why={shareWhy(came)} />
            {came.secondsS.length > 0 && (
              <>
                , <SoonWords came={came} />
              </>
            )}
          </li>
        ))}
      </ul>
    </section>
  );
}

function SoonWords({ came }: { readonly came: WhatCame }) {
  const { median, secondsS } = came;
  if (median === null)
    return <span className="q2">after {secondsS.map(one => one.toFixed(1)).join(', ')} s</span>;
  return (
    <>
      half of them within{' '}
      <Reading
        value={`${median.median.toFixed(1)} s`}
        why={`The middle of ${median.count} times. With ${Math.round(median.confidence * 100)} % certainty the true middle lies between ${median.low.toFixed(1)} and ${median.high.toFixed(1)} s (order statistics: David and Nagaraja, Order Statistics, 7.1). Each end is good to a frame.`}
      />{' '}
      <span className="q3">
        ({median.low.toFixed(1)} to {median.high.toFixed(1)})
      </span>
    </>
  );
}

const shareWhy = ({ share, cameCount, startedCount }: WhatCame): string =>
  share === null
    ? ''
    : `${cameCount} of ${startedCount}: ${percent(share.rateRatio)} %. With 95 % certainty the true share lies between ${percent(share.lowerRatio)} and ${percent(share.upperRatio)} % (Wilson 1927). Only moments are counted in which the first was marked.`;

const percent = (ratio: number): number => Math.round(ratio * 100);
