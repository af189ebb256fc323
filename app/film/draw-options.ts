import type { CarryOption, PassOption } from '@icewright/engine';
import { type Drawing, drawCarry, drawLane, drawPassLine, polylineOf, sheetPoint } from '@icewright/picture';
import type { FreezeView } from './freeze-view.ts';
import { legsOf } from './options-of.ts';

/** The chosen options on the sheet, without words: lanes clear or ruled, bank passes with their turn, the way skated. */
export const drawOptions = (
  pen: Parameters<Drawing>[0],
  view: FreezeView,
  options: readonly (PassOption | CarryOption)[],
): void => {
  for (const option of options) {
    const legs = legsOf(view, option);
    const [from] = legs;
    const to = legs[legs.length - 1];
    if (!from || !to) continue;
    if (option.kind === 'carry') {
      drawCarry(pen, polylineOf(legs.map(sheetPoint)), 'head');
    } else if (option.kind === 'bank') {
      drawPassLine(pen, legs.map(sheetPoint));
    } else {
      const cut = option.margins[0]?.atM;
      drawLane(pen, {
        fromM: from,
        toM: to,
        state: option.lane.band,
        words: '',
        ...(option.lane.band === 'shut' && cut ? { cutAtM: cut } : {}),
      });
    }
  }
};
