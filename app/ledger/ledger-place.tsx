import type { Team } from '@icewright/book';
import { rinkOf } from '@icewright/engine';
import { useDeferredValue, useMemo, useState } from 'react';
import { Act, ActLink } from '../parts/act.tsx';
import { Empty } from '../parts/empty.tsx';
import { countSaid, percentSaid, today } from '../parts/figures.ts';
import { useTeam } from '../shell/book.ts';
import { useKeys } from '../shell/keys.ts';
import { RunningHead } from '../shell/running-head.tsx';
import { useSeason } from '../shell/season.ts';
import { LedgerChart } from './ledger-chart.tsx';
import { judgedGameCount, ledgerLinesOf } from './ledger-lines.ts';
import { LedgerTable } from './ledger-table.tsx';
import './ledger.css';

export function LedgerPlace() {
  const { value: team } = useTeam();
  return team === undefined ? null : <Ledger team={team} />;
}

/** After about this many games a change can begin to be told from luck; common practice, no source. */
const ENOUGH_GAMES = 4;

function Ledger({ team }: { readonly team: Team }) {
  // A season opens game by game: the page stays at hand while its lines are counted anew.
  const season = useDeferredValue(useSeason(team));
  const [isTable, setTable] = useState(false);
  const now = today();
  const rink = useMemo(() => rinkOf(team.rink), [team.rink]);
  const lines = useMemo(() => ledgerLinesOf(team, season, rink, now), [team, season, rink, now]);
  const gameCount = judgedGameCount(lines);
  const practiceCount = season.practices.filter(([, practice]) => practice.day < now).length;
  useKeys([{ keys: 't', says: 'as a table, or drawn', act: () => setTable(!isTable) }]);
  const confidences = lines.flatMap(({ change }) => (change === null ? [] : [change.confidence]));
  const chanceCount = lines.reduce((sum, line) => sum + line.before.chanceCount + line.after.chanceCount, 0);
  if (chanceCount === 0 && lines.every(line => line.minutes === 0)) {
    return (
      <>
        <RunningHead title="Ledger" titleWords="Ledger" />
        {season.isOpening ? (
          <p className="vh">Opening the season</p>
        ) : (
          <Empty says="Mark on film when a habit is done or missed, and practise it: here it shows whether one moved the other.">
            <ActLink lead to="/film">
              To the film
            </ActLink>
          </Empty>
        )}
      </>
    );
  }
  return (
    <>
      <RunningHead
        title="Ledger"
        titleWords="Ledger"
        meta={
          <>
            Did what we planned to practise show in the games? <b>{gameCount}</b>{' '}
            {gameCount === 1 ? 'game' : 'games'} judged, <b>{practiceCount}</b>{' '}
            {practiceCount === 1 ? 'practice' : 'practices'} planned before today
            {season.isOpening && ', still opening'}
          </>
        }
        acts={
          <Act isOn={isTable} onPress={() => setTable(!isTable)}>
            As a table
          </Act>
        }
      />
      <main className="place ledger">
        {gameCount < ENOUGH_GAMES && (
          <p className="w too-early">
            {gameCount === 0
              ? 'No game is judged yet'
              : gameCount === 1
                ? 'One game is judged'
                : `${countSaid(gameCount, 'game')} are judged`}
            . After about four the ledger can start to tell a change from luck.
          </p>
        )}
        {season.unreadCount > 0 && (
          <p className="warm" role="alert">
            {countSaid(season.unreadCount, 'document')} could not be read and{' '}
            {season.unreadCount === 1 ? 'is' : 'are'} not counted.
          </p>
        )}
        {isTable ? (
          <LedgerTable lines={lines} />
        ) : (
          <LedgerChart lines={lines} games={season.games} today={now} />
        )}
        <p className="cap ledger-key">
          A segment is a week. A dot is one game with its 95 % interval; a band is all games before, or from,
          the first practice of it. Bars hang where it was in the plan of a practice, longer is more minutes;
          whether it was skated as planned is not known here. <b className="b q2">Moved</b>: the change, with
          its interval
          {confidences.length > 0 && ` at ${confidencesSaid(confidences)}`}, leaves zero out; it is wider the
          oftener it is looked at, once a game. <b className="b q2">No sign yet</b>: it does not, though there
          were chances enough. <b className="b q2">Cannot tell</b>: too few chances. It shows that a rate
          moved, not why.
        </p>
      </main>
    </>
  );
}

/** Each habit is looked at as often as there were games since its first practice, so each has its own. */
function confidencesSaid(confidences: readonly number[]): string {
  const [least, most] = [percentSaid(Math.min(...confidences)), percentSaid(Math.max(...confidences))];
  return least === most ? least : `${least} to ${most}`;
}
