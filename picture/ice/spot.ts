import type { IcePoint, Side } from '@icewright/engine';
import type { LetteringName } from '../lettering.ts';
import type { MarkName } from '../marks.ts';
import { isSmall, SMALL_FROM_K } from '../pen/is-small.ts';
import type { Pen } from '../pen/pen.ts';
import { type SheetPoint, sheetPoint } from './sheet-point.ts';

/** What stands at a place, as the drawing needs it; a spot of a drill and a skater of a freeze both fit. */
export interface SpotPicture {
  readonly side: Side;
  readonly kind: 'skater' | 'goalie' | 'coach';
  readonly role: string;
  readonly atM: IcePoint;
  readonly facingRad: number;
  readonly waitingCount?: number;
  readonly ghost?: boolean;
  readonly selected?: boolean;
}

const DISC_M = 0.86;
const RING_M = 0.78;
const GHOST_M = 0.8;
const HALO_M = 1.02;
/** The clear ring about a disc grows less than the disc, or it would hide the play on a small drawing. */
const HALO_GROWS_M = 0.86;
const SELECTED_M = 1.28;
const QUEUE_M = 0.72;
const QUEUE_EVERY_M = 0.62;
const QUEUE_SHOWN = 3;
const GOALIE_M = 1;

export const drawSpot = (pen: Pen, spot: SpotPicture): void => {
  const at = sheetPoint(spot.atM);
  if (spot.kind === 'coach') drawCoach(pen, at, spot);
  else if (spot.kind === 'goalie') drawGoalie(pen, at, spot);
  else drawSkater(pen, at, spot);
};

/** The others of the line stand behind the first, away from where she faces. Drawn before the lines, which go over it. */
export const drawWaiting = (pen: Pen, spot: SpotPicture): void => {
  const at = sheetPoint(spot.atM);
  const count = spot.waitingCount ?? 0;
  if (count < 1) return;
  const k = pen.k;
  const backRad = -spot.facingRad + Math.PI;
  const shown = queueShown(count, k);
  for (let place = shown; place >= 1; place--) {
    const reach = QUEUE_EVERY_M * k * place;
    pen.circle(
      spot.side === 'us' ? 'queueUs' : 'queueThem',
      at.x + Math.cos(backRad) * reach,
      at.y + Math.sin(backRad) * reach,
      QUEUE_M * k,
    );
  }
};

/** How far behind the first of a line its number stands, ice metres at k = 1; 0 when nobody waits. */
export const waitingLabelReachM = (waitingCount: number, k: number): number =>
  waitingCount < 1 ? 0 : QUEUE_EVERY_M * queueShown(waitingCount, k) + QUEUE_M + 0.85;

/** How many of those who wait are drawn: in a small drawing, whose marks are larger than true, one, and the count says the rest. */
export const queueShown = (waitingCount: number, k: number): number =>
  Math.min(waitingCount, k >= SMALL_FROM_K ? 1 : QUEUE_SHOWN);

/** Radius of the mark, where routes begin and passes end. */
export const spotRadiusM = (spot: Pick<SpotPicture, 'kind' | 'side'>, k: number): number =>
  (spot.kind === 'coach' ? 1.15 : spot.kind === 'goalie' ? GOALIE_M : HALO_M) * k;

const drawSkater = (pen: Pen, at: SheetPoint, spot: SpotPicture): void => {
  const k = pen.k;
  drawWaitingLabel(pen, at, spot);
  pen.circle('halo', at.x, at.y, HALO_M + (k - 1) * HALO_GROWS_M);
  if (spot.selected) pen.circle('selected', at.x, at.y, SELECTED_M * k);
  const mark: MarkName = spot.ghost ? 'discGhost' : spot.side === 'us' ? 'discUs' : 'discThem';
  pen.circle(mark, at.x, at.y, (spot.ghost ? GHOST_M : spot.side === 'us' ? DISC_M : RING_M) * k);
  drawRole(pen, spot.role, at, spot.side === 'us' && !spot.ghost ? 'roleUs' : 'roleThem');
};

const drawWaitingLabel = (pen: Pen, at: SheetPoint, spot: SpotPicture): void => {
  const count = spot.waitingCount ?? 0;
  if (count < 1) return;
  const reach = waitingLabelReachM(count, pen.k) * pen.k;
  pen.text(
    'labelBold',
    `×${count}`,
    at.x - Math.cos(spot.facingRad) * reach,
    at.y + Math.sin(spot.facingRad) * reach,
    {
      anchor: 'middle',
      drop: 0.3 * pen.k,
      ...(isSmall(pen) ? { size: 1.05 * pen.k, drop: 0.36 * pen.k } : {}),
    },
  );
};

const drawRole = (pen: Pen, role: string, at: SheetPoint, lettering: LetteringName): void => {
  const full = (role.length > 1 ? 1 : 1.12) * pen.k;
  const room = 1.36 * pen.k;
  const size = Math.min(full, (full * room) / Math.max(pen.measure(lettering, role, full), 1e-6));
  pen.text(lettering, role, at.x, at.y, { anchor: 'middle', size, drop: 0.355 * size });
};

/** Half disc like a crease: flat side to the net behind, round side the way she faces. */
const drawGoalie = (pen: Pen, at: SheetPoint, spot: SpotPicture): void => {
  const radius = GOALIE_M * pen.k;
  const turnRad = -spot.facingRad;
  if (spot.selected) pen.circle('selected', at.x, at.y, SELECTED_M * pen.k);
  pen.path(spot.ghost ? 'discGhost' : spot.side === 'us' ? 'discUs' : 'discThem', sink => {
    sink.arc(at.x, at.y, radius, turnRad - Math.PI / 2, turnRad + Math.PI / 2);
    sink.closePath();
  });
  const size = 0.95 * pen.k;
  const reach = 0.41 * pen.k;
  pen.text(
    spot.side === 'us' && !spot.ghost ? 'roleUs' : 'roleThem',
    spot.role === '' ? 'G' : spot.role,
    at.x + Math.cos(turnRad) * reach,
    at.y + Math.sin(turnRad) * reach,
    { anchor: 'middle', size, drop: 0.35 * size },
  );
};

const drawCoach = (pen: Pen, at: SheetPoint, spot: SpotPicture): void => {
  if (spot.selected) pen.circle('selected', at.x, at.y, SELECTED_M * pen.k);
  pen.text('coach', 'Co', at.x, at.y, { anchor: 'middle', drop: 0.42 * pen.k });
};
