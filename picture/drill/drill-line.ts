import type { ActId, PassWay, SpotId } from '@icewright/engine';
import type { LineEnd } from '../ice/line-marks.ts';
import type { SheetPoint } from '../ice/sheet-point.ts';

/** One act as a line or a sign on the ice, ready to be drawn by any pen. */
export type DrillLine = { readonly spot: SpotId; readonly act: ActId } & (
  | RouteLine
  | PassLine
  | { readonly kind: 'shot'; readonly from: SheetPoint; readonly to: SheetPoint }
  | { readonly kind: 'gap'; readonly from: SheetPoint; readonly to: SheetPoint; readonly words: string }
  | ChaseSign
  | SignLine
);

export interface RouteLine {
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
  /** Of a way with the puck that begins without it: where the puck comes to her. Until there it is drawn as skating. */
  readonly puckComesAt?: SheetPoint;
  /** What lies at its end: a puck that is picked up, or one that the stick reaches for. */
  readonly puckAtEnd?: { readonly way: 'pickUp' | 'stick'; readonly at: SheetPoint };
  /** Direction of the lane that a bar is set across, where it ends. */
  readonly laneRad?: number;
}

export interface PassLine {
  readonly kind: 'pass';
  readonly legs: readonly SheetPoint[];
  readonly way: PassWay;
  /** How far of it is in the air, metres from its start, and where its fan reaches at the taking stick (95 %). */
  readonly airM?: number;
  readonly halfWedgeM?: number;
  /** Of a pass that was cut: its way from there on as it was meant. */
  readonly meant?: readonly SheetPoint[];
  readonly words: string;
}

/** Whom somebody goes for, before it is played: the way is his choice. */
export interface ChaseSign {
  readonly kind: 'chaseSign';
  readonly from: SheetPoint;
  readonly to: SheetPoint;
  readonly words: string;
  /** A stick to the puck at its end. */
  readonly takes: boolean;
}

/** What is done where she is: which way it points is clockwise on the page. */
export interface SignLine {
  readonly kind: 'sign';
  readonly sign: 'pivot' | 'face' | 'left' | 'stop';
  readonly at: SheetPoint;
  readonly turnRad: number;
  readonly words: string;
}
