import type { End } from '../units/ends.ts';
import type { GoalieFlow, NetFlow } from './flow-result.ts';
import type { Block, BlockShot } from './play-block.ts';

const ENDS: readonly End[] = ['minusX', 'plusX'];

/** The nets that are shot at, with who stands in them; two goalies at one net take turns. Empty when nobody shoots. */
export const netsOf = (block: Block, goalies: number): readonly NetFlow[] => {
  const shotAt = ENDS.filter(end => block.shots.some(shot => shot.end === end));
  return shotAt.map((end, place) => ({
    end,
    shotCount: block.shots.filter(shot => shot.end === end).length,
    goalieCount: Math.floor((goalies + shotAt.length - 1 - place) / shotAt.length),
    leastBetweenS: betweenOf(block.shots.filter(shot => shot.end === end)).leastBetweenS,
  }));
};

/** Each goalie's shots and the time between them, seconds. A goalie at a net that nobody shoots at has none; empty without goalies. */
export const goaliesOf = (block: Block, goalies: number): readonly GoalieFlow[] => {
  const nets = netsOf(block, goalies);
  const busy = nets.flatMap(net => {
    const shots = block.shots.filter(shot => shot.end === net.end);
    const reps = [...new Set(shots.map(shot => shot.rep))];
    const turnOf = new Map(reps.map((rep, index) => [rep, index % Math.max(1, net.goalieCount)]));
    return Array.from({ length: net.goalieCount }, (_, turn) => ({
      end: net.end,
      shots: shots.filter(shot => turnOf.get(shot.rep) === turn),
    }));
  });
  return Array.from({ length: goalies }, (_, index) => {
    const one = busy[index] ?? { end: ENDS[index % 2]!, shots: [] };
    return { number: index + 1, end: one.end, shotCount: one.shots.length, ...betweenOf(one.shots) };
  });
};

const betweenOf = (
  shots: readonly BlockShot[],
): { readonly betweenS: number | null; readonly leastBetweenS: number | null } => {
  if (shots.length < 2) return { betweenS: null, leastBetweenS: null };
  const timesS = shots.map(shot => shot.timeS).sort((a, b) => a - b);
  let leastS = Number.POSITIVE_INFINITY;
  for (let i = 1; i < timesS.length; i++) leastS = Math.min(leastS, timesS[i]! - timesS[i - 1]!);
  return { betweenS: (timesS.at(-1)! - timesS[0]!) / (timesS.length - 1), leastBetweenS: leastS };
};
