import { inOrder, type Practice, type Skater, type Team } from '@icewright/book';
import { Link } from 'wouter';
import { named } from '../parts/named.ts';
import type { Editing } from '../shell/book.ts';

/** The roster by group; pressing a name says that this skater is missing today. */
export function WhoIsHere(props: {
  readonly team: Team;
  readonly teamId: string;
  readonly practice: Practice;
  readonly editing: Editing;
}) {
  const { team, practice, editing } = props;
  const skaters = inOrder(team.skaters);
  const groups = [...new Set(skaters.map(([, skater]) => skater.group))];
  const missing = new Set<string>(practice.missing);
  const toggle = (id: string) =>
    editing.set(
      ['missing'],
      missing.has(id) ? practice.missing.filter(other => other !== id) : [...practice.missing, id],
    );
  const missingCount = skaters.filter(([id]) => missing.has(id)).length;
  const noContact = skaters.filter(([id, skater]) => skater.noContact && !missing.has(id));
  return (
    <section className="sec">
      <h2>
        Who is here <span className="q3">{missingCount === 0 ? 'everybody' : `${missingCount} missing`}</span>
      </h2>
      {skaters.length === 0 ? (
        <p className="q2">
          No skaters yet. <Link href="/team">Put in the roster</Link>.
        </p>
      ) : (
        <table className="lines">
          <tbody>
            {groups.map(group => (
              <tr key={group}>
                <th scope="row">{group === '' ? 'No group' : group}</th>
                <td>
                  {skaters
                    .filter(([, skater]) => skater.group === group)
                    .map(([id, skater]) => (
                      <SkaterToggle
                        key={id}
                        skater={skater}
                        isMissing={missing.has(id)}
                        onToggle={() => toggle(id)}
                      />
                    ))}
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
      {noContact.length > 0 && (
        <p className="cap warm">
          * No contact:{' '}
          {noContact.map(([, skater]) => `${skater.number} ${named(skater.name, 'skater')}`).join(', ')}. Only
          the medical staff lifts it.
        </p>
      )}
    </section>
  );
}

function SkaterToggle(props: {
  readonly skater: Skater;
  readonly isMissing: boolean;
  readonly onToggle: () => void;
}) {
  const { skater, isMissing } = props;
  return (
    <button
      type="button"
      className={isMissing ? 'skater-here missing' : 'skater-here'}
      aria-pressed={!isMissing}
      title={isMissing ? 'Missing today' : 'Here today'}
      onClick={props.onToggle}
    >
      {skater.number} {named(skater.name, 'skater')}
      {skater.noContact && '*'}
    </button>
  );
}
