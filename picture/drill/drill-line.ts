import type { ActId, PassWay, Side, SpotId } from '@icewright/engine';
import type { LineEnd } from '../ice/line-marks.ts';
import type { SheetPoint } from '../ice/sheet-point.ts';

/** One act as a line on the ice, ready to be drawn by any pen. */
export type DrillLine = { readonly spot: SpotId; readonly act: ActId } & (
  | {
      readonly kind: 'route';
      readonly style: 'skate' | 'carry' | 'chase';
      readonly backward: boolean;
      readonly points: readonly SheetPoint[];
      readonly end: LineEnd;
      /** A ring where the line changes between forward and backward. */
      readonly pivot: boolean;
      /** Where it is one, two, … seconds after the act began, from the speed profile; empty when none is known. */
      readonly ticks: readonly SheetPoint[];
      /** A word that goes with it: whom it chases, what gap it keeps. */
      readonly words: string;
    }
  | { readonly kind: 'pass'; readonly legs: readonly SheetPoint[]; readonly way: PassWay }
  | { readonly kind: 'shot'; readonly from: SheetPoint; readonly to: SheetPoint }
  | { readonly kind: 'gap'; readonly from: SheetPoint; readonly to: SheetPoint; readonly words: string }
  | {
      readonly kind: 'chaseSign';
      readonly from: SheetPoint;
      readonly to: SheetPoint;
      readonly words: string;
      readonly side: Side;
    }
);
