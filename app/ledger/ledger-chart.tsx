import type { Game } from '@icewright/book';
import { drawChange, drawLedgerRow, type LedgerPlace, ledgerX, svgParts } from '@icewright/picture';
import { useMemo, useState } from 'react';
import { Link } from 'wouter';
import { differSaid } from '../habits/rate-reading.tsx';
import { ActLink } from '../parts/act.tsx';
import { countSaid, dayInMonth, percentSaid, pointsSaid } from '../parts/figures.ts';
import { named } from '../parts/named.ts';
import { Slip } from '../parts/slip.tsx';
import { useIsNarrow } from '../parts/use-is-narrow.ts';
import { useWidth } from '../parts/use-width.ts';
import { addressOfHabit } from '../shell/addresses.ts';
import { changeOf, rowOf } from './drawn-row.ts';
import { judgedGamesOf, type LedgerLine } from './ledger-lines.ts';
import { wordsOf } from './line-words.ts';
import { GamesAbove, WeeksBelow } from './season-axis.tsx';
import { dayNumber, weeksOf } from './season-scale.ts';

/** Room for "100" and "0" at the left of a row, px. */
const AXIS_PX = 34;
/** Y of rate 0 within its row. */
const BASE_PX = 66;
const CHANGE_SPAN_POINTS = 60;
const CHANGE_WIDTH_PX = { wide: 172, narrow: 120 } as const;

const useChangeWidth = () => CHANGE_WIDTH_PX[useIsNarrow(1100) ? 'narrow' : 'wide'];

export function LedgerChart(props: {
  readonly lines: readonly LedgerLine[];
  readonly games: readonly (readonly [string, Game])[];
  readonly today: string;
}) {
  const { lines, games, today } = props;
  const [chartRef, width] = useWidth<HTMLDivElement>();
  const { fromDay, toDay } = useMemo(() => weeksOf(lines, today), [lines, today]);
  const place = useMemo<LedgerPlace>(
    () => ({ left: AXIS_PX, right: Math.max(width - 6, AXIS_PX + 80), fromDay, toDay, base: BASE_PX }),
    [width, fromDay, toDay],
  );
  const shownGames = games.filter(([, game]) => {
    const day = dayNumber(game.day);
    return day >= fromDay && day <= toDay;
  });
  return (
    <div className="ledger-chart">
      <div className="ledger-head">
        <span className="q3">Habit</span>
        <div ref={chartRef}>
          {width > 0 && <GamesAbove games={shownGames} place={place} width={width} today={today} />}
        </div>
        <ChangeAxis />
        <span />
      </div>
      <ol>
        {lines.map(line => (
          <LineRow
            key={line.habitId}
            line={line}
            place={place}
            width={width}
            games={shownGames}
            today={today}
          />
        ))}
      </ol>
      <div className="ledger-foot">
        <span />
        <div>{width > 0 && <WeeksBelow place={place} width={width} />}</div>
      </div>
    </div>
  );
}

function LineRow(props: {
  readonly line: LedgerLine;
  readonly place: LedgerPlace;
  readonly width: number;
  readonly games: readonly (readonly [string, Game])[];
  readonly today: string;
}) {
  const { line, place, width, games, today } = props;
  const { habit, practised, minutes } = line;
  const [isAsked, setAsked] = useState(false);
  const words = wordsOf(line);
  const markup = useMemo(
    () => svgParts(pen => drawLedgerRow(pen, rowOf(line, place), place), { digits: 1 }),
    [line, place],
  );
  const first = practised[0];
  return (
    <li className="ledger-line">
      <div className="ledger-habit">
        <Link href={addressOfHabit(line.habitId)} className="w">
          {named(habit.title, 'habit')}
        </Link>
        <p className="q3">
          {minutes === 0
            ? 'in no practice yet'
            : `${minutes} min planned in ${countSaid(practised.length, 'practice')}`}
        </p>
        <p className="q3">
          {first !== undefined && `from ${dayInMonth(first.day)}, `}wanted {percentSaid(habit.wantedRatio)}
        </p>
      </div>
      {width > 0 && (
        <svg className="ledger-row" width={width} height="100%" role="img" aria-label={rowSaid(line)}>
          {games.map(([id, game]) => (
            <path key={id} className="game-line" d={`M${ledgerX(place, dayNumber(game.day))} 0V400`} />
          ))}
          <path className="today-line" d={`M${ledgerX(place, dayNumber(today))} 0V400`} />
          {/* biome-ignore lint/security/noDangerouslySetInnerHtml: markup of our own pen, with all words escaped there */}
          <g dangerouslySetInnerHTML={{ __html: markup }} />
        </svg>
      )}
      <ChangeBar line={line} />
      <div className="ledger-words">
        <button
          type="button"
          className={`verdict why ${words.word.replaceAll(' ', '-')}`}
          aria-expanded={isAsked}
          onClick={() => setAsked(!isAsked)}
        >
          {words.word}
          <span className="vh">, why?</span>
        </button>
        {words.figure !== null && <p className="b figure">{words.figure}</p>}
        <p className="q3">{words.more}</p>
        {line.differCount > 0 && (
          <p className="q2">
            <Link href={addressOfHabit(line.habitId)}>{differSaid(line.differCount)}</Link>
          </p>
        )}
      </div>
      {isAsked && (
        <div className="ledger-why">
          <Slip onClose={() => setAsked(false)}>
            {whySaid(line)}{' '}
            <ActLink bare to="/figures">
              What the figures rest on
            </ActLink>
          </Slip>
        </div>
      )}
    </li>
  );
}

