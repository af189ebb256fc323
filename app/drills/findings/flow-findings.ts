import { flowOf, isNone } from '@icewright/engine';
import type { WhoIsHere } from '../../parts/who-is-here.ts';
import type { MoreFindings } from './use-mends.ts';

/** What the flow of a drill has to say when these people play it: a mend must leave that well, and may mend it. */
export const flowFindings =
  ({ skaters, goalies, beyondLines }: WhoIsHere): MoreFindings =>
  (drill, run) => {
    const flow = flowOf(drill, run, { roster: { skaters, goalies }, minutes: drill.minutes, beyondLines });
    return isNone(flow) ? [] : flow.findings;
  };
