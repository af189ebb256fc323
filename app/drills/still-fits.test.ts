import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { moved } from './edit/laid-elsewhere.ts';
import { anyDrill } from './edit/random-drill.reference.ts';
import { removed } from './edit/removed.ts';
import { everything } from './edit/selection.ts';
import { restacked } from './score/restack.ts';
import { stillFits } from './still-fits.ts';
import { afterWrites } from './write.ts';

const BY_M = { xM: 0.5, yM: 0.25 };

describe('what a hand holds while others work too', () => {
  it('fits the drill it was taken from', () => {
    fc.assert(
      fc.property(anyDrill(), drill => {
        for (const one of everything(drill)) expect(stillFits(drill, moved(drill, [one], BY_M))).toBe(true);
      }),
      { numRuns: 100, seed: 3 },
    );
  });

  it('fits no longer once the thing is gone, be it a skater, a puck, gear or a game', () => {
    fc.assert(
      fc.property(anyDrill(), drill => {
        for (const one of everything(drill)) {
          const left = afterWrites(drill, removed(drill, [one]));
          expect(stillFits(left, moved(drill, [one], BY_M))).toBe(false);
        }
      }),
      { numRuns: 100, seed: 3 },
    );
  });

  it('fits no longer once the act or the stave is gone, and still when another is', () => {
    fc.assert(
      fc.property(anyDrill(), drill => {
        const spots = everything(drill).flatMap(one => (one.kind === 'spot' ? [one.spot] : []));
        const [first, other] = spots;
        fc.pre(first !== undefined && other !== undefined);
        const [act] = Object.keys(drill.spots[first]?.acts ?? {});
        const without = (kept: typeof first) =>
          afterWrites(
            drill,
            removed(
              drill,
              spots.filter(id => id !== kept).map(spot => ({ kind: 'spot', spot })),
            ),
          );
        const stave = restacked(drill, first, spots.length - 1);
        fc.pre(stave.length === 1);
        expect(stillFits(without(first), stave)).toBe(true);
        expect(stillFits(without(other), stave)).toBe(false);
        if (act === undefined) return;
        const cue = [{ path: ['spots', first, 'acts', act, 'cue'], value: { on: 'whistle' } }];
        expect(stillFits(drill, cue)).toBe(true);
        const gone = [{ path: ['spots', first, 'acts', act], value: undefined }];
        expect(stillFits(afterWrites(drill, gone), cue)).toBe(false);
      }),
      { numRuns: 100, seed: 3 },
    );
  });
});