function ChangeBar({ line }: { readonly line: LedgerLine }) {
  const change = changeOf(line);
  const width = useChangeWidth();
  const span = CHANGE_SPAN_POINTS;
  const markup = useMemo(
    () =>
      change === null
        ? ''
        : svgParts(
            pen =>
              drawChange(pen, change, {
                zeroX: width / 2,
                pxAPoint: (width / 2 - 6) / span,
                spanPoints: span,
                y: BASE_PX - 26,
              }),
            { digits: 1 },
          ),
    [change, width],
  );
  return (
    <svg className="change-bar" width={width} height="100%" aria-hidden="true">
      <path className="zero-line" d={`M${width / 2} 0V400`} />
      {/* biome-ignore lint/security/noDangerouslySetInnerHtml: markup of our own pen, with all words escaped there */}
      <g dangerouslySetInnerHTML={{ __html: markup }} />
    </svg>
  );
}

function ChangeAxis() {
  const width = useChangeWidth();
  const span = CHANGE_SPAN_POINTS;
  const marks = width < CHANGE_WIDTH_PX.wide ? [-40, 0, 40] : [-40, -20, 0, 20, 40];
  return (
    <svg className="change-axis" viewBox={`0 0 ${width} 36`} width={width} height={36} aria-hidden="true">
      <text className="tx-axis" x={width / 2} y={12} textAnchor="middle">
        change, points
      </text>
      {marks.map(points => (
        <text
          key={points}
          className="tx-axis"
          x={width / 2 + (points * (width / 2 - 6)) / span}
          y={28}
          textAnchor="middle"
        >
          {points > 0 ? `+${points}` : points < 0 ? `\u2212${-points}` : '0'}
        </text>
      ))}
    </svg>
  );
}

const countsSaid = ({ doneCount, chanceCount }: LedgerLine['before']) => `${doneCount} of ${chanceCount}`;

const rowSaid = (line: LedgerLine): string =>
  `${named(line.habit.title, 'habit')}: ${countsSaid(line.before)} done before its first practice, ${countsSaid(line.after)} from then on, in ${countSaid(judgedGamesOf(line).length, 'game')}; ${line.minutes} minutes planned.`;

function whySaid(line: LedgerLine): string {
  const { change } = line;
  if (change === null)
    return `It was in no practice yet, so there is no before and after: ${countsSaid(line.before)} done so far.`;
  const seen = `Before its first practice ${countsSaid(line.before)} done, from that day on ${countsSaid(line.after)}. `;
  if ('kind' in change.change) return `${seen}A change needs chances on both sides.`;
  const { lowerRatio, upperRatio } = change.change;
  const interval = `The true change could lie anywhere from ${pointsSaid(lowerRatio)} to ${pointsSaid(upperRatio)} points: outside that, counts like these would be rare. It is Newcombe’s hybrid score interval (1998) at ${percentSaid(change.confidence)}; more than 95, because the ledger is looked at after every game. `;
  const least = change.smallestShownRatio;
  return `${seen}${interval}${
    typeof least === 'number'
      ? `These chances would have shown a change of ${Math.round(least * 100)} points in 8 seasons of 10.`
      : 'So few chances could show nothing, not even all against none.'
  }`;
}
