import type { HabitTally } from '@icewright/engine';
import { Link } from 'wouter';
import { differSaid } from '../habits/rate-reading.tsx';
import { percentSaid } from '../parts/figures.ts';
import { named } from '../parts/named.ts';
import { addressOfHabit } from '../shell/addresses.ts';
import type { LedgerLine } from './ledger-lines.ts';
import { wordsOf } from './line-words.ts';

/** The same figures as rows and columns: to read out, to copy, to check. */
export function LedgerTable({ lines }: { readonly lines: readonly LedgerLine[] }) {
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a region that scrolls must be reachable by key
    <section className="ledger-table" tabIndex={0} aria-label="Ledger as a table">
      <table className="tt">
        <thead>
          <tr>
            <th scope="col">Habit</th>
            <th scope="col" className="r">
              Minutes planned
            </th>
            <th scope="col" className="r">
              Practices
            </th>
            <th scope="col">Before its first practice</th>
            <th scope="col">From then on</th>
            <th scope="col">Wanted</th>
            <th scope="col">Change, points</th>
            <th scope="col">Says</th>
          </tr>
        </thead>
        <tbody>
          {lines.map(line => {
            const words = wordsOf(line);
            return (
              <tr key={line.habitId}>
                <th scope="row">
                  <Link href={addressOfHabit(line.habitId)}>{named(line.habit.title, 'habit')}</Link>
                </th>
                <td className="r">{line.minutes}</td>
                <td className="r">{line.practised.length}</td>
                <td>{rateSaid(line.before)}</td>
                <td>{rateSaid(line.after)}</td>
                <td>{percentSaid(line.habit.wantedRatio)}</td>
                <td>{words.figure ?? '–'}</td>
                <td>
                  {words.word}; {words.more}
                  {line.differCount > 0 && `; ${differSaid(line.differCount)}`}
                </td>
              </tr>
            );
          })}
        </tbody>
      </table>
    </section>
  );
}

function rateSaid({ rate, doneCount, chanceCount }: HabitTally): string {
  if ('kind' in rate) return 'no chance judged';
  return `${doneCount} of ${chanceCount}: ${percentSaid(rate.rateRatio)} (${Math.round(rate.lowerRatio * 100)} to ${Math.round(rate.upperRatio * 100)})`;
}
