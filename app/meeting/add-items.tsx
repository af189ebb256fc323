import { inOrder, type Meeting, type Team } from '@icewright/book';
import type { Id } from '@icewright/engine';
import { useState } from 'react';
import { clockText } from '../film/film-clock.ts';
import { MomentGlyph, verdictSaid } from '../film/moments/moment-glyph.tsx';
import { skaterWords } from '../film/people-words.ts';
import { Act } from '../parts/act.tsx';
import { ChoiceField } from '../parts/field.tsx';
import { daySaid } from '../parts/figures.ts';
import { named } from '../parts/named.ts';
import { Slip } from '../parts/slip.tsx';
import { useDocument } from '../shell/book.ts';
import { entriesOf } from '../shell/season.ts';
import { addItems, type Chosen } from './new-item.ts';

/** Chooses moments and freezes of a game, the newest game first. */
export function AddItems(props: {
  readonly team: Team;
  readonly meetingId: string;
  readonly meeting: Meeting;
  readonly onAdded: (id: string) => void;
  readonly onClose: () => void;
}) {
  const games = entriesOf(props.team, 'game');
  const [gameId, setGameId] = useState(games[0]?.[0] ?? '');
  return (
    <Slip label="Put moments in" onClose={props.onClose}>
      {games.length === 0 ? (
        <span className="q2">There is no game yet. Open a film in Film and mark a moment.</span>
      ) : (
        <>
          <ChoiceField
            label="Game"
            value={gameId}
            choices={games.map(([id, entry]) => ({
              value: id,
              said: `${entry.title}, ${daySaid(entry.day)}`,
            }))}
            onChange={setGameId}
          />
          <OfGame {...props} key={gameId} gameId={gameId} />
        </>
      )}
      <span className="slip-acts">
        <Act bare onPress={props.onClose}>
          Close
        </Act>
      </span>
    </Slip>
  );
}

function OfGame(props: {
  readonly team: Team;
  readonly meetingId: string;
  readonly meeting: Meeting;
  readonly gameId: string;
  readonly onAdded: (id: string) => void;
}) {
  const { team, gameId } = props;
  const { state, value: game } = useDocument('game', gameId);
  const [habit, setHabit] = useState('');
  if (state === 'loading') return <span className="q2">Opening</span>;
  if (game === undefined) return <span className="warm">This game cannot be read here.</span>;
  const add = (one: Chosen) => {
    const id = addItems(props.meetingId, props.meeting, { gameId, game, team }, [one]);
    if (id !== undefined) props.onAdded(id);
  };
  const inMeeting = new Set(
    Object.values(props.meeting.items).map(
      ({ of }) => (of.kind === 'moment' ? of.moment : of.freeze) as string,
    ),
  );
  const all = Object.entries(game.moments).sort(([, a], [, b]) => a.filmTimeS - b.filmTimeS);
  const wanted = all.filter(([, one]) => habit === '' || one.habit === habit);
  const moments = wanted.slice(0, MOST_SHOWN);
  const habits = inOrder(team.habits).filter(([id]) => all.some(([, one]) => one.habit === id));
  const used = new Set(all.map(([, one]) => one.freeze));
  // A freeze that hangs on a moment comes with it.
  const freezes = Object.entries(game.freezes).filter(
    ([id, one]) => !used.has(id as Id<'freeze'>) && (habit === '' || one.habit === habit),
  );
  if (all.length + Object.keys(game.freezes).length === 0)
    return <span className="q2">No moment is marked in this game yet.</span>;
  return (
    <>
      <ChoiceField
        label="Habit"
        value={habit}
        choices={[
          { value: '', said: 'every habit' },
          ...habits.map(([value, one]) => ({ value: value as string, said: named(one.title, 'habit') })),
        ]}
        onChange={setHabit}
      />
      <span className="add-block">
        {moments.map(([id, one]) => (
          <button type="button" key={id} className="choice-row" onClick={() => add({ kind: 'moment', id })}>
            <span className="w">{team.habits[one.habit]?.title ?? 'a habit no longer here'}</span>
            <span className="q3">
              <MomentGlyph verdict={one.verdict} /> {verdictSaid(one.verdict)}, {clockText(one.filmTimeS, 1)}
              {one.skater !== undefined && `, ${skaterWords(one.skater, team)}`}
              {one.note !== '' && `, ${one.note}`}
              {inMeeting.has(id) && ', is in it'}
            </span>
          </button>
        ))}
        {freezes.map(([id, one]) => (
          <button type="button" key={id} className="choice-row" onClick={() => add({ kind: 'freeze', id })}>
            <span className="w">{one.title === '' ? 'A freeze' : one.title}</span>
            <span className="q3">
              freeze, {clockText(one.filmTimeS, 1)}
              {inMeeting.has(id) && ', is in it'}
            </span>
          </button>
        ))}
      </span>
      {wanted.length > MOST_SHOWN && (
        <span className="q2">
          {wanted.length - MOST_SHOWN} more: choose a habit, or put them in from the film room.
        </span>
      )}
    </>
  );
}

/** A page of rows: a whole game has a thousand and more. */
const MOST_SHOWN = 80;
