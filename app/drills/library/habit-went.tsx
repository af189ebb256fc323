import type { Team } from '@icewright/book';
import { rinkOf } from '@icewright/engine';
import { useMemo } from 'react';
import { Link } from 'wouter';
import { ledgerLinesOf } from '../../ledger/ledger-lines.ts';
import { wordsOf } from '../../ledger/line-words.ts';
import { today } from '../../parts/figures.ts';
import { named } from '../../parts/named.ts';
import { useSeason } from '../../shell/season.ts';

/** The ledger's word on the habits a drill serves. Opens the season, so it is only there when asked for. */
export function HabitWent({ team, habits }: { readonly team: Team; readonly habits: readonly string[] }) {
  const season = useSeason(team);
  const lines = useMemo(
    () =>
      ledgerLinesOf(team, season, rinkOf(team.rink), today()).filter(line => habits.includes(line.habitId)),
    [team, season, habits],
  );
  if (season.isOpening) return <p className="q2">Opening the season …</p>;
  return (
    <ul className="habit-went">
      {lines.map(line => {
        const words = wordsOf(line);
        return (
          <li key={line.habitId}>
            <span className="w">{named(line.habit.title, 'habit')}</span>: <b className="b">{words.word}</b>
            {words.figure !== null && ` ${words.figure}`}, <span className="q3">{words.more}.</span>
          </li>
        );
      })}
      <li className="q3">
        It shows that a rate moved, not that this drill moved it. <Link href="/ledger">The ledger</Link>
      </li>
    </ul>
  );
}
