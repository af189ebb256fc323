import type { Game, Team } from '@icewright/book';
import { rinkOf } from '@icewright/engine';
import { growthRow } from '../../cli/bench-growth.ts';
import type { BenchRow } from '../../cli/bench-row.ts';
import { type SeasonFile, seasonFile } from '../bench/season-file.ts';
import { ledgerLinesOf, type SeasonSeen } from './ledger-lines.ts';

const GAMES = 20;
const MOMENTS = [375, 750, 1500, 3000] as const;

/** How the ledger's counting grows with the moments of a season: the exponent through log count and log time. */
const bench = async (): Promise<BenchRow[]> => {
  const rink = rinkOf({ preset: '60x30m' });
  return [
    growthRow(
      'counting the ledger grows with the moments of a season',
      MOMENTS.map(momentsAGame => {
        const file = seasonFile(GAMES, momentsAGame);
        const { team, season } = opened(file);
        const count = () => ledgerLinesOf(team, season, rink, '2026-11-25');
        check(file, count());
        return { size: file.momentCount, work: () => void count() };
      }),
    ),
  ];
};

export default bench;

const opened = ({ text }: SeasonFile): { team: Team; season: SeasonSeen } => {
  const { documents } = JSON.parse(text) as { documents: { id: string; value: Team | Game }[] };
  const team = documents.find(({ value }) => value.kind === 'team')!.value as Team;
  const games = documents.flatMap(({ id, value }) => (value.kind === 'game' ? [[id, value] as const] : []));
  return { team, season: { games, practices: [], drills: new Map() } };
};

/** What is counted must be what was put in. */
const check = (file: SeasonFile, lines: ReturnType<typeof ledgerLinesOf>): void => {
  for (const { habit, before } of lines) {
    const put = file.counted.get(habit.title)!;
    if (before.doneCount !== put.done || before.chanceCount !== put.chances)
      throw new Error(
        `${habit.title}: counted ${before.doneCount} of ${before.chanceCount}, put in otherwise`,
      );
  }
};
