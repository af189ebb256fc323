import type { HabitTally } from '@icewright/engine';
import { percentSaid } from '../parts/figures.ts';
import { Reading } from '../parts/reading.tsx';

/** A rate never stands without its count and its interval. */
export function RateReading({
  tally,
  measuredCount,
  differCount,
}: {
  readonly tally: HabitTally;
  readonly measuredCount: number;
  /** Marked otherwise than measured, and not settled. */
  readonly differCount: number;
}) {
  const { rate, doneCount, chanceCount } = tally;
  if ('kind' in rate)
    return (
      <span className="q3">no chance judged yet{differCount > 0 && `; ${differSaid(differCount)}`}</span>
    );
  const [low, high] = [Math.round(rate.lowerRatio * 100), Math.round(rate.upperRatio * 100)];
  return (
    <>
      <Reading
        value={percentSaid(rate.rateRatio)}
        why={
          <>
            <b className="b">
              {doneCount} done of {chanceCount}
            </b>{' '}
            that could be judged: {measuredCount} by the standard on a freeze, {chanceCount - measuredCount}{' '}
            by eye. 95 % interval by Wilson 1927: were the habit’s true rate outside {low} to {high} %, counts
            like these would be rare. Times that cannot be told, or cannot be seen, are left out.
          </>
        }
      />{' '}
      <span className="q3">
        {doneCount} of {chanceCount}, 95 %: {low} to {high}
      </span>
      {differCount > 0 && <span className="differ">{`; ${differSaid(differCount)}`}</span>}
    </>
  );
}

/** 1 was marked otherwise than it is measured. */
export const differSaid = (differCount: number): string =>
  differCount === 1
    ? '1 was marked otherwise than it is measured'
    : `${differCount} were marked otherwise than they are measured`;
