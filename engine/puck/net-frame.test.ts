import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evenly } from '../../test/evenly.ts';
import { rinkOf } from '../rink/rink-of.ts';
import { metresFromBars, referenceHitM } from './net-frame.reference.ts';
import { firstFrameHit, frameCorners } from './net-frame.ts';
import { NET_RESTITUTION_RATIO, POST_RESTITUTION_RATIO } from './net-rows.ts';
import { puckAt, puckPath } from './path.ts';
import { pathOffNets } from './path-off-nets.ts';
import { puckModelOf } from './puck-model.ts';

const rink = rinkOf({ preset: '200x85ft' });
const model = puckModelOf();
const net = rink.nets[1]!;
const { postDiameterM } = rink.layout;
const corners = frameCorners(net, postDiameterM);
const apartM = model.puckRadiusM + postDiameterM / 2;
const nets = { nets: rink.nets, postDiameterM };
const angle = evenly(-Math.PI, Math.PI);
const near = fc
  .tuple(evenly(-4, 2.5), evenly(-3, 3))
  .map(([x, y]) => ({ xM: net.atM.xM + x, yM: y }))
  .filter(point => metresFromBars(point, corners) > apartM);

describe('a puck against the frame of a net', () => {
  it('meets it where a walk of a millimetre at a time does', () => {
    fc.assert(
      fc.property(near, angle, (fromM, rad) => {
        const direction = { xM: Math.cos(rad), yM: Math.sin(rad) };
        const hit = firstFrameHit(net, postDiameterM, model.puckRadiusM, fromM, direction, 5);
        const walkedM = referenceHitM(fromM, direction, 5, corners, apartM);
        // A graze of less than a millimetre the walk may step over.
        if (hit === undefined) expect(walkedM).toBeNaN();
        else if (!Number.isNaN(walkedM)) expect(Math.abs(hit.wayM - walkedM)).toBeLessThan(0.06);
        if (hit) {
          const at = {
            xM: fromM.xM + hit.wayM * direction.xM,
            yM: fromM.yM + hit.wayM * direction.yM,
          };
          expect(metresFromBars(at, corners)).toBeCloseTo(apartM, 6);
          expect(direction.xM * hit.normal.xM + direction.yM * hit.normal.yM).toBeLessThan(0);
        }
      }),
      { numRuns: 150, seed: 1 },
    );
  });

  it('never goes through it: at no time is the puck in a bar, nor on the other side of one', () => {
    fc.assert(
      fc.property(near, angle, fc.double({ min: 2, max: 35, noNaN: true }), (fromM, rad, mps) => {
        const free = puckPath(rink.boards, model, fromM, rad, mps);
        const path = pathOffNets(rink.boards, model, free, nets);
        const untilS = Math.min(path.endTimeS, 3);
        for (let s = 0; s <= untilS; s += 0.002) {
          expect(metresFromBars(puckAt(path, s).atM, corners)).toBeGreaterThan(apartM - 1e-6);
        }
      }),
      { numRuns: 15, seed: 2 },
    );
  });

  it('is the same path, not a copy, when no net is in the way', () => {
    const free = puckPath(rink.boards, model, { xM: 0, yM: 0 }, Math.PI / 2, 10, { maxTimeS: 1 });
    expect(pathOffNets(rink.boards, model, free, nets)).toBe(free);
  });

  it.each([
    ['the back', { xM: 2, yM: 0 }, Math.PI, NET_RESTITUTION_RATIO.value],
    ['a side', { xM: net.depthM / 2, yM: 3 }, -Math.PI / 2, NET_RESTITUTION_RATIO.value],
    ['a post, full on', { xM: -3, yM: (net.openingM + postDiameterM) / 2 }, 0, POST_RESTITUTION_RATIO.value],
  ])('comes straight back off %s with its part of the speed', (_, offset, rad, ratio) => {
    const fromM = { xM: net.atM.xM + offset.xM, yM: offset.yM };
    const path = pathOffNets(rink.boards, model, puckPath(rink.boards, model, fromM, rad, 12), nets);
    const [bounce] = path.bounces;
    expect(bounce!.speedAfterMps / bounce!.speedBeforeMps).toBeCloseTo(ratio, 6);
    const later = puckAt(path, bounce!.timeS + 0.05);
    expect(later.velocity.xMps * Math.cos(rad) + later.velocity.yMps * Math.sin(rad)).toBeLessThan(0);
  });

  it('never gains energy at a net, of its way and its spin together: a rigid disc has I = ½mR²', () => {
    fc.assert(
      fc.property(near, angle, fc.double({ min: 2, max: 35, noNaN: true }), (fromM, rad, mps) => {
        const path = pathOffNets(rink.boards, model, puckPath(rink.boards, model, fromM, rad, mps), nets);
        let edgeMps = 0;
        for (const bounce of path.bounces) {
          const before = bounce.speedBeforeMps ** 2 + edgeMps ** 2 / 2;
          edgeMps = model.puckRadiusM * bounce.spinAfterRadps;
          expect(bounce.speedAfterMps ** 2 + edgeMps ** 2 / 2).toBeLessThanOrEqual(before + 1e-9);
        }
      }),
      { numRuns: 100, seed: 3 },
    );
  });
});
