import type { Follow, Game, Moment } from '../documents/game.ts';
import { moment as momentSchema } from '../documents/game.ts';
import type { EventTable } from './event-table.ts';
import { idOfLine } from './event-table.ts';
import { type FileIssue, reasonOf } from './file-issue.ts';
import {
  habitCalled,
  type MomentTeam,
  skaterCalled,
  stepCalled,
  THEIRS,
  unitCalled,
  verdictCalled,
} from './moment-words.ts';
import { type MomentColumn, unguarded } from './moments-out.ts';
import {
  type FilmFrames,
  followRead,
  type MomentsTaken,
  type ReadMoment,
  ROUNDED_S,
  takenOf,
} from './moments-taken.ts';

export interface TableInto {
  readonly game: Game;
  readonly team: MomentTeam;
  /** The film that is open: of several with one name, it is meant. */
  readonly film: Moment['film'];
  /** Frames of a film, where they are known: of one that is not open, times stay as the file rounded them. */
  readonly framesOf: (film: Moment['film']) => FilmFrames | undefined;
  /** For lines that do not say when they were marked. */
  readonly taggedAt: string;
}

const NEEDED: readonly MomentColumn[] = ['time_s', 'frame', 'habit', 'seen'];

/** Whether a table has the heads that this program writes over moments, in whatever order. */
export const isMomentsTable = ({ heads }: EventTable): boolean => NEEDED.every(head => heads.includes(head));

/**
 * Moments from a table that this program wrote, taken as it says them. All of it or nothing; refused with the line, the
 * column and the reason. A line without an id (somebody wrote it in) is known by what it says.
 */
export function readMomentsTable(
  table: EventTable,
  into: TableInto,
): MomentsTaken | { readonly sentence: string } {
  const read: ReadMoment[] = [];
  for (const [index, line] of table.lines.entries()) {
    const cell = (column: MomentColumn) => unguarded(line[table.heads.indexOf(column)] ?? '');
    const one = momentOfLine(cell, idOfLine(line), into);
    if ('sentence' in one) return { sentence: `Line ${index + 2}, ${one.sentence}` };
    read.push(one);
  }
  return takenOf(into.game, read);
}

type Cell = (column: MomentColumn) => string;
type Refused = { readonly sentence: string };

function momentOfLine(cell: Cell, lineId: string, into: TableInto): ReadMoment | Refused {
  const { game, team } = into;
  const odd = NUMBERS.find(column => cell(column).trim() !== '' && numberOf(cell(column)) === undefined);
  if (odd) return { sentence: `${odd}: a number is wanted, not “${cell(odd)}”.` };
  const film = filmCalled(cell('film'), into);
  const habit = habitCalled(team, cell('habit'));
  const verdict = verdictCalled(cell('seen'));
  const id = cell('id').trim() || lineId;
  // What the game has stays as it is: then it is all one where its film and habit have gone.
  const here = game.moments[id as keyof Game['moments']];
  if (here) return { id, moment: here, follows: [], isOutside: false };
  if (film === undefined)
    return {
      sentence: `film: this game has no film called “${cell('film')}”. Open that film in this game first, then take the moments.`,
    };
  if (habit === undefined)
    return {
      sentence: `habit: the team has no habit called “${cell('habit')}”. Write it under Habits first.`,
    };
  if (verdict === undefined)
    return { sentence: `seen: done, missed or cannot see is wanted, not “${cell('seen')}”.` };
  const frames = into.framesOf(film);
  const saidS = numberOf(cell('time_s'));
  const frameIndex = numberOf(cell('frame')) ?? (saidS === undefined ? undefined : frames?.frameAt(saidS));
  if (saidS === undefined || frameIndex === undefined)
    return { sentence: `${saidS === undefined ? 'time_s' : 'frame'}: a number is wanted.` };
  const exactS = frames?.timeOf(frameIndex);
  const filmTimeS = exactS !== undefined && Math.abs(exactS - saidS) <= ROUNDED_S ? exactS : saidS;
  const skater = skaterCalled(team, cell('skater'));
  const unit = cell('unit').trim() === '' ? undefined : unitCalled(team, cell('unit'));
  const known = sameMoment(game, film, frameIndex, habit);
  const moment = withoutAbsent({
    film,
    habit,
    verdict,
    ofOthers: cell('whose').trim() === THEIRS || undefined,
    filmTimeS,
    frameIndex,
    costGoals: numberOf(cell('cost_goals')) ?? 0,
    note: cell('note'),
    by: cell('by'),
    taggedAt: cell('marked_at').trim() || into.taggedAt,
    fromS: numberOf(cell('from_s')),
    toS: numberOf(cell('to_s')),
    period: numberOf(cell('period')),
    strength: cell('strength').trim() || undefined,
    score: pairOf(cell('score_us'), cell('score_them'), (us, them) => ({ us, them })),
    atM: pairOf(cell('x_m'), cell('y_m'), (xM, yM) => ({ xM, yM })),
    skater,
    unit,
  });
  const parsed = momentSchema.safeParse(moment);
  if (!parsed.success) {
    const issue = parsed.error.issues[0] as unknown as FileIssue;
    return {
      sentence: `${COLUMN_OF[String(issue.path[0])] ?? String(issue.path[0])}: ${reasonOf(issue, moment)}.`,
    };
  }
  const follows = followsOfCell(cell('what_came'), id, parsed.data, frames);
  if ('sentence' in follows) return follows;
  return {
    id: cell('id').trim() === '' && known !== undefined ? known : id,
    moment: parsed.data,
    follows,
    isOutside: frames !== undefined && (frameIndex >= frames.frameCount || filmTimeS > frames.endS),
    unknown: [
      skater === undefined && cell('skater').trim(),
      unit === undefined && cell('unit').trim(),
    ].filter(one => one !== false && one !== '') as string[],
  };
}

