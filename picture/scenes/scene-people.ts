import type { SpotPicture } from '../ice/spot.ts';
import { drawSpot } from '../ice/spot.ts';
import type { Pen } from '../pen/pen.ts';

type Rest = Partial<Omit<SpotPicture, 'role' | 'atM'>>;

/** Someone on a strip of ice; y points up, as on the sheet. */
export const someone = (pen: Pen, role: string, xM: number, yM: number, rest: Rest = {}): void =>
  drawSpot(pen, {
    side: role.startsWith('X') ? 'them' : 'us',
    kind: 'skater',
    facingRad: 0,
    ...rest,
    role,
    atM: { xM, yM },
  });
