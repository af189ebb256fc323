import type { Drill } from '@icewright/book';
import { type Flow, type FlowResult, type SpotId, USUAL_FLOW } from '@icewright/engine';
import type { Write } from '../write.ts';

export const flowIn = (drill: Drill): Flow => drill.flow ?? USUAL_FLOW;

/** The writes that change one part of the flow; a drill without one gets the usual one with that part. */
export function flowChanged<Part extends keyof Flow>(drill: Drill, part: Part, value: Flow[Part]): Write[] {
  return drill.flow === undefined
    ? [{ path: ['flow'], value: { ...USUAL_FLOW, [part]: value } }]
    : [{ path: ['flow', part], value }];
}

/** The own line is what goes without saying, so it is not written. */
export function goesToChanged(drill: Drill, from: SpotId, to: SpotId): Write[] {
  const { [from]: _before, ...others } = flowIn(drill).goesTo;
  return flowChanged(drill, 'goesTo', from === to ? others : { ...others, [from]: to });
}

/** The writes that draw the lines as they stand at the first whistle; none when they are drawn so. */
export function linesDrawn(drill: Drill, flow: FlowResult): Write[] {
  return flow.lines.flatMap(line => {
    const waiting = Math.max(0, line.skaterCount - 1);
    const spot = drill.spots[line.spot];
    // At two ends the line at the end drawn is never the shorter one.
    if (line.end === 1 || spot === undefined || spot.waitingCount === waiting) return [];
    return [{ path: ['spots', line.spot, 'waitingCount'], value: waiting }];
  });
}
