import { emptyGame, type Game, type Team } from '@icewright/book';
import { useState } from 'react';
import { Link, useLocation } from 'wouter';
import { MeetingsSection } from '../meeting/meetings-section.tsx';
import { Act } from '../parts/act.tsx';
import { Empty } from '../parts/empty.tsx';
import { countSaid, daySaid, today } from '../parts/figures.ts';
import { createDocument, setRemoved, useDocuments, useTeam } from '../shell/book.ts';
import { RunningHead } from '../shell/running-head.tsx';
import { addPart } from './add-part.ts';
import { DropZone } from './drop-zone.tsx';
import {
  type FilmFile,
  pickFilm,
  type RefusedFilm,
  type TakenFilm,
  takeFilm,
  takeFolderFilm,
} from './film-door.ts';
import { FilmFolder } from './film-folder.tsx';
import { gameTitle, resultWords } from './game-words.ts';
import { startLive } from './live/live-part.ts';
import { Refused } from './refused.tsx';

/** All games of the season, newest first. Opening a film makes a game for it when there is none yet. */
export function GamesList() {
  const { value: team } = useTeam();
  const [, go] = useLocation();
  const [busy, setBusy] = useState(false);
  const [refusal, setRefusal] = useState<RefusedFilm>();
  const open = async (chosen: Promise<FilmFile | undefined>) => {
    setRefusal(undefined);
    const film = await chosen;
    if (!film) return;
    await take(takeFilm(film), dayOf(film.file.lastModified));
  };
  const take = async (taking: Promise<TakenFilm>, day: string) => {
    setBusy(true);
    const taken = await taking;
    setBusy(false);
    if (taken.kind === 'refused') return setRefusal(taken);
    // A camera's clock may be wrong: a game that is on film was not played on a day to come.
    const id = createDocument('game', emptyGame({ opponent: '', day: day <= today() ? day : today() }));
    addPart(id, taken.part, {});
    go(`/film/${id}?new`);
  };
  if (!team) return null;
  const entries = Object.entries(team.contents).filter(
    ([, entry]) => entry.kind === 'game' && !entry.removed,
  );
  const markLive = () => {
    const id = createDocument('game', emptyGame({ opponent: '', day: today() }));
    startLive(id, {});
    go(`/film/${id}?new`);
  };
  const act = (
    <>
      <Act onPress={markLive}>Mark a game live</Act>{' '}
      <Act lead working={busy} onPress={() => void open(pickFilm())}>
        Open a film
      </Act>
    </>
  );
  return (
    <DropZone onFilm={film => void open(film)}>
      <RunningHead title="Film" titleWords="Film" acts={entries.length > 0 ? act : undefined} />
      <div className="place">
        {refusal && (
          <Refused
            refusal={refusal}
            film={refusal.film}
            onMade={made => {
              setRefusal(undefined);
              void take(
                takeFolderFilm(made),
                'file' in refusal.film ? dayOf(refusal.film.file.lastModified) : today(),
              );
            }}
            onLeave={() => setRefusal(undefined)}
          />
        )}
        {entries.length === 0 ? (
          <Empty says="Open a game, and mark the first moment while it plays.">{act}</Empty>
        ) : (
          <Games team={team} ids={entries.map(([id]) => id)} />
        )}
        {(entries.length > 0 || Object.values(team.contents).some(({ kind }) => kind === 'meeting')) && (
          <MeetingsSection team={team} />
        )}
        <FilmFolder
          gameIds={entries.map(([id]) => id)}
          isDemo={team.demo}
          onFilm={film => void take(takeFolderFilm(film), today())}
        />
      </div>
    </DropZone>
  );
}

function Games({ team, ids }: { readonly team: Team; readonly ids: readonly string[] }) {
  const views = useDocuments('game', ids);
  const [gone, setGone] = useState<string>();
  const games = ids.flatMap(id => {
    const view = views.get(id);
    return view?.state === 'ready' ? [[id, view.value] as const] : [];
  });
  const waiting = ids.length - games.length;
  games.sort(([, a], [, b]) => b.day.localeCompare(a.day));
  return (
    <>
      <table className="tt games">
        <thead>
          <tr>
            <th>Day</th>
            <th>Game</th>
            <th>Result</th>
            <th className="r">Moments</th>
            <th className="r">Freezes</th>
            <th>Film</th>
            <th>
              <span className="vh">Acts</span>
            </th>
          </tr>
        </thead>
        <tbody>
          {games.map(([id, game]) => (
            <tr key={id}>
              <td className="nw">{daySaid(game.day)}</td>
              <td className="w games-title">
                <Link href={`/film/${id}`}>{gameTitle(game)}</Link>
              </td>
              <td>{resultWords(game)}</td>
              <Count of={Object.keys(game.moments).length} one="moment" />
              <Count of={Object.keys(game.freezes).length} one="freeze" />
              <td className="q2">{filmWords(game)}</td>
              <td className="r">
                <Act
                  bare
                  label={`Take ${gameTitle(game)}, ${daySaid(game.day)}, out of the list`}
                  onPress={() => {
                    setRemoved(id, true);
                    setGone(id);
                  }}
                >
                  Take out
                </Act>
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      {gone !== undefined && team.contents[gone as keyof typeof team.contents]?.removed && (
        <p className="undone" role="status">
          The game is out of the list; nothing in it is lost.{' '}
          <Act
            onPress={() => {
              setRemoved(gone, false);
              setGone(undefined);
            }}
          >
            Put it back
          </Act>
        </p>
      )}
      {waiting > 0 && <p className="q3">{countSaid(waiting, 'game')} not read yet.</p>}
    </>
  );
}

/** The figure alone under its heading; with its word where a narrow page has no headings. */
function Count({ of, one }: { readonly of: number; readonly one: string }) {
  return (
    <td className="r">
      {of}
      <span className="games-unit"> {of === 1 ? one : `${one}s`}</span>
    </td>
  );
}

const filmWords = (game: Game): string => {
  const parts = Object.values(game.films);
  if (parts.length === 0) return 'no film yet';
  const minutes = parts.reduce((sum, part) => sum + part.durationS, 0) / 60;
  return `${countSaid(parts.length, 'part')}, ${minutes < 2 ? `${Math.round(minutes * 60)} s` : `${Math.round(minutes)} min`}`;
};

const dayOf = (ms: number): string => {
  const date = new Date(ms);
  return `${date.getFullYear()}-${String(date.getMonth() + 1).padStart(2, '0')}-${String(date.getDate()).padStart(2, '0')}`;
};
