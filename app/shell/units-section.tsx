import { inOrder, newId, rankAtEnd, type Team, type Unit } from '@icewright/book';
import { useState } from 'react';
import { Act } from '../parts/act.tsx';
import { WordsField } from '../parts/field.tsx';
import { named } from '../parts/named.ts';
import { edit, endStep } from './book.ts';

/** Skaters who are on the ice together; a moment of film can say which of them it was. */
export function UnitsSection({ team, teamId }: { readonly team: Team; readonly teamId: string }) {
  const editing = edit(teamId);
  const [opened, setOpened] = useState<string>();
  const add = () => {
    const id = newId<'unit'>();
    endStep(teamId);
    editing.set(['units', id], {
      rank: rankAtEnd(team.units),
      title: '',
      skaters: {} as Unit['skaters'],
    } satisfies Unit);
    setOpened(id);
  };
  return (
    <section className="sec">
      <h2>
        Units <span className="q3">who is on the ice together</span>
      </h2>
      {inOrder(team.units).map(([id, unit]) => {
        const members = inOrder(team.skaters).filter(([skaterId]) => unit.skaters[skaterId]);
        const title = named(unit.title, 'unit');
        return (
          <div key={id} className="unit">
            <div className="staff-line">
              <WordsField
                label="Unit"
                labelHidden
                placeholder="Name"
                value={unit.title}
                onChange={words => editing.text(['units', id, 'title'], words)}
              />
              <button
                type="button"
                className="quiet"
                aria-expanded={opened === id}
                aria-label={`Who is in ${title}`}
                onClick={() => setOpened(opened === id ? undefined : id)}
              >
                {members.length === 0 ? 'nobody yet' : members.map(([, { number }]) => number).join(', ')}
              </button>
              <Act bare label={`Take out ${title}`} onPress={() => editing.remove(['units', id])}>
                Take out
              </Act>
            </div>
            {opened === id && (
              <ul className="unit-members">
                {inOrder(team.skaters).map(([skaterId, skater]) => (
                  <li key={skaterId}>
                    <label>
                      <input
                        type="checkbox"
                        checked={unit.skaters[skaterId] !== undefined}
                        onChange={event =>
                          event.target.checked
                            ? editing.set(['units', id, 'skaters', skaterId], {
                                rank: rankAtEnd(unit.skaters),
                              })
                            : editing.remove(['units', id, 'skaters', skaterId])
                        }
                      />{' '}
                      {skater.number} {named(skater.name, 'skater')}
                    </label>
                  </li>
                ))}
              </ul>
            )}
          </div>
        );
      })}
      <Act onPress={add}>Add a unit</Act>
    </section>
  );
}
