import type { Drill } from '@icewright/book';
import {
  contestRate,
  type ManyTally,
  passRate,
  type RateInterval,
  type SpotId,
  spreadOf,
} from '@icewright/engine';
import { useState } from 'react';
import { Act } from '../../parts/act.tsx';
import { numberSaid, percentSaid } from '../../parts/figures.ts';

/** Every pass and chase of the drill over the same reps, and who was level with the puck at each line. */
export function ManyMore({ drill, tally }: { readonly drill: Drill; readonly tally: ManyTally }) {
  const [isOpen, setOpen] = useState(false);
  const passes = tally.passes.flatMap(pass => {
    const rate = passRate(pass);
    return rate ? [{ pass, rate }] : [];
  });
  const contests = tally.contests.flatMap(contest => {
    const rate = contestRate(contest);
    return rate ? [{ contest, rate }] : [];
  });
  if (passes.length + contests.length === 0) return null;
  const roleOf = (spot: SpotId): string => drill.spots[spot]?.role ?? '?';
  return (
    <div className="many-more">
      <Act bare opens={isOpen} onPress={() => setOpen(!isOpen)}>
        Passes and chases of these reps
      </Act>
      {isOpen && (
        <table className="tt">
          <thead>
            <tr>
              <th scope="col">what</th>
              <th scope="col">of made</th>
              <th scope="col">when</th>
            </tr>
          </thead>
          <tbody>
            {passes.map(({ pass, rate }) => (
              <tr key={`${pass.spot} ${pass.act}`}>
                <td>
                  {roleOf(pass.spot)} to {roleOf(pass.to)}
                  {cutOffSaid(pass.cutOffBy, roleOf)}
                </td>
                <Rate rate={rate} />
                <td className="est">{whenSaid(spreadOf(pass.received)?.timeS)}</td>
              </tr>
            ))}
            {contests.map(({ contest, rate }) => (
              <tr key={`${contest.spot} ${contest.act}`}>
                <td>
                  {roleOf(contest.spot)} {contest.kind === 'steal' ? 'wins it from' : 'catches'}{' '}
                  {roleOf(contest.whom)}
                </td>
                <Rate rate={rate} />
                <td className="est">{whenSaid(spreadOf(contest.won)?.timeS)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
    </div>
  );
}

function Rate({ rate }: { readonly rate: RateInterval }) {
  return (
    <td className="est nw">
      {percentSaid(rate.rateRatio)}{' '}
      <span className="pm">
        {Math.round(rate.lowerRatio * 100)} to {Math.round(rate.upperRatio * 100)}
      </span>
    </td>
  );
}

function whenSaid(timeS: { readonly value: number; readonly sd: number } | undefined): string {
  return timeS === undefined ? '–' : `${numberSaid(timeS.value)} ± ${numberSaid(timeS.sd)} s`;
}

function cutOffSaid(by: Readonly<Record<SpotId, number>>, roleOf: (spot: SpotId) => string): string {
  const said = (Object.entries(by) as [SpotId, number][]).map(([spot, count]) => `${roleOf(spot)} ${count}`);
  return said.length === 0 ? '' : `, cut off by ${said.join(', ')}`;
}
