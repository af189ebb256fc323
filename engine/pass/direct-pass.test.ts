import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evenly } from '../../test/evenly.ts';
import { puckAt, puckPath } from '../puck/path.ts';
import { puckModelOf } from '../puck/puck-model.ts';
import { boardsDistance, boardsOf } from '../rink/boards.ts';
import { isNone } from '../units/none.ts';
import { receiverBladeAt } from './blade.ts';
import { directPass } from './direct-pass.ts';
import type { Receiver } from './pass-parts.ts';

const boards = boardsOf(60.96, 25.908, 8.5344);
const model = puckModelOf();

describe('a direct pass', () => {
  it('meets the blade when the puck is followed, at a given speed and at a given time', () => {
    fc.assert(
      fc.property(
        evenly(-8, 8),
        evenly(-8, 8),
        evenly(-6, 6),
        evenly(-6, 6),
        evenly(7, 22),
        (xM, yM, xMps, yMps, speedMps) => {
          const receiver: Receiver = {
            atM: { xM, yM },
            velocityMps: { xMps, yMps },
            bladeOffsetM: { xM: 0.5, yM: 0.2 },
          };
          const passerM = { xM: -3, yM: 1 };
          const pass = directPass(model, passerM, receiver, { speedMps }, 1);
          if (isNone(pass) || pass.arrivalS === 0) return;
          const path = puckPath(boards, model, passerM, pass.launchRad, speedMps);
          const { atM } = puckAt(path, pass.arrivalS);
          const blade = receiverBladeAt(receiver, pass.arrivalS);
          // A blade that is at the boards by then: the puck has met them, and a direct pass knows none.
          if (boardsDistance(boards, blade) < 0.05) return;
          expect(Math.hypot(atM.xM - blade.xM, atM.yM - blade.yM)).toBeLessThan(2e-7);
          const back = directPass(model, passerM, receiver, { meetAfterS: pass.arrivalS });
          if (isNone(back)) throw new Error(back.reason);
          expect(back.launchSpeedMps).toBeCloseTo(speedMps, 5);
          expect(back.launchRad).toBeCloseTo(pass.launchRad, 7);
        },
      ),
    );
  });

  it('leads a receiver who skates across, and says by how much', () => {
    const receiver: Receiver = {
      atM: { xM: 10, yM: 0 },
      velocityMps: { xMps: 0, yMps: 5 },
      bladeOffsetM: { xM: 0, yM: 0 },
    };
    const pass = directPass(model, { xM: 0, yM: 0 }, receiver, { speedMps: 15 });
    if (isNone(pass)) throw new Error(pass.reason);
    expect(pass.leadM).toBeCloseTo(5 * pass.arrivalS, 9);
    expect(pass.launchRad).toBeGreaterThan(0.3);
  });

  it('says why there is none', () => {
    const receiver: Receiver = {
      atM: { xM: 20, yM: 0 },
      velocityMps: { xMps: 0, yMps: 0 },
      bladeOffsetM: { xM: 0, yM: 0 },
    };
    expect(directPass(model, { xM: 0, yM: 0 }, receiver, { speedMps: 3 })).toEqual({
      kind: 'none',
      reason: 'puckDiesBeforeReceiver',
    });
    const away = { ...receiver, velocityMps: { xMps: 9, yMps: 0 } };
    expect(directPass(model, { xM: 0, yM: 0 }, away, { speedMps: 9 }, 4)).toEqual({
      kind: 'none',
      reason: 'receiverOutrunsPuck',
    });
    expect(directPass(model, { xM: 0, yM: 0 }, receiver, { speedMps: 0 })).toEqual({
      kind: 'none',
      reason: 'noSpeed',
    });
  });
});
