import type { RunEvent } from '../run/run-result.ts';
import type { Outcome } from './outcome.ts';

/**
 * Whether what has happened in a rep already says if the outcome has come in time: the rest of the rep need not be played to
 * count it. False as long as it may still come, or when only the end of the rep tells.
 */
export const isDecided = (outcome: Outcome, events: readonly RunEvent[]): boolean => {
  switch (outcome.kind) {
    case 'caughtBefore':
      return events.some(
        event =>
          (event.kind === 'spotCrosses' && event.spot === outcome.spot && event.line === outcome.line) ||
          (event.kind === 'caught' &&
            event.spot === outcome.spot &&
            (outcome.by === undefined || event.by === outcome.by)) ||
          (event.kind === 'steal' &&
            event.from === outcome.spot &&
            (outcome.by === undefined || event.spot === outcome.by)),
      );
    case 'levelWithPuck':
      return events.some(event => event.kind === 'puckCrosses' && event.line === outcome.atLine);
    case 'cueInTime':
      return events.some(
        event => event.kind === 'actStarts' && event.spot === outcome.spot && event.act === outcome.act,
      );
    case 'passArrives': {
      const at = events.findIndex(
        event => event.kind === 'pass' && event.spot === outcome.spot && event.act === outcome.act,
      );
      const pass = events[at];
      if (pass?.kind !== 'pass') return false;
      return events
        .slice(at + 1)
        .some(
          event =>
            (event.kind === 'receive' && event.from === pass.spot && event.spot === pass.to) ||
            (event.kind === 'intercept' && event.from === pass.spot),
        );
    }
    case 'puckRegained':
    case 'standardHeld':
      return false;
  }
};
