import { type Contestant, contestantOf } from '../skater/contestant.ts';
import { levelOf } from '../skater/level.ts';
import { LEVEL_IDS } from '../skater/model.ts';

interface Chance {
  uniform(): number;
  below(count: number): number;
}

/** Ten skaters and two goalies of one level in seeded places, moving, for tests and timings. */
export const someContestants = (random: Chance): readonly Contestant[] => {
  const { model } = levelOf(LEVEL_IDS[random.below(LEVEL_IDS.length)]!);
  return Array.from({ length: 12 }, (_, index): Contestant => {
    const isGoalie = index % 6 === 5;
    const speed = isGoalie ? 0 : 0.8 * model.topSpeedMps * random.uniform();
    const headingRad = 2 * Math.PI * random.uniform();
    const side = index < 6 ? 'us' : 'them';
    const atM = isGoalie
      ? { xM: side === 'us' ? -26 : 26, yM: 0 }
      : { xM: 44 * random.uniform() - 22, yM: 22 * random.uniform() - 11 };
    return contestantOf(
      side,
      { atM, velocityMps: { xMps: speed * Math.cos(headingRad), yMps: speed * Math.sin(headingRad) } },
      model,
      isGoalie ? 'goalie' : 'skater',
    );
  });
};
