import type { Game } from '@icewright/book';
import { drawRule, type LedgerPlace, ledgerX, svgParts } from '@icewright/picture';
import { dayInMonth } from '../parts/figures.ts';
import { dayNumber, monthsOf } from './season-scale.ts';

/** A head as wide as this can stand over each game, px. */
const HEAD_PX = 62;

/** The games over the rows: day, opponent, score; where they stand too close, every second one or fewer. */
export function GamesAbove(props: {
  readonly games: readonly (readonly [string, Game])[];
  readonly place: LedgerPlace;
  readonly width: number;
  readonly today: string;
}) {
  const { games, place, width, today } = props;
  let lastX = Number.NEGATIVE_INFINITY;
  const shown = games.filter(([, game]) => {
    const x = ledgerX(place, dayNumber(game.day));
    if (x - lastX < HEAD_PX) return false;
    lastX = x;
    return true;
  });
  const todayX = ledgerX(place, dayNumber(today));
  const isTodayFree = shown.every(
    ([, game]) => Math.abs(ledgerX(place, dayNumber(game.day)) - todayX) > HEAD_PX * 0.8,
  );
  return (
    <svg className="games-above" width={width} height={44} viewBox={`0 0 ${width} 44`} aria-hidden="true">
      {shown.map(([id, game]) => (
        <g key={id} transform={`translate(${ledgerX(place, dayNumber(game.day))} 0)`} textAnchor="middle">
          <text className="tx-axisBold" y={11} fontSize={12}>
            {dayInMonth(game.day)}
          </text>
          <text className="tx-axis" y={25} fontSize={11}>
            {game.opponent}
          </text>
          {game.score !== undefined && (
            <text className="tx-axis" y={38} fontSize={11}>
              {game.score.us}–{game.score.them}
            </text>
          )}
        </g>
      ))}
      {isTodayFree && (
        <text className="tx-axis today-name" x={todayX} y={38} fontSize={11} textAnchor="middle">
          today
        </text>
      )}
    </svg>
  );
}

/** The weeks of the season on the graduated rule, months below. */
export function WeeksBelow({ place, width }: { readonly place: LedgerPlace; readonly width: number }) {
  const { left, right, fromDay, toDay } = place;
  const span = right - left;
  const markup = svgParts(
    pen =>
      drawRule(pen, {
        x: left,
        y: 6,
        width: span,
        each: (span * 7) / (toDay - fromDay),
        figures: monthsOf(fromDay, toDay).map(({ day, said }) => ({
          at: ledgerX(place, day) - left + 24,
          words: said,
          strong: true,
        })),
      }),
    { digits: 1 },
  );
  return (
    <svg
      width={width}
      height={32}
      viewBox={`0 0 ${width} 32`}
      aria-hidden="true"
      // biome-ignore lint/security/noDangerouslySetInnerHtml: markup of our own pen, with all words escaped there
      dangerouslySetInnerHTML={{ __html: markup }}
    />
  );
}
