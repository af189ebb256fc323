import type { Drill, Team } from '@icewright/book';
import { findingSentence, type Lengths, rinkOf } from '@icewright/engine';
import type { DrillPictured, DrillSheet } from '@icewright/picture';
import { countSaid, numberSaid } from '../../parts/figures.ts';
import { hurtingSentences } from '../../parts/hurting-findings.ts';
import { findRun } from '../../parts/played-drill.ts';
import { LEVELS } from '../../shell/rinks.ts';

/** The drill with its run as it stands, for a picture of it. */
export function picturedOf(drill: Drill, lengths: Lengths): DrillPictured {
  const run = findRun(drill);
  return {
    plan: drill,
    rink: rinkOf(drill.rink),
    ...(run === undefined ? {} : { run }),
    lengths,
    title: drill.title,
    says: drill.says,
  };
}

/** A drill as its page says it. `cover` stands over the page. */
export function sheetOf(drill: Drill, team: Pick<Team, 'lengths'>, cover: string): DrillSheet {
  const pictured = picturedOf(drill, team.lengths);
  const { run } = pictured;
  return {
    ...pictured,
    cover,
    keyPoints: pointsOf(drill),
    figures: [
      { name: 'minutes', words: `${drill.minutes}` },
      { name: 'on the ice in a rep', words: peopleSaid(drill) },
      ...(run === undefined
        ? []
        : [{ name: 'one rep', words: `${numberSaid(run.durationS)} s, an estimate` }]),
      { name: 'computed for', words: LEVELS.find(({ value }) => value === drill.level)?.said ?? drill.level },
    ],
    findings: (run?.findings ?? []).map(finding => findingSentence(finding, drill, team.lengths)),
    cautions: hurtingSentences(drill, team.lengths),
  };
}

export const pointsOf = (drill: Drill): readonly string[] =>
  drill.keyPoints
    .split('\n')
    .map(point => point.trim())
    .filter(point => point !== '');

function peopleSaid(drill: Drill): string {
  const count = (kind: string) => Object.values(drill.spots).filter(spot => spot.kind === kind).length;
  return [
    countSaid(count('skater'), 'skater'),
    ...(count('goalie') > 0 ? [countSaid(count('goalie'), 'goalie')] : []),
    ...(count('coach') > 0 ? [countSaid(count('coach'), 'coach', 'coaches')] : []),
  ].join(', ');
}
