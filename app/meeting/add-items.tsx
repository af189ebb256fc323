import { inOrder, type Meeting, type Team } from '@icewright/book';
import type { Id } from '@icewright/engine';
import { type ReactNode, useState } from 'react';
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
import './choice-pictures.css';
import { addItems, type Chosen } from './new-item.ts';
import { StillPicture } from './still-picture.tsx';
import { type MeetingFilm, useFilms } from './use-films.ts';

/** Chooses moments and freezes of a game, the newest game first. */
export function AddItems(props: {
  readonly team: Team;
  readonly meetingId: string;
  readonly meeting: Meeting;
  readonly onAdded: (id: string) => void;
  readonly onClose: () => void;
}) {
  const games = entriesOf(props.team, 'game');
  // Whoever goes on with a meeting goes on with its last game.
  const last = inOrder(props.meeting.items).at(-1)?.[1].of.game;
  const [gameId, setGameId] = useState<string>(games.find(([id]) => id === last)?.[0] ?? games[0]?.[0] ?? '');
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
  const { films } = useFilms(Object.values(game?.films ?? {}).map(({ hash }) => hash));
  const filmOf = (one: { readonly film: Id<'film'> }) => films.get(game?.films[one.film]?.hash ?? '');
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
      <span className="add-block with-pictures">
        {moments.map(([id, one]) => (
          <ChoiceRow
            key={id}
            film={filmOf(one)}
            frameIndex={one.frameIndex}
            isIn={inMeeting.has(id)}
            title={team.habits[one.habit]?.title ?? 'a habit no longer here'}
            onPress={() => add({ kind: 'moment', id })}
          >
            <MomentGlyph verdict={one.verdict} /> {verdictSaid(one.verdict)}, {clockText(one.filmTimeS, 1)}
            {one.skater !== undefined && `, ${skaterWords(one.skater, team)}`}
            {one.note !== '' && `, ${one.note}`}
          </ChoiceRow>
        ))}
        {freezes.map(([id, one]) => (
          <ChoiceRow
            key={id}
            film={filmOf(one)}
            frameIndex={one.frameIndex}
            isIn={inMeeting.has(id)}
            title={one.title === '' ? 'A freeze' : one.title}
            onPress={() => add({ kind: 'freeze', id })}
          >
            freeze, {clockText(one.filmTimeS, 1)}
          </ChoiceRow>
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

/** A moment or a freeze to put in: its picture, what it is, and a sign on those that are in the meeting already. */
function ChoiceRow(props: {
  readonly film: MeetingFilm | undefined;
  readonly frameIndex: number;
  readonly isIn: boolean;
  readonly title: string;
  readonly children: ReactNode;
  readonly onPress: () => void;
}) {
  return (
    <button
      type="button"
      className={props.isIn ? 'choice-row with-picture is-in' : 'choice-row with-picture'}
      onClick={props.onPress}
    >
      <StillPicture film={props.film} frameIndex={props.frameIndex} />
      <span className="choice-words">
        <span className="w">{props.title}</span>
        <span className="q3">{props.children}</span>
      </span>
      {props.isIn && <span className="in-it">in it</span>}
    </button>
  );
}

/** A page of rows: a whole game has a thousand and more. */
const MOST_SHOWN = 80;
