import type { DrillWant } from '@icewright/book';
import type { ActId, LineId, SpotId } from '@icewright/engine';

/** What is wanted of a demo drill, by roles and by the number of an act. */

const spot = (role: string): SpotId => `spot-${role.toLowerCase()}` as SpotId;

export const wantsPass = (from: string, act: number): DrillWant & { kind: 'passArrives' } => ({
  kind: 'passArrives',
  spot: spot(from),
  act: `act-${act}` as ActId,
});

export const wantsLevel = (
  role: string,
  atLine: LineId,
  withinM: number,
): DrillWant & { kind: 'levelWithPuck' } => ({
  kind: 'levelWithPuck',
  spot: spot(role),
  atLine,
  withinM,
});

/** X1 is caught. */
export const wantsCaught = (by: string, line: LineId): DrillWant & { kind: 'caughtBefore' } => ({
  kind: 'caughtBefore',
  spot: spot('X1'),
  by: spot(by),
  line,
});
