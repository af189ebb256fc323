import type { CarryOption, PassOption } from '@icewright/engine';
import { type Drawing, drawCarry, drawLane, drawPassLine, polylineOf, sheetPoint } from '@icewright/picture';
import type { FreezeView } from './freeze-view.ts';
import { legsOf } from './options-of.ts';
import { laneWords } from './options-table.tsx';

/** The chosen options on the sheet: lanes clear or ruled, bank passes with their turn at the boards, the way skated. */
export const optionsDrawing =
  (view: FreezeView, options: readonly (PassOption | CarryOption)[]): Drawing =>
  pen => {
    for (const option of options) {
      const legs = legsOf(view, option);
      const [from] = legs;
      const to = legs[legs.length - 1];
      if (!from || !to) continue;
      if (option.kind === 'carry') {
        drawCarry(pen, polylineOf(legs.map(sheetPoint)), 'head');
      } else if (option.kind === 'bank') {
        drawPassLine(pen, legs.map(sheetPoint));
        const turn = sheetPoint(legs[1] ?? to);
        pen.text('label', laneWords(option), turn.x, turn.y + 1.6 * pen.k, { anchor: 'middle' });
      } else {
        const cut = option.margins[0]?.atM;
        drawLane(pen, {
          fromM: from,
          toM: to,
          state: option.lane.band,
          words: laneWords(option),
          ...(option.lane.band === 'shut' && cut ? { cutAtM: cut } : {}),
        });
      }
    }
  };
