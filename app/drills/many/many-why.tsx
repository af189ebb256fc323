import type { Drill } from '@icewright/book';
import {
  levelOf,
  type ManyTally,
  type OutcomeTally,
  OWN_SPEED_SD_RATIO,
  REACTION_SD_RATIO,
  type Row,
  spreadOf,
  TAU_SD_RATIO,
} from '@icewright/engine';
import { numberSaid } from '../../parts/figures.ts';
import type { People } from '../people/people-of.ts';

/** What the figure rests on: who was drawn from what, what was counted, and how the interval comes. */
export function ManyWhy(props: {
  readonly drill: Drill;
  readonly people: People;
  readonly tally: ManyTally;
  readonly counted: OutcomeTally;
}) {
  const { tally, counted } = props;
  const level = levelOf(props.drill.level);
  const { rows } = level;
  const spread = spreadOf(counted.yes);
  return (
    <>
      <b>
        {counted.yes.count} of {tally.repCount - counted.unaskedCount} reps.
      </b>{' '}
      In each rep every skater is drawn anew by the sprint law: V <Figure row={rows.topSpeedMps} /> m/s ±{' '}
      <Figure row={rows.topSpeedSdRatio} percent /> %, τ <Figure row={rows.tauS} digits={2} /> s ±{' '}
      <Figure row={TAU_SD_RATIO} percent /> %, reads and chooses in <Figure row={rows.reactionS} digits={2} />{' '}
      s ± <Figure row={REACTION_SD_RATIO} percent /> %. Half of the passes leave within{' '}
      <DegreesOff row={rows.passDirectionSdRad} /> of where they are meant, and a puck at the blade is brought
      under control with a rate of <Figure row={rows.controlRatePerS} /> a second.
      {props.people.count > 0 && (
        <>
          {' '}
          V and τ of {props.people.count === 1 ? 'one skater' : `${props.people.count} skaters`} are those of
          the team’s own timed sprints, ± {numberSaid(OWN_SPEED_SD_RATIO.value * 100)} % from day to day;
          where several skate one spot they take turns.
        </>
      )}
      {spread !== undefined && (
        <>
          {' '}
          In time it came at {numberSaid(spread.timeS.value)} s ± {numberSaid(spread.timeS.sd)} s.
        </>
      )}{' '}
      Interval: Wilson’s, of the count alone; that the figures above are right is not in it. Sloping figures
      are estimates. Seed {tally.seed}: the same drill gives the same count anywhere.
    </>
  );
}

/** Half of all passes leave nearer to the line meant than this part of the standard deviation (normal quartile). */
const HALF_ARE_WITHIN_SD = 0.6745;

function DegreesOff({ row }: { readonly row: Row }) {
  const said = `${numberSaid((HALF_ARE_WITHIN_SD * row.value * 180) / Math.PI)}°`;
  return row.status === 'sourced' ? said : <i className="est">{said}</i>;
}

function Figure({ row, percent, digits = 1 }: { row: Row; percent?: boolean; digits?: number }) {
  const said = percent
    ? numberSaid(row.value * 100, row.value * 100 < 10 ? 1 : 0)
    : numberSaid(row.value, digits);
  return row.status === 'sourced' ? said : <i className="est">{said}</i>;
}
