import type { Standard } from '../habit/standard.ts';
import type { LineId } from '../rink/lines.ts';
import type { Side } from '../units/ends.ts';
import type { ActId, SpotId } from '../units/ids.ts';

/** Something that can be wanted of a rep, and that a rep then has or has not. Metres. */
export type Outcome =
  /** Somebody, or `by`, is within a lunge of that skater before that skater is over the line. */
  | { readonly kind: 'caughtBefore'; readonly spot: SpotId; readonly by?: SpotId; readonly line: LineId }
  /** The pass of that act is received by whom it was meant for. */
  | { readonly kind: 'passArrives'; readonly spot: SpotId; readonly act: ActId }
  /** A side that has lost the puck, or has not had it, has it before it is over the line. */
  | { readonly kind: 'puckRegained'; readonly side: Side; readonly beforeLine: LineId }
  /** When the puck crosses the line the skater is as far along its way, less `withinM`. */
  | {
      readonly kind: 'levelWithPuck';
      readonly spot: SpotId;
      readonly atLine: LineId;
      readonly withinM: number;
    }
  /** The standard of a habit holds in the picture that is frozen at its trigger. */
  | { readonly kind: 'standardHeld'; readonly standard: Standard }
  /** The act starts, and its cue does not come while the one before is still under way. */
  | { readonly kind: 'cueInTime'; readonly spot: SpotId; readonly act: ActId };

/**
 * How one rep came out. `yes`: as wanted. `other`: it came, but too late, or the other side had it. `no`: it did not come.
 * `unasked`: the rep never came to where it is asked, as when the puck does not get to the line.
 */
export type Verdict = 'yes' | 'other' | 'no' | 'unasked';

/** The line of an outcome that has one, else undefined. */
export const findLineOf = (outcome: Outcome): LineId | undefined => {
  switch (outcome.kind) {
    case 'caughtBefore':
      return outcome.line;
    case 'puckRegained':
      return outcome.beforeLine;
    case 'levelWithPuck':
      return outcome.atLine;
    default:
      return undefined;
  }
};

/** The same at another line; an outcome without a line stays as it is. */
export const atOtherLine = (outcome: Outcome, line: LineId): Outcome => {
  switch (outcome.kind) {
    case 'caughtBefore':
      return { ...outcome, line };
    case 'puckRegained':
      return { ...outcome, beforeLine: line };
    case 'levelWithPuck':
      return { ...outcome, atLine: line };
    default:
      return outcome;
  }
};

/** The same thing wanted of the same people, whatever its line. */
export const isSameWant = (a: Outcome, b: Outcome): boolean => wantKeyOf(a) === wantKeyOf(b);

/** Names a want whatever its line: for menus. */
export const wantKeyOf = (outcome: Outcome): string => {
  switch (outcome.kind) {
    case 'caughtBefore':
      return `${outcome.kind} ${outcome.spot} ${outcome.by ?? ''}`;
    case 'puckRegained':
      return `${outcome.kind} ${outcome.side}`;
    case 'levelWithPuck':
      return `${outcome.kind} ${outcome.spot}`;
    case 'standardHeld':
      return `${outcome.kind} ${JSON.stringify(outcome.standard)}`;
    default:
      return `${outcome.kind} ${outcome.spot} ${outcome.act}`;
  }
};
