import { emptyGame, type Game, type Team } from '@icewright/book';
import { useRef, useState } from 'react';
import { useLocation } from 'wouter';
import { MeetingsSection } from '../meeting/meetings-section.tsx';
import { Act } from '../parts/act.tsx';
import { Empty } from '../parts/empty.tsx';
import { today } from '../parts/figures.ts';
import { createDocument, useDocuments, useTeam } from '../shell/book.ts';
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
import { KnownFilm, LeftEmpty } from './games-said.tsx';
import { GamesTable } from './games-table.tsx';
import { startLive } from './live/live-part.ts';
import { Refused } from './refused.tsx';

/** All games of the season, newest first. Opening a film makes a game for it when there is none yet. */
export function GamesList() {
  const { value: team } = useTeam();
  const [, go] = useLocation();
  const [busy, setBusy] = useState(false);
  const [refusal, setRefusal] = useState<RefusedFilm>();
  /** A film that was opened, and the game that has it already. */
  const [known, setKnown] = useState<{ readonly gameId: string; readonly make: () => void }>();
  const ids = gameIdsOf(team);
  const games = useDocuments('game', ids);
  // A film is looked through for a while: what is known then counts.
  const latest = useRef({ ids, games });
  latest.current = { ids, games };
  const open = async (chosen: Promise<FilmFile | undefined>) => {
    setRefusal(undefined);
    setKnown(undefined);
    const film = await chosen;
    if (!film) return;
    await take(takeFilm(film), dayOf(film.file.lastModified));
  };
  const take = async (taking: Promise<TakenFilm>, day: string) => {
    setBusy(true);
    const taken = await taking;
    setBusy(false);
    if (taken.kind === 'refused') return setRefusal(taken);
    const { ids, games } = latest.current;
    const gameId = ids.find(id => hasFilm(games.get(id)?.value, taken.part.hash));
    if (gameId !== undefined) return setKnown({ gameId, make: () => make(taken.part, day) });
    make(taken.part, day);
  };
  const make = (part: Parameters<typeof addPart>[1], day: string) => {
    // A camera's clock may be wrong: a game that is on film was not played on a day to come.
    const id = createDocument('game', emptyGame({ opponent: '', day: day <= today() ? day : today() }));
    addPart(id, part, {});
    go(`/film/${id}?new`);
  };
  if (!team) return null;
  const markLive = () => {
    const id = createDocument('game', emptyGame({ opponent: '', day: today() }));
    startLive(id, {});
    go(`/film/${id}?new`);
  };
  const addGame = () => go(`/film/${createDocument('game', emptyGame({ opponent: '', day: today() }))}?new`);
  const act = (
    <>
      <Act onPress={addGame}>Add a game</Act> <Act onPress={markLive}>Mark a game live</Act>{' '}
      <Act lead working={busy} onPress={() => void open(pickFilm())}>
        Open a film
      </Act>
    </>
  );
  return (
    <DropZone onFilm={film => void open(film)}>
      <RunningHead title="Film" titleWords="Film" acts={ids.length > 0 ? act : undefined} />
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
        {known && (
          <KnownFilm
            gameId={known.gameId}
            game={games.get(known.gameId)?.value}
            onMake={known.make}
            onLeave={() => setKnown(undefined)}
          />
        )}
        <LeftEmpty team={team} />
        {ids.length === 0 ? (
          <Empty says="Open a game, and mark the first moment while it plays.">{act}</Empty>
        ) : (
          <GamesTable team={team} ids={ids} />
        )}
        {(ids.length > 0 || Object.values(team.contents).some(({ kind }) => kind === 'meeting')) && (
          <MeetingsSection team={team} />
        )}
        <FilmFolder
          gameIds={ids}
          isDemo={team.demo}
          onFilm={film => void take(takeFolderFilm(film), today())}
        />
      </div>
    </DropZone>
  );
}

const gameIdsOf = (team: Team | undefined): string[] =>
  Object.entries(team?.contents ?? {})
    .filter(([, entry]) => entry.kind === 'game' && !entry.removed)
    .map(([id]) => id);

const hasFilm = (game: Game | undefined, hash: string): boolean =>
  Object.values(game?.films ?? {}).some(part => part.hash === hash);

const dayOf = (ms: number): string => {
  const date = new Date(ms);
  return `${date.getFullYear()}-${String(date.getMonth() + 1).padStart(2, '0')}-${String(date.getDate()).padStart(2, '0')}`;
};
