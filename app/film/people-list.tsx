import type { Team } from '@icewright/book';
import { Act } from '../parts/act.tsx';
import { AllPlacedField } from './all-placed.tsx';
import type { Desk } from './freeze-desk.ts';
import type { FreezeView } from './freeze-view.ts';
import { OfferAct, OfferPanel } from './people/offer-panel.tsx';
import type { PeopleOffer } from './people/use-people-offer.ts';
import { personWords, roleOnceKnown } from './people-words.ts';
import { SkaterOptions } from './skater-options.tsx';

/** Who has been placed, who has the puck, and what is known about the one that is chosen. */
export function PeopleList({
  desk,
  view,
  team,
  offer,
  isFrozen,
}: {
  readonly desk: Desk;
  readonly view: FreezeView;
  readonly team: Team;
  readonly offer: PeopleOffer;
  readonly isFrozen: boolean;
}) {
  const { freeze } = view;
  const side = (which: 'us' | 'them') => view.people.filter(one => one.placed.side === which);
  return (
    <section className="sec people">
      <h2>
        Skaters <span className="q3">by their feet, midway between the skates</span>
      </h2>
      <p className="pins-acts">
        <Act isOn={isPlacing(desk, 'us', 'skater')} onPress={() => place(desk, 'us', 'skater')}>
          Place one of us
        </Act>
        <Act isOn={isPlacing(desk, 'them', 'skater')} onPress={() => place(desk, 'them', 'skater')}>
          Place one of them
        </Act>
        <Act isOn={isPlacing(desk, 'us', 'goalie')} onPress={() => place(desk, 'us', 'goalie')}>
          Our goalie
        </Act>
        <Act isOn={isPlacing(desk, 'them', 'goalie')} onPress={() => place(desk, 'them', 'goalie')}>
          Their goalie
        </Act>
        <Act isOn={desk.tool.kind === 'puck'} onPress={() => toggle(desk, 'puck')}>
          Puck
        </Act>
        <OfferAct offer={offer} view={view} isFrozen={isFrozen} />
      </p>
      <OfferPanel offer={offer} />
      {(['us', 'them'] as const).map(which =>
        side(which).length === 0 ? null : (
          <p key={which} className="people-line">
            <span className="q3">{which}</span>
            {side(which).map(one => (
              <button
                key={one.id}
                type="button"
                className={`quiet person-name${one.unplaced ? ' warm' : ''}`}
                aria-pressed={desk.chosen === one.id}
                onClick={() => desk.choose(one.id)}
              >
                {personWords(one.placed, team)}
                {one.unplaced ? ` (${one.unplaced})` : ''}
              </button>
            ))}
          </p>
        ),
      )}
      {view.people.length > 0 && <AllPlacedField desk={desk} />}
      {freeze.puck && (
        <p className="pins-acts">
          <label>
            <span className="q2">Has the puck</span>{' '}
            <select
              value={freeze.puck.carrier ?? ''}
              onChange={event => desk.write.setCarrier(event.target.value || undefined)}
            >
              <option value="">nobody</option>
              {view.people.map(one => (
                <option key={one.id} value={one.id}>
                  {personWords(one.placed, team)}, {one.placed.side}
                </option>
              ))}
            </select>
          </label>
          <label>
            <span className="q2">We attack to the</span>{' '}
            <select value={freeze.attacks} onChange={event => desk.write.set('attacks', event.target.value)}>
              <option value="plusX">right</option>
              <option value="minusX">left</option>
            </select>
          </label>
        </p>
      )}
      <ChosenPerson desk={desk} view={view} team={team} />
    </section>
  );
}

function ChosenPerson({
  desk,
  view,
  team,
}: {
  readonly desk: Desk;
  readonly view: FreezeView;
  readonly team: Team;
}) {
  const person = view.people.find(one => one.id === desk.chosen);
  if (!person) return null;
  const { id, placed } = person;
  return (
    <p className="pins-acts">
      <label>
        <span className="q2">Role</span>{' '}
        <input
          className="role-entry"
          value={placed.role}
          maxLength={4}
          onChange={event => desk.write.setSkater(id, { role: event.target.value })}
        />
      </label>
      {placed.side === 'us' && (
        <label>
          <span className="q2">Who</span>{' '}
          <select
            value={placed.skater ?? ''}
            onChange={event => {
              const skater = (event.target.value || undefined) as NonNullable<typeof placed.skater>;
              const role = roleOnceKnown(view.freeze, placed, skater && team.skaters[skater]?.position);
              desk.write.setSkater(id, { skater, ...(role ? { role } : {}) });
            }}
          >
            <SkaterOptions team={team} />
          </select>
        </label>
      )}
      <Act
        onPress={() => desk.setTool({ kind: 'wanted', who: id })}
        isOn={desk.tool.kind === 'wanted'}
        notNow={desk.noWanted}
      >
        Where {placed.role} should be
      </Act>
      <Act onPress={() => desk.write.remove({ kind: 'skater', id })}>Take {placed.role} out</Act>
    </p>
  );
}

const place = (desk: Desk, side: 'us' | 'them', who: 'skater' | 'goalie') =>
  desk.setTool(isPlacing(desk, side, who) ? { kind: 'look' } : { kind: 'place', side, who });

const isPlacing = ({ tool }: Desk, side: 'us' | 'them', who: 'skater' | 'goalie') =>
  tool.kind === 'place' && tool.side === side && tool.who === who;

const toggle = (desk: Desk, kind: 'puck') =>
  desk.setTool(desk.tool.kind === kind ? { kind: 'look' } : { kind });
