import type { Team } from '@icewright/book';
import type { JudgeReason } from '@icewright/engine';
import { Link } from 'wouter';
import { clockText } from '../film/film-clock.ts';
import { dayInMonth, type Lengths, lengthSaid, percentSaid } from '../parts/figures.ts';
import { named } from '../parts/named.ts';
import { Reading } from '../parts/reading.tsx';
import { addressOfMoment } from '../shell/addresses.ts';
import { CHANCE_VERDICTS, type Chance, countsOf, differCountOf, VERDICT_SAID } from './chance.ts';
import { RateReading } from './rate-reading.tsx';
import { measuredCountOf, tallyOf } from './tally-of.ts';
import { TwoAnswersLine } from './two-answers-line.tsx';

const WHY_SAID: Readonly<Record<JudgeReason, string>> = {
  clear: 'The ± lies on one side of the limit.',
  straddles: 'The ± reaches over the limit.',
  whoIsUnsure: 'Two may be the one that is meant, and they differ.',
  nobodyOfWho: 'Nobody of those it speaks of is placed: the word of who marked it stands.',
  noPuck: 'The puck is not placed: the word of who marked it stands.',
  noCarrier: 'Nobody has the puck in this freeze: the word of who marked it stands.',
  nobodyOfThem: 'None of them is placed: the word of who marked it stands.',
  roleNotSaid: 'It is not said who of us is a forward: the word of who marked it stands.',
  notEveryonePlaced: 'Not everybody who counts is placed: the word of who marked it stands.',
  puckIsOurs:
    'Coming back is asked while the puck is theirs; here it is ours: the word of who marked it stands.',
  puckIsTheirs:
    'Joining the rush is asked while the puck is ours; here it is theirs: the word of who marked it stands.',
};

/** Times the habit could have been done: counted, then each with its way back to the film. */
export function ChancesSection(props: {
  readonly chances: readonly Chance[];
  readonly wantedRatio: number;
  readonly lengths: Lengths;
  readonly skaters: Team['skaters'];
  readonly isOpening: boolean;
}) {
  const { chances, skaters } = props;
  const counts = countsOf(chances);
  const gameCount = new Set(chances.map(({ gameId }) => gameId)).size;
  if (chances.length === 0) {
    return (
      <section className="sec">
        <h2>Chances</h2>
        <p className="q2">
          {props.isOpening
            ? 'Opening the games.'
            : 'None marked yet. Mark moments of this habit on film; a freeze lets the standard judge them.'}
        </p>
      </section>
    );
  }
  return (
    <>
      <section className="sec">
        <h2>
          On {chances.length === 1 ? 'one chance' : `the last ${chances.length} chances`}{' '}
          <span className="q3">{gameCount === 1 ? '1 game' : `${gameCount} games`}</span>
        </h2>
        <div className="four-counts">
          {CHANCE_VERDICTS.map(verdict => (
            <p key={verdict}>
              <b>{counts[verdict]}</b>
              <span>{VERDICT_SAID[verdict]}</span>
            </p>
          ))}
        </div>
        <p className="rate">
          <RateReading
            tally={tallyOf(chances)}
            measuredCount={measuredCountOf(chances)}
            differCount={differCountOf(chances)}
          />
          <span className="q3">. Wanted {percentSaid(props.wantedRatio)}.</span>
        </p>
      </section>
      <section className="sec">
        <h2>
          Each of them <span className="q3">back to the film</span>
        </h2>
        <ul className="chances">
          {[...chances].reverse().map(chance => (
            <li key={`${chance.gameId} ${chance.momentId}`}>
              <Link href={addressOfMoment(chance.gameId, chance.momentId)}>
                {dayInMonth(chance.game.day)}, {chance.game.opponent}, {clockText(chance.moment.filmTimeS, 1)}
              </Link>
              <span
                className={chance.verdict === 'missed' ? 'warm b' : chance.verdict === 'done' ? 'b' : 'q2'}
              >
                {VERDICT_SAID[chance.verdict]}
              </span>
              <span className="q2">
                {chance.moment.skater !== undefined && skaters[chance.moment.skater] !== undefined
                  ? `${skaters[chance.moment.skater]!.number} ${named(skaters[chance.moment.skater]!.name, 'skater')}`
                  : ''}
              </span>
              <span className="chance-measure">
                <Measure chance={chance} lengths={props.lengths} />
              </span>
              {chance.two && (
                <TwoAnswersLine gameId={chance.gameId} momentId={chance.momentId} two={chance.two} />
              )}
            </li>
          ))}
        </ul>
      </section>
    </>
  );
}

function Measure({ chance, lengths }: { readonly chance: Chance; readonly lengths: Lengths }) {
  const { measured } = chance;
  if (measured === undefined) return <span className="q3">by eye</span>;
  const { reading, threshold, unit, why } = measured.judgement;
  if (reading === undefined) return <span className="q3">{WHY_SAID[why]}</span>;
  const said = (value: number) =>
    unit === 'm' ? lengthSaid(value, lengths) : value.toFixed(reading.sd > 0 ? 1 : 0);
  return (
    <Reading
      value={said(reading.value)}
      plusMinus={reading.sd > 0 ? `± ${said(1.96 * reading.sd)}` : undefined}
      why={
        <>
          Measured on the freeze: {said(reading.value)}, 95 % within ± {said(1.96 * reading.sd)}, from the
          pins and the feet together. {unit === 'm' ? 'At most' : 'At least'} {said(threshold)} is done.{' '}
          {WHY_SAID[why]}
        </>
      }
    />
  );
}
