import type { Team } from '@icewright/book';
import { useState } from 'react';
import { Link } from 'wouter';
import { Act } from '../parts/act.tsx';
import { countSaid, daySaid } from '../parts/figures.ts';
import { setRemoved, useDocuments } from '../shell/book.ts';
import { filmWords } from './film-words.ts';
import { filesOfUnnamed, gameTitle, resultWords } from './game-words.ts';
import { GoneFromList } from './gone-from-list.tsx';

/** The games of the season, newest first; one that is taken out can be put back at once. */
export function GamesTable({ team, ids }: { readonly team: Team; readonly ids: readonly string[] }) {
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
                {filesOfUnnamed(game) !== '' && (
                  <span className="q2 games-file"> {filesOfUnnamed(game)}</span>
                )}
              </td>
              <td>{resultWords(game)}</td>
              <Count of={Object.keys(game.moments).length} one="moment" />
              <Count of={Object.keys(game.freezes).length} one="freeze" />
              <td className="q2">{filmWords(game)}</td>
              <td className="r">
                <Act
                  bare
                  label={`Take ${[gameTitle(game), filesOfUnnamed(game)].filter(Boolean).join(', ')}, ${daySaid(game.day)}, out of the list`}
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
      <GoneFromList team={team} what="game" id={gone} onBack={() => setGone(undefined)} />
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
