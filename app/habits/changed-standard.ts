import type { LineId, Standard, Trigger, Who, Whom, Zone } from '@icewright/engine';
import type { MustBe } from './standard-words.ts';

/** A standard with one of its parts chosen anew; the parts it keeps are kept, the parts it lacked get a plain start. */

export function withMustBe(standard: Standard, kind: MustBe): Standard {
  if (kind === 'numbers') {
    return standard.kind === 'numbers'
      ? standard
      : { kind, zone: 'house', atLeastCount: 2, when: standard.when };
  }
  return standard.kind === 'numbers'
    ? { kind, who: 'firstForwardBack', whom: 'puck', withinM: 1, when: standard.when }
    : { ...standard, kind };
}

export const withWho = (standard: Standard, who: Who): Standard =>
  standard.kind === 'numbers' ? standard : { ...standard, who };

export const withWhom = (standard: Standard, whom: Whom): Standard =>
  standard.kind === 'numbers' ? standard : { ...standard, whom };

export const withLimit = (standard: Standard, withinM: number): Standard =>
  standard.kind === 'numbers' ? standard : { ...standard, withinM };

export const withZone = (standard: Standard, zone: Zone): Standard =>
  standard.kind === 'numbers' ? { ...standard, zone } : standard;

export const withCount = (standard: Standard, atLeastCount: number): Standard =>
  standard.kind === 'numbers' ? { ...standard, atLeastCount } : standard;

export function withTrigger(standard: Standard, at: Trigger['at']): Standard {
  const line = standard.when.at === 'puckCrosses' ? standard.when.line : 'blueLineMinusX';
  return { ...standard, when: at === 'puckCrosses' ? { at, line } : { at } };
}

export const withLine = (standard: Standard, line: LineId): Standard => ({
  ...standard,
  when: { at: 'puckCrosses', line },
});
