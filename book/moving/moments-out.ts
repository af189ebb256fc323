import type { Follow, Game, Moment } from '../documents/game.ts';
import { figure, type MomentTeam, SEEN, STEP_SAID, skaterNamed, THEIRS, unitNamed } from './moment-words.ts';
import { stableJson } from './stable-json.ts';

/** What leaves: these moments of a game, with the team's words for them. */
export interface MomentsToExport {
  readonly game: Game;
  readonly team: MomentTeam;
  /** In order of the film; several parts of a game may be among them. */
  readonly ids: readonly string[];
}

export const momentsFormat = 'icewright-moments';

export const MOMENT_COLUMNS = [
  'film',
  'time_s',
  'frame',
  'from_s',
  'to_s',
  'habit',
  'seen',
  'whose',
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
  'marked_at',
  'id',
] as const;

export type MomentColumn = (typeof MOMENT_COLUMNS)[number];

/**
 * CSV (RFC 4180): a line a moment. Seconds of the film to the millisecond, beside the frame, which is exact; metres from
 * centre ice to the centimetre; what came as "lost +1.2 s (frame 186); won back +3.4 s (frame 252)".
 */
export function momentsCsv({ game, team, ids }: MomentsToExport): string {
  const came = followsOf(game);
  const lines = ids.map(id => {
    const one = momentOf(game, id);
    const cells: Record<MomentColumn, string | undefined> = {
      film: game.films[one.film]?.fileName,
      time_s: figure(one.filmTimeS, 3),
      frame: String(one.frameIndex),
      from_s: one.fromS === undefined ? undefined : figure(one.fromS, 3),
      to_s: one.toS === undefined ? undefined : figure(one.toS, 3),
      habit: team.habits[one.habit]?.title,
      seen: SEEN[one.verdict],
      whose: one.ofOthers ? THEIRS : undefined,
      skater: skaterNamed(team, one),
      cost_goals: figure(one.costGoals, 3),
      note: one.note,
      by: one.by,
      period: one.period?.toString(),
      strength: one.strength,
      score_us: one.score?.us.toString(),
      score_them: one.score?.them.toString(),
      unit: unitNamed(team, one),
      x_m: one.atM && figure(one.atM.xM, 2),
      y_m: one.atM && figure(one.atM.yM, 2),
      what_came: (came.get(id) ?? []).map(step => cameCell(one, step)).join('; '),
      marked_at: one.taggedAt,
      id,
    };
    return MOMENT_COLUMNS.map(column => csvCell(column, cells[column])).join(',');
  });
  return `${[MOMENT_COLUMNS.join(','), ...lines].join('\r\n')}\r\n`;
}

const cameCell = (one: Moment, { step, filmTimeS, frameIndex }: Follow): string => {
  const sinceS = figure(filmTimeS - one.filmTimeS, 3);
  return `${STEP_SAID[step]} ${sinceS.startsWith('-') ? '' : '+'}${sinceS} s (frame ${frameIndex})`;
};

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

export function momentOf(game: Game, id: string): Moment {
  const one = game.moments[id as keyof Game['moments']];
  if (one === undefined) throw new RangeError(`the game has no moment "${id}"`);
  return one;
}

export function followsOf(game: Game): ReadonlyMap<string, readonly Follow[]> {
  const byMoment = new Map<string, Follow[]>();
  const all = Object.values(game.follows).sort((a, b) => a.filmTimeS - b.filmTimeS);
  for (const one of all) byMoment.set(one.moment, [...(byMoment.get(one.moment) ?? []), one]);
  return byMoment;
}

/** Figures stand as they are; words that a spreadsheet would take for a formula get an apostrophe, so that opening the file runs nothing. */
const csvCell = (column: MomentColumn, value = ''): string => {
  const safe = !FIGURES.has(column) && FORMULA.test(value) ? `'${value}` : value;
  return /[",\r\n]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
};

/** Apostrophes before it too: what was written with one must not lose it on the way back. */
const FORMULA = /^'*[=+\-@\t\r]/;

/** A cell's words as they were before an apostrophe was set before them. */
export const unguarded = (cell: string): string =>
  cell.startsWith("'") && FORMULA.test(cell) ? cell.slice(1) : cell;

const FIGURES: ReadonlySet<MomentColumn> = new Set(['time_s', 'from_s', 'to_s', 'x_m', 'y_m']);
