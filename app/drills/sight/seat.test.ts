import {
  levelOf,
  type Playable,
  playableOf,
  type Run,
  rinkOf,
  runDrill,
  type SpotId,
} from '@icewright/engine';
import fc from 'fast-check';
import { PerspectiveCamera, Vector3 } from 'three';
import { describe, expect, it } from 'vitest';
import { BENCH_EYES_M, eyeHeightM } from './body-rows.ts';
import { aimCamera, PICTURE_HEIGHT_RAD } from './camera.ts';
import { clockOf, inViewOf } from './in-view.ts';
import { type Eye, eyeOf } from './seat.ts';

const rink = rinkOf({ preset: '200x85ft' });
const F1 = 'f1' as SpotId;
const X1 = 'x1' as SpotId;

const run: Run = (() => {
  const spot = (role: string, side: 'us' | 'them', xM: number, yM: number, facingRad: number) => ({
    rank: 0,
    side,
    kind: 'skater' as const,
    role,
    atM: { xM, yM },
    facingRad,
    waitingCount: 0,
    acts: {},
  });
  const playable = playableOf(
    {
      spots: { [F1]: spot('F1', 'us', 0, 0, 0), [X1]: spot('X1', 'them', 10, 10, Math.PI) },
      pucks: { p: { atM: { xM: 0, yM: -8 }, count: 1 } },
      gear: {},
    },
    rink,
    levelOf('collegeWomen'),
  );
  return runDrill(playable as Playable);
})();

describe('from where it is looked', () => {
  it('a skater looks where she faces, or at the puck, from her own height', () => {
    const ahead = eyeOf({ from: 'skater', spot: F1, looks: 'ahead' }, rink, run, 0, 'collegeWomen');
    expect(ahead).toMatchObject({ atM: { xM: 0, yM: 0 }, turnRad: 0, zM: eyeHeightM('collegeWomen') });
    const puck = eyeOf({ from: 'skater', spot: F1, looks: 'puck' }, rink, run, 0, 'collegeWomen');
    expect(puck.turnRad).toBeCloseTo(-Math.PI / 2, 12);
    expect(Math.tan(puck.downRad)).toBeCloseTo(eyeHeightM('collegeWomen') / 8, 12);
  });

  it('the bench is outside the boards on the bench side, over their top', () => {
    const bench = eyeOf({ from: 'bench' }, rink, run, 0, 'pro');
    expect(bench.atM.yM).toBeGreaterThan(rink.boards.widthM / 2);
    expect(BENCH_EYES_M.value).toBeGreaterThan(rink.layout.boardHeightM);
  });

  it('says who is in the picture, how far and at what hour', () => {
    const eye = eyeOf({ from: 'skater', spot: F1, looks: 'ahead' }, rink, run, 0, 'collegeWomen');
    const view = inViewOf(run, 0, eye, Math.PI / 3, F1);
    expect(view.map(each => [each.spot, each.isSeen, clockOf(each.roundRad)])).toEqual([
      ['puck', false, 3],
      [X1, true, 11],
    ]);
    expect(view[1]!.awayM).toBeCloseTo(Math.hypot(10, 10), 12);
    expect([0, Math.PI / 2, -Math.PI / 2, Math.PI].map(clockOf)).toEqual([12, 9, 3, 6]);
  });
});

describe('the camera', () => {
  /** The pinhole camera by hand (textbook: u = f·x/z): right, up and depth of a point from an eye, no library. */
  const byHand = (eye: Eye, xM: number, yM: number, zM: number): { u: number; v: number; depth: number } => {
    const [ct, st, cd, sd] = [
      Math.cos(eye.turnRad),
      Math.sin(eye.turnRad),
      Math.cos(eye.downRad),
      Math.sin(eye.downRad),
    ];
    const [x, y, z] = [xM - eye.atM.xM, yM - eye.atM.yM, zM - eye.zM];
    const ahead = x * ct + y * st;
    const depth = ahead * cd - z * sd;
    const focal = 1 / Math.tan(PICTURE_HEIGHT_RAD / 2);
    return { u: (focal * (x * st - y * ct)) / depth, v: (focal * (ahead * sd + z * cd)) / depth, depth };
  };

  it('draws a point where the pinhole law puts it', () => {
    const metre = fc.double({ min: -30, max: 30, noNaN: true });
    fc.assert(
      fc.property(
        metre,
        metre,
        metre,
        metre,
        fc.double({ min: -3, max: 3, noNaN: true }),
        (ex, ey, x, y, turnRad) => {
          const eye: Eye = { atM: { xM: ex, yM: ey }, zM: 1.6, turnRad, downRad: 0.2 };
          const hand = byHand(eye, x, y, 0.5);
          fc.pre(hand.depth > 0.5);
          const camera = new PerspectiveCamera();
          aimCamera(camera, eye, 16 / 9);
          const drawn = new Vector3(x, 0.5, -y).project(camera);
          expect(drawn.x * (16 / 9)).toBeCloseTo(hand.u, 8);
          expect(drawn.y).toBeCloseTo(hand.v, 8);
        },
      ),
    );
  });
});
