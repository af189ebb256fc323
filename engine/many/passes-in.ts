import type { FindingKind, Run, RunEvent } from '../run/run-result.ts';
import type { ActId, SpotId } from '../units/ids.ts';
import type { IcePoint } from '../units/points.ts';

/** One pass of a rep and what became of it. */
export interface PassPlayed {
  readonly spot: SpotId;
  readonly to: SpotId;
  readonly act: ActId;
  readonly releasedS: number;
  readonly end: 'received' | 'cutOff' | 'missed';
  /** Who cut it off. */
  readonly by?: SpotId;
  /** Where and when it was received or cut off; where it was nearest to its receiver when it was missed, if that is known. */
  readonly atM?: IcePoint;
  readonly endS?: number;
}

/** The passes of a run in order of time. Each ends with the first stick of those named in its flight, or misses. */
export const passesIn = (run: Run): readonly PassPlayed[] =>
  run.events.flatMap((event, index) =>
    event.kind === 'pass' ? [played(run, event, run.events.slice(index + 1))] : [],
  );

type PassEvent = Extract<RunEvent, { kind: 'pass' }>;

const played = (run: Run, pass: PassEvent, after: readonly RunEvent[]): PassPlayed => {
  const { spot, to, act } = pass;
  const common = { spot, to, act, releasedS: pass.timeS };
  for (const event of after) {
    if (event.kind === 'pass' && event.spot === spot) break;
    if (event.kind !== 'receive' && event.kind !== 'intercept') continue;
    if (event.from !== spot) continue;
    const ended = { ...common, atM: event.atM, endS: event.timeS };
    if (event.kind === 'intercept') return { ...ended, end: 'cutOff', by: event.spot };
    if (event.spot === to) return { ...ended, end: 'received' };
  }
  const missed = run.findings.find(finding => finding.act === act && MISSES.includes(finding.kind));
  return { ...common, end: 'missed', ...(missed && { atM: missed.atM, endS: missed.timeS }) };
};

const MISSES: readonly FindingKind[] = ['receiverCannotGetThere', 'passDiesShort'];
