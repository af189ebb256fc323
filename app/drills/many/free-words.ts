import type { Drill } from '@icewright/book';
import type { FreeQuantity } from '@icewright/engine';
import { LENGTH_UNIT, type Lengths, lengthNumberSaid, numberSaid } from '../../parts/figures.ts';

/** A quantity that may move, in words and in the unit it is shown in. */
export interface FreeWords {
  /** Within a sentence: "where F3 starts along the sheet". */
  readonly said: string;
  readonly unit: string;
  /** "start F3 at" 10.9. */
  readonly does: string;
  /** On the act that writes it. */
  readonly act: string;
  readonly shown: (value: number) => number;
  readonly figure: (value: number) => string;
}

export function freeWords(free: FreeQuantity, drill: Drill, lengths: Lengths): FreeWords {
  const who = drill.spots[free.spot]?.role ?? '?';
  const lengthUnit = LENGTH_UNIT[lengths];
  const inLengths = (value: number): number =>
    Number(lengthNumberSaid(value, lengths, 3).replace('\u2212', '-'));
  const length = {
    unit: lengthUnit,
    shown: inLengths,
    figure: (value: number) => lengthNumberSaid(value, lengths),
  };
  switch (free.kind) {
    case 'spotAlong':
      return {
        ...length,
        said:
          free.way === 'lengthwise' ? `where ${who} starts along the sheet` : `where ${who} starts across it`,
        does: `${who} starts at`,
        act: `Move ${who} there`,
      };
    case 'gap':
      return { ...length, said: `the gap of ${who}`, does: `${who} keeps a gap of`, act: 'Set it so' };
    case 'delay':
      return {
        said: `how long ${who} waits`,
        unit: 's',
        does: `${who} waits`,
        act: 'Set it so',
        shown: value => value,
        figure: value => numberSaid(value, 2),
      };
    case 'passSpeed':
      return {
        ...length,
        said: `how hard ${who} passes`,
        unit: `${lengthUnit}/s`,
        does: `${who} passes with`,
        act: 'Set it so',
      };
    case 'effort':
      return {
        said: `how hard ${who} skates${ofAct(drill, free)}`,
        unit: '%',
        does: `${who} skates with`,
        act: 'Set it so',
        shown: value => 100 * value,
        figure: value => numberSaid(100 * value, 0),
      };
  }
}

/** Which of several acts, when a spot has more than one that it can be said of. */
function ofAct(drill: Drill, free: Exclude<FreeQuantity, { readonly kind: 'spotAlong' }>): string {
  const acts = Object.entries(drill.spots[free.spot]?.acts ?? {})
    .filter(([, act]) => 'effortRatio' in act)
    .sort(([, a], [, b]) => a.rank - b.rank);
  const at = acts.findIndex(([id]) => id === free.act);
  return acts.length > 1 ? `, act ${at + 1} of ${acts.length}` : '';
}
