import type { Game, Team } from '@icewright/book';
import { named } from '../../parts/named.ts';
import { Reading } from '../../parts/reading.tsx';
import { clockText } from '../film-clock.ts';
import { agreementOf } from './agreement.ts';
import type { ListedMoment } from './filter-moments.ts';
import { verdictSaid } from './moment-glyph.tsx';

/** How far two pairs of eyes agree beyond luck, and the moments to talk about. */
export function AgreementView({
  moments,
  opinions,
  team,
  onShow,
}: {
  readonly moments: readonly ListedMoment[];
  readonly opinions: Game['opinions'];
  readonly team: Team;
  readonly onShow: (frameIndex: number) => void;
}) {
  const { bothCount, sameCount, kappa, differ } = agreementOf(moments, opinions);
  if (bothCount === 0) return null;
  return (
    <section className="sec agreement" aria-label="Agreement">
      <h2>
        Two pairs of eyes{' '}
        <span className="q3">
          {sameCount} of {bothCount} the same
        </span>
      </h2>
      <p>
        {kappa === null ? (
          <span className="q2">
            Both always said the same one word, so agreement beyond luck cannot be told from this.
          </span>
        ) : (
          <>
            Agreement beyond luck:{' '}
            <Reading
              value={kappa.kappa.toFixed(2)}
              plusMinus={
                kappa.standardError === null ? undefined : `± ${(1.96 * kappa.standardError).toFixed(2)}`
              }
              why={`Cohen's kappa: seen alike ${percent(kappa.observedAgreement)} %, by luck alone ${percent(kappa.expectedAgreement)} %. 1 is full agreement, 0 no more than luck. The ± is 95 % (Fleiss, Cohen and Everitt 1969)${kappa.standardError === null ? '; it cannot be told when one always says the same or all agree' : ''}.`}
            />
          </>
        )}
      </p>
      {differ.length > 0 && (
        <ul className="differ">
          {differ.map(({ id, moment, second, by }) => (
            <li key={`${id} ${by}`}>
              <button type="button" className="quiet" onClick={() => onShow(moment.frameIndex)}>
                {clockText(moment.filmTimeS, 1)}
              </button>{' '}
              <span className="w">{named(team.habits[moment.habit]?.title ?? '', 'habit')}</span>{' '}
              <span className="q2">
                {moment.by || 'first'}: {verdictSaid(moment.verdict)}; {by}: {verdictSaid(second)}
              </span>
            </li>
          ))}
        </ul>
      )}
    </section>
  );
}

const percent = (ratio: number): number => Math.round(ratio * 100);