const NUMBERS = [
  'time_s',
  'frame',
  'from_s',
  'to_s',
  'cost_goals',
  'period',
  'score_us',
  'score_them',
  'x_m',
  'y_m',
] as const satisfies readonly MomentColumn[];

const COLUMN_OF: Readonly<Record<string, MomentColumn>> = {
  filmTimeS: 'time_s',
  frameIndex: 'frame',
  fromS: 'from_s',
  toS: 'to_s',
  costGoals: 'cost_goals',
  taggedAt: 'marked_at',
  score: 'score_us',
  atM: 'x_m',
};

function filmCalled(fileName: string, { game, film }: TableInto): Moment['film'] | undefined {
  if ((game.films[film]?.fileName ?? '') === fileName) return film;
  const called = Object.entries(game.films).find(([, one]) => one.fileName === fileName);
  return called?.[0] as Moment['film'] | undefined;
}

/** The moment that a line without an id says again. */
const sameMoment = (
  game: Game,
  film: Moment['film'],
  frameIndex: number,
  habit: Moment['habit'],
): string | undefined =>
  Object.entries(game.moments).find(
    ([, one]) => one.film === film && one.frameIndex === frameIndex && one.habit === habit,
  )?.[0];

/** "lost +1.2 s (frame 186); won back +3.4 s (frame 252)"; older files write "regained +3.40". */
function followsOfCell(
  cell: string,
  id: string,
  { filmTimeS }: Moment,
  frames: FilmFrames | undefined,
): readonly (readonly [string, Follow])[] | Refused {
  const follows: (readonly [string, Follow])[] = [];
  for (const part of cell.split(';').map(one => one.trim())) {
    if (part === '') continue;
    const found = /^(.+?) ([+-]?\d+(?:[.,]\d+)?)(?: s)?(?: \(frame (\d{1,9})\))?$/.exec(part);
    const step = found ? stepCalled(found[1]!) : undefined;
    const timeS = filmTimeS + (numberOf(found?.[2] ?? '') ?? 0);
    const frameIndex = found?.[3] === undefined ? frames?.frameAt(timeS) : Number(found[3]);
    if (step === undefined || frameIndex === undefined)
      return { sentence: `what_came: “lost +1.2 s (frame 186)” or the like is wanted, not “${part}”.` };
    follows.push(followRead(id, step, timeS, frameIndex, frames));
  }
  return follows;
}

/** With a point or a comma, as spreadsheets of many countries write it. Undefined for an empty cell, and for words. */
function numberOf(cell: string): number | undefined {
  const value = cell.trim() === '' ? Number.NaN : Number(cell.trim().replace(',', '.'));
  return Number.isFinite(value) ? value : undefined;
}

function pairOf<Pair>(a: string, b: string, make: (a: number, b: number) => Pair): Pair | undefined {
  const [first, second] = [numberOf(a), numberOf(b)];
  return first === undefined || second === undefined ? undefined : make(first, second);
}

const withoutAbsent = (moment: Record<string, unknown>): Record<string, unknown> =>
  Object.fromEntries(Object.entries(moment).filter(([, value]) => value !== undefined));
