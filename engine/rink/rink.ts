import type { IcePoint } from '../units/points.ts';
import type { Row } from '../units/provenance.ts';
import type { Boards } from './boards.ts';
import type { RinkCode } from './choice.ts';
import type { LineId } from './lines.ts';

/**
 * A sheet as data. The frame is always that of the whole sheet: origin at its centre spot, also on half ice and cross
 * ice, where only `area` is used. Metres.
 */
export interface Rink {
  readonly code: RinkCode;
  /** The real boards. Half and cross ice keep them: a divider is not a board. */
  readonly boards: Boards;
  /** The part in use. On full ice the bounding rectangle of the boards. */
  readonly area: IceArea;
  readonly layout: RinkLayout;
  readonly lines: Readonly<Record<LineId, RinkLine>>;
  readonly nets: readonly Net[];
  /** Padded dividers that close half or cross ice. */
  readonly dividers: readonly Divider[];
  readonly benches: readonly Bench[];
  /** Every number of the layout with its source. */
  readonly rows: readonly Row[];
}

export interface IceArea {
  readonly minXM: number;
  readonly maxXM: number;
  readonly minYM: number;
  readonly maxYM: number;
}

/** A line across the sheet: its centre and edges, ascending in x, and half its length from board to board. */
export interface RinkLine {
  readonly id: LineId;
  readonly centreXM: number;
  readonly minXM: number;
  readonly maxXM: number;
  readonly halfSpanM: number;
  readonly colour: 'red' | 'blue';
}

/** A goal: middle of the goal line, facing out of the net. */
export interface Net {
  readonly atM: IcePoint;
  readonly facingRad: number;
  readonly openingM: number;
  readonly depthM: number;
  readonly small: boolean;
}

export interface Divider {
  readonly fromM: IcePoint;
  readonly toM: IcePoint;
}

/** A bench along the side boards, outside the ice: +y for the teams, −y for penalties and the timekeeper. */
export interface Bench {
  readonly kind: 'team' | 'penalty' | 'timekeeper';
  readonly fromXM: number;
  readonly toXM: number;
  readonly yM: number;
}

/** Where the markings are, for the +x, +y quarter; the others follow by signs. Metres. */
export interface RinkLayout {
  readonly goalLineXM: number;
  readonly blueLineInnerXM: number;
  readonly blueLineCentreXM: number;
  readonly blueLineOuterXM: number;
  readonly thinLineM: number;
  readonly thickLineM: number;
  readonly neutralSpotM: IcePoint;
  readonly endSpotM: IcePoint;
  readonly centreSpotDiameterM: number;
  readonly spotDiameterM: number;
  readonly spotBarInsetM: number;
  /** Outer edge: the line's width lies inside the radius. */
  readonly circleRadiusM: number;
  /** Hash marks: centre line at ±dx from the spot, from dyFrom (on the circle) to dyTo. */
  readonly hash: { readonly dxM: number; readonly dyFromM: number; readonly dyToM: number };
  /** L marks, distances from the spot's centre; the corner is at (startDx, innerDy). */
  readonly lMark: {
    readonly startDxM: number;
    readonly longM: number;
    readonly innerDyM: number;
    readonly outerDyM: number;
    readonly shortEndDyM: number;
  };
  readonly crease: {
    readonly radiusM: number;
    readonly halfWidthM: number;
    readonly sideM: number;
    /** How far from the goal line the arc meets the side: what is drawn. */
    readonly arcMeetsSideM: number;
    readonly notchFromM: number;
    readonly notchM: number;
  };
  /** Half widths of the restricted area behind the goal; null where the code has none. */
  readonly trapezoid: { readonly goalLineHalfM: number; readonly boardsHalfM: number } | null;
  readonly refCreaseRadiusM: number;
  readonly postCentreYM: number;
  readonly postDiameterM: number;
  readonly netDepthM: number;
  readonly boardHeightM: number;
}
