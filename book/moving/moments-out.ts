import type { Follow, Game, Moment } from '../documents/game.ts';
import type { Team } from '../documents/team.ts';
import { stableJson } from './stable-json.ts';
import { vttOf } from './web-vtt.ts';

/** What leaves: these moments of a game, with the team's words for them. */
export interface MomentsToExport {
  readonly game: Game;
  readonly team: Pick<Team, 'habits' | 'skaters' | 'units'>;
  /** In order of the film; several parts of a game may be among them. */
  readonly ids: readonly string[];
}

export const momentsFormat = 'icewright-moments';

const COLUMNS = [
  'film',
  'time_s',
  'frame',
  'from_s',
  'to_s',
  'habit',
  'seen',
  'skater',
  'cost_goals',
  'note',
  'by',
  'period',
  'strength',
  'score_us',
  'score_them',
  'unit',
  'x_m',
  'y_m',
  'what_came',
] as const;

/** CSV (RFC 4180): a line a moment. Seconds of the film, metres from centre ice; what came as "lost +1.20; regained +3.40". */
export function momentsCsv({ game, team, ids }: MomentsToExport): string {
  const came = followsOf(game);
  const lines = ids.map(id => {
    const one = momentOf(game, id);
    const cells: Record<(typeof COLUMNS)[number], string | number | undefined> = {
      film: filmName(game, one),
      time_s: one.filmTimeS,
      frame: one.frameIndex,
      from_s: one.fromS,
      to_s: one.toS,
      habit: team.habits[one.habit]?.title,
      seen: SEEN[one.verdict],
      skater: skaterName(team, one),
      cost_goals: one.costGoals,
      note: one.note,
      by: one.by,
      period: one.period,
      strength: one.strength,
      score_us: one.score?.us,
      score_them: one.score?.them,
      unit: one.unit && team.units[one.unit]?.title,
      x_m: one.atM?.xM,
      y_m: one.atM?.yM,
      what_came: (came.get(id) ?? [])
        .map(
          ({ step, filmTimeS }) =>
            `${step} ${filmTimeS < one.filmTimeS ? '' : '+'}${(filmTimeS - one.filmTimeS).toFixed(2)}`,
        )
        .join('; '),
    };
    return COLUMNS.map(column => csvCell(cells[column])).join(',');
  });
  return `${[COLUMNS.join(','), ...lines].join('\r\n')}\r\n`;
}

/** WebVTT of the moments, each over its stretch, or over a second where none is kept. One film: times are its own. */
export const momentsVtt = ({ game, team, ids }: MomentsToExport): string =>
  vttOf(
    ids
      .map(id => momentOf(game, id))
      .map(one => ({
        fromS: one.fromS ?? one.filmTimeS,
        toS: one.toS ?? one.filmTimeS + 1,
        words: [
          `${team.habits[one.habit]?.title ?? 'habit'}: ${SEEN[one.verdict]}`,
          skaterName(team, one),
          one.note,
        ]
          .filter(Boolean)
          .join('. '),
      }))
      .sort((a, b) => a.fromS - b.fromS),
  );

/** The moments themselves, with what came of them and second opinions; comes in again without doubling anything. */
export function momentsJson({ game, ids }: MomentsToExport): string {
  const wanted = new Set(ids);
  const ofThem = <One extends { readonly moment: string }>(list: Readonly<Record<string, One>>) =>
    Object.fromEntries(Object.entries(list).filter(([, one]) => wanted.has(one.moment)));
  return stableJson({
    format: momentsFormat,
    version: 1,
    films: game.films,
    moments: Object.fromEntries(ids.map(id => [id, withoutFreeze(momentOf(game, id))])),
    follows: ofThem(game.follows),
    opinions: ofThem(game.opinions),
  });
}

/** A freeze stays in its game: a moment elsewhere must not point at one that is not there. */
const withoutFreeze = ({ freeze: _, ...moment }: Moment): Moment => moment;

const SEEN: Readonly<Record<Moment['verdict'], string>> = {
  done: 'done',
  missed: 'missed',
  cannotSee: 'cannot see',
};

function momentOf(game: Game, id: string): Moment {
  const one = game.moments[id as keyof Game['moments']];
  if (one === undefined) throw new RangeError(`the game has no moment "${id}"`);
  return one;
}

function followsOf(game: Game): ReadonlyMap<string, readonly Follow[]> {
  const byMoment = new Map<string, Follow[]>();
  const all = Object.values(game.follows).sort((a, b) => a.filmTimeS - b.filmTimeS);
  for (const one of all) byMoment.set(one.moment, [...(byMoment.get(one.moment) ?? []), one]);
  return byMoment;
}

const filmName = (game: Game, one: Moment): string | undefined => game.films[one.film]?.fileName;

const skaterName = (team: Pick<Team, 'skaters'>, one: Moment): string => {
  const skater = one.skater && team.skaters[one.skater];
  return skater ? `${skater.number} ${skater.name}` : '';
};

/** A cell that a spreadsheet would take for a formula gets an apostrophe, so that opening the file runs nothing. */
const csvCell = (value: string | number | undefined): string => {
  if (value === undefined) return '';
  if (typeof value === 'number') return String(value);
  const safe = /^[=+\-@\t\r]/.test(value) ? `'${value}` : value;
  return /[",\r\n]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
};
