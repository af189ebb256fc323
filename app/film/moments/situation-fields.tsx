import { inOrder, type Moment, type Team } from '@icewright/book';
import { named } from '../../parts/named.ts';
import { edit } from '../../shell/book.ts';

/** Skaters on the ice, ours first. */
export const STRENGTHS = ['5v5', '5v4', '4v5', '5v3', '3v5', '4v4', '4v3', '3v4', '3v3', '6v5', '5v6'];

/** How things stood: strength, period, score, our unit, and the seconds around it that are looked at again. */
export function SituationFields({
  gameId,
  id,
  moment,
  team,
}: {
  readonly gameId: string;
  readonly id: string;
  readonly moment: Moment;
  readonly team: Team;
}) {
  const game = edit(gameId);
  const put = (field: string, value: unknown) =>
    value === undefined ? game.remove(['moments', id, field]) : game.set(['moments', id, field], value);
  const score = moment.score ?? { us: Number.NaN, them: Number.NaN };
  const putScore = (side: 'us' | 'them', said: string) => {
    const other = side === 'us' ? score.them : score.us;
    if (said === '') return put('score', undefined);
    const both = { us: other || 0, them: other || 0, [side]: Number(said) };
    put('score', both);
  };
  return (
    <>
      <label>
        <span className="q2">Strength</span>
        <select
          value={moment.strength ?? ''}
          onChange={event => put('strength', event.target.value || undefined)}
        >
          <option value="">not said</option>
          {STRENGTHS.map(one => (
            <option key={one}>{one}</option>
          ))}
        </select>
      </label>
      <label>
        <span className="q2">Period</span>
        <select
          value={moment.period ?? ''}
          onChange={event =>
            put('period', event.target.value === '' ? undefined : Number(event.target.value))
          }
        >
          <option value="">not said</option>
          {[1, 2, 3].map(one => (
            <option key={one}>{one}</option>
          ))}
          <option value="4">overtime</option>
        </select>
      </label>
      <fieldset className="score-entry">
        <legend className="q2">Score, us : them</legend>
        {(['us', 'them'] as const).map(side => (
          <input
            key={side}
            type="number"
            min={0}
            max={99}
            aria-label={`Goals of ${side === 'us' ? 'ours' : 'theirs'} then`}
            value={Number.isNaN(score[side]) ? '' : score[side]}
            onChange={event => event.target.validity.valid && putScore(side, event.target.value)}
          />
        ))}
      </fieldset>
      <label>
        <span className="q2">Our unit</span>
        <select value={moment.unit ?? ''} onChange={event => put('unit', event.target.value || undefined)}>
          <option value="">not said</option>
          {inOrder(team.units).map(([unitId, one]) => (
            <option key={unitId} value={unitId}>
              {named(one.title, 'unit')}
            </option>
          ))}
        </select>
      </label>
      <StretchField
        label="Seconds before"
        seconds={moment.fromS === undefined ? undefined : moment.filmTimeS - moment.fromS}
        onSeconds={one => put('fromS', one === undefined ? undefined : Math.max(0, moment.filmTimeS - one))}
      />
      <StretchField
        label="Seconds after"
        seconds={moment.toS === undefined ? undefined : moment.toS - moment.filmTimeS}
        onSeconds={one => put('toS', one === undefined ? undefined : moment.filmTimeS + one)}
      />
    </>
  );
}

function StretchField({
  label,
  seconds,
  onSeconds,
}: {
  readonly label: string;
  readonly seconds: number | undefined;
  readonly onSeconds: (seconds: number | undefined) => void;
}) {
  return (
    <label>
      <span className="q2">{label}</span>
      <input
        type="number"
        min={0}
        max={120}
        step={0.5}
        value={seconds === undefined ? '' : Number(seconds.toFixed(2))}
        onChange={event =>
          event.target.validity.valid &&
          onSeconds(event.target.value === '' ? undefined : Number(event.target.value))
        }
      />
    </label>
  );
}
