import type { DrillPlan } from '../drill/drill.ts';
import { GOALIE_RESET_S } from '../run/goalie-rows.ts';
import type { Finding, Run } from '../run/run-result.ts';
import { type End, otherEnd } from '../units/ends.ts';
import type { PlayedFlow } from './flow-result.ts';
import type { RepFacts } from './rep-facts.ts';

/**
 * Nets at which two shots come closer together than a goalie is ready again, within a rep or from one rep to the next. Value:
 * the least seconds between two shots; threshold: the reset time. At the place of the shot of the rep that comes too soon. Nothing is
 * found at a net before which the drill has nobody: goalies of the roster who are not drawn stand where the coach puts them.
 */
export const findGoalieNoTime = (
  plan: DrillPlan,
  run: Run,
  rep: RepFacts,
  flow: PlayedFlow,
): readonly Finding[] =>
  flow.nets.flatMap(net => {
    const { leastBetweenS } = net;
    if (leastBetweenS === null || leastBetweenS >= GOALIE_RESET_S.value) return [];
    const shots = run.events.filter(event => event.kind === 'shot');
    const drawn = rep.shots.some(shot => shot.end === net.end) ? net.end : otherEnd(net.end);
    if (!hasGoalieAt(plan, drawn)) return [];
    const here = shots.filter((_, index) => rep.shots[index]?.end === drawn);
    const inRep = here.findIndex(
      (shot, index) => index > 0 && shot.timeS - here[index - 1]!.timeS < GOALIE_RESET_S.value,
    );
    const shot = here[Math.max(0, inRep)];
    if (!shot) return [];
    return [
      {
        kind: 'goalieHasNoTime',
        weight: 'look',
        timeS: shot.timeS,
        atM: shot.atM,
        spots: shot.kind === 'shot' ? [shot.spot] : [],
        value: leastBetweenS,
        threshold: GOALIE_RESET_S.value,
        unit: 's',
        status: GOALIE_RESET_S.status,
        source: GOALIE_RESET_S.source,
      },
    ];
  });

const hasGoalieAt = (plan: DrillPlan, end: End): boolean =>
  Object.values(plan.spots).some(
    ({ kind, atM }) => kind === 'goalie' && (end === 'plusX' ? atM.xM > 0 : atM.xM < 0),
  );
