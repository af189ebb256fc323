import type { HabitTally } from '@icewright/engine';
import { percentSaid } from '../parts/figures.ts';
import { Reading } from '../parts/reading.tsx';

/** A rate never stands without its count and its interval. */
export function RateReading({
  tally,
  measuredCount,
}: {
  readonly tally: HabitTally;
  readonly measuredCount: number;
}) {
  const { rate, doneCount, chanceCount } = tally;
  if ('kind' in rate) return <span className="q3">no chance judged yet</span>;
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
    </>
  );
}
