import type { DrillPlan, Run } from '@icewright/engine';
import type { DrillLine } from './drill-line.ts';

/** Two plays of the puck read themselves; from three on the eye asks which is first. Our choice. */
const FIGURES_FROM = 3;

/** The order of passes and shots as figures on their lines, in the order they were played; without a run, none. */
export const orderFigures = (
  plan: DrillPlan,
  lines: readonly DrillLine[],
  run: Run | undefined,
): ReadonlyMap<DrillLine, number> => {
  const figures = new Map<DrillLine, number>();
  if (!run) return figures;
  const played = lines.flatMap(line => {
    if (line.kind !== 'pass' && line.kind !== 'shot') return [];
    if (plan.spots[line.spot] === undefined) return [];
    const event = run.events.find(
      each => each.kind === 'actStarts' && each.spot === line.spot && each.act === line.act,
    );
    return event ? [{ line, timeS: event.timeS }] : [];
  });
  if (played.length < FIGURES_FROM) return figures;
  played.sort((one, other) => one.timeS - other.timeS);
  played.forEach(({ line }, index) => {
    figures.set(line, index + 1);
  });
  return figures;
};
