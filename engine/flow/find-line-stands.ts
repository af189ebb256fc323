import type { DrillPlan } from '../drill/drill.ts';
import type { Finding } from '../run/run-result.ts';
import type { SpotId } from '../units/ids.ts';
import type { LineFlow, PlayedFlow } from './flow-result.ts';
import { LONG_WORK_REST, MOVING_RATIO, SHORT_WORK_REST, SHORT_WORK_S } from './flow-rows.ts';

/**
 * The line that rests longest for its work, when that is past what coaching texts give work of that length (value: seconds
 * between two goes; threshold: the most for such a go). Else, when fewer move at once than in an ordinary practice, the line
 * that stands longest (value and threshold: skaters). At most one finding.
 */
export const findLineStands = (plan: DrillPlan, flow: PlayedFlow): readonly Finding[] => {
  const lines = flow.lines.filter(line => line.restS !== null && line.workS > 0);
  const tired = lines
    .filter(line => line.restS! > mostRestOf(line))
    .sort((a, b) => restRatio(b) - restRatio(a))[0];
  if (tired) {
    const row = restRowOf(tired);
    return [
      {
        ...at(plan, tired.spot),
        value: tired.restS!,
        threshold: mostRestOf(tired),
        unit: 's',
        status: row.status,
        source: row.source,
      },
    ];
  }
  const longest = [...flow.lines].sort((a, b) => b.standsLongestS - a.standsLongestS)[0];
  if (!longest || flow.movingRatio >= MOVING_RATIO.value) return [];
  return [
    {
      ...at(plan, longest.spot),
      value: flow.movingCount,
      threshold: MOVING_RATIO.value * flow.setting.roster.skaters,
      unit: 'skaters',
      status: MOVING_RATIO.status,
      source: MOVING_RATIO.source,
    },
  ];
};

const restRowOf = (line: LineFlow) => (line.workS <= SHORT_WORK_S.value ? SHORT_WORK_REST : LONG_WORK_REST);
const mostRestOf = (line: LineFlow): number => restRowOf(line).value * line.workS;
const restRatio = (line: LineFlow): number => (line.restS ?? 0) / line.workS;

const at = (plan: DrillPlan, spot: SpotId) =>
  ({
    kind: 'lineStandsTooLong',
    weight: 'know',
    timeS: 0,
    atM: plan.spots[spot]!.atM,
    spots: [spot],
  }) as const;
