import type { Moment, Team } from '@icewright/book';
import type { ListedMoment } from './moments/filter-moments.ts';

/** The line from which done goes up and missed goes down. */
export const BASE = 40;

export interface PulsePlace {
  readonly team: Pick<Team, 'habits'>;
  /** Moments of this habit are dark, the others stay behind. */
  readonly habit: string | undefined;
  readonly xOf: (timeS: number) => number;
}

/** All marks of one look as one path: a game may have a thousand and more. Those that stay behind come first. */
export function pulsePaths(
  moments: readonly ListedMoment[],
  place: PulsePlace,
): readonly (readonly [look: string, d: string])[] {
  const paths = new Map<string, string[]>(LOOKS.map(look => [look, []]));
  for (const [, moment] of moments) paths.get(lookOf(moment, place.habit))!.push(markPath(moment, place));
  return LOOKS.flatMap(look => {
    const marks = paths.get(look)!;
    return marks.length === 0 ? [] : [[look, marks.join('')] as const];
  });
}

export const lookOf = (moment: Moment, habit: string | undefined): string =>
  `${isBehind(moment, habit) ? 'other ' : ''}${SHAPE[moment.verdict]}`;

/** A bar as high as the cost, or a ring for what could not be seen. */
export function markPath(moment: Moment, { team, habit, xOf }: PulsePlace): string {
  const x = xOf(moment.filmTimeS);
  const isSmall = isBehind(moment, habit);
  if (moment.verdict === 'cannotSee') {
    const r = isSmall ? 3 : 3.6;
    return `M${fixed(x - r)} ${BASE}a${r} ${r} 0 1 0 ${2 * r} 0a${r} ${r} 0 1 0 ${-2 * r} 0z`;
  }
  const wide = isSmall ? 3 : 5;
  const height = heightOf(moment, team);
  const top = moment.verdict === 'done' ? BASE - height : BASE;
  return `M${fixed(x - wide / 2)} ${fixed(top)}h${wide}v${fixed(height)}h${-wide}z`;
}

const SHAPE = { done: 'done', missed: 'missed', cannotSee: 'none' } as const;
const LOOKS = ['other done', 'other missed', 'other none', 'done', 'missed', 'none'];

const isBehind = (moment: Moment, habit: string | undefined): boolean =>
  habit !== undefined && habit !== moment.habit;

const fixed = (px: number): string => String(Number(px.toFixed(2)));

/** What a miss cost, or for one that was done, what it would have cost. */
const heightOf = (moment: Moment, team: Pick<Team, 'habits'>): number => {
  const goals = moment.verdict === 'missed' ? moment.costGoals : (team.habits[moment.habit]?.costGoals ?? 0);
  return LOWEST + (HIGHEST - LOWEST) * Math.min(1, goals / TALL_GOALS);
};
const LOWEST = 8;
const HIGHEST = 30;
/** A tenth of a goal fills the strip: few single moments cost more, by the coach's own estimates. */
const TALL_GOALS = 0.12;
