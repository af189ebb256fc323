import { inOrder, newId, rankAtEnd, type Skater, type Team } from '@icewright/book';
import { useState } from 'react';
import { Act } from '../parts/act.tsx';
import { ClockField, WordsField } from '../parts/field.tsx';
import { countSaid } from '../parts/figures.ts';
import { named } from '../parts/named.ts';
import { edit, endStep, useTeam } from './book.ts';
import { RosterDoor } from './roster-door.tsx';
import { RunningHead } from './running-head.tsx';
import { SkaterRow } from './skater-row.tsx';
import { TimedSkating } from './timed-skating.tsx';
import { UndoActs } from './undo-acts.tsx';
import { UnitsSection } from './units-section.tsx';

/** Who the team is: roster, staff, home ice. Reached from the team's name on the strip. */
export function TeamPage() {
  const { value: team, id } = useTeam();
  return team === undefined ? null : <TeamAsItIs team={team} teamId={id} />;
}

function TeamAsItIs({ team, teamId }: { readonly team: Team; readonly teamId: string }) {
  const editing = edit(teamId);
  const [newest, setNewest] = useState<string | null>(null);
  const [isImporting, setImporting] = useState(false);
  const skaters = inOrder(team.skaters);
  const goalieCount = skaters.filter(([, skater]) => skater.position === 'G').length;
  const add = () => {
    const taken = new Set(skaters.map(([, skater]) => skater.number));
    const number = Array.from({ length: 98 }, (_, index) => index + 1).find(one => !taken.has(one)) ?? 99;
    const skater: Skater = {
      rank: rankAtEnd(team.skaters),
      number,
      name: '',
      position: 'F',
      noContact: false,
      group: '',
    };
    const id = newId<'skater'>();
    endStep(teamId);
    editing.set(['skaters', id], skater);
    setNewest(id);
  };
  return (
    <>
      <RunningHead
        title={
          <input
            aria-label="The team’s name"
            data-book="words"
            maxLength={200}
            value={team.name}
            onChange={event => editing.text(['name'], event.target.value)}
          />
        }
        titleWords={team.name}
        meta={`${countSaid(skaters.length - goalieCount, 'skater')}, ${countSaid(goalieCount, 'goalie')}${team.demo ? '; all made up' : ''}`}
        acts={
          <>
            <UndoActs />
            <Act opens={isImporting} onPress={() => setImporting(!isImporting)}>
              Roster from a file
            </Act>
            <Act lead onPress={add}>
              Add a skater
            </Act>
          </>
        }
      />
      <main className="place two">
        <div>
          {isImporting && <RosterDoor team={team} teamId={teamId} onClose={() => setImporting(false)} />}
          {skaters.length === 0 ? (
            <p className="w too-early">Nobody is on the roster yet. Add them one by one, or bring a file.</p>
          ) : (
            <table className="tt roster">
              <thead>
                <tr>
                  <th scope="col">No.</th>
                  <th scope="col">Name</th>
                  <th scope="col">Position</th>
                  <th scope="col">Group</th>
                  <th scope="col">No contact</th>
                  <th scope="col">
                    <span className="vh">Take out</span>
                  </th>
                </tr>
              </thead>
              <tbody>
                {skaters.map(([id, skater]) => (
                  <SkaterRow
                    key={id}
                    id={id}
                    skater={skater}
                    teamId={teamId}
                    sameNumber={skaters
                      .filter(([other, { number }]) => other !== id && number === skater.number)
                      .map(([, { name }]) => named(name, 'skater'))}
                    isNew={id === newest}
                  />
                ))}
              </tbody>
            </table>
          )}
          <p className="cap">
            No contact stands on every ice card until it is lifted here. Only the medical staff decide that.
          </p>
          <TimedSkating team={team} teamId={teamId} />
        </div>
        <aside className="margin">
          <section className="sec">
            <h2>The team</h2>
            <WordsField
              label="Season"
              value={team.season}
              onChange={words => editing.text(['season'], words)}
            />
            <WordsField
              label="Home ice"
              value={team.homeIce}
              onChange={words => editing.text(['homeIce'], words)}
            />
            <ClockField
              label="Usual start"
              face={team.clockFace}
              value={team.usualStart}
              onChange={clock => editing.set(['usualStart'], clock)}
            />
          </section>
          <UnitsSection team={team} teamId={teamId} />
          <Staff team={team} teamId={teamId} />
        </aside>
      </main>
    </>
  );
}

function Staff({ team, teamId }: { readonly team: Team; readonly teamId: string }) {
  const editing = edit(teamId);
  return (
    <section className="sec">
      <h2>Staff</h2>
      {inOrder(team.staff).map(([id, { name, role }]) => (
        <div key={id} className="staff-line">
          <WordsField
            label={`Name of ${name === '' ? 'a coach' : name}`}
            labelHidden
            placeholder="Name"
            value={name}
            onChange={words => editing.text(['staff', id, 'name'], words)}
          />
          <WordsField
            label={`What ${name === '' ? 'this coach' : name} looks after`}
            labelHidden
            placeholder="looks after"
            value={role}
            onChange={words => editing.text(['staff', id, 'role'], words)}
          />
          <Act
            bare
            label={`Take out ${name === '' ? 'this coach' : name}`}
            onPress={() => editing.remove(['staff', id])}
          >
            Take out
          </Act>
        </div>
      ))}
      <p className="block-acts">
        <Act
          onPress={() => {
            endStep(teamId);
            editing.set(['staff', newId<'staff'>()], { rank: rankAtEnd(team.staff), name: '', role: '' });
          }}
        >
          Add a coach
        </Act>
      </p>
    </section>
  );
}
