import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { frameIndexOf } from '../frame-index.ts';
import type { OpenFilm } from '../open-film.ts';
import { keyDistanceOf, wholePiecesOf } from './whole-pieces.ts';

const FRAME_S = 1001 / 30_000;

/** A film that has nothing but key pictures after so many frames each. */
const filmOf = (distances: readonly number[], firstS: number): OpenFilm => {
  const frameCount = distances.reduce((sum, one) => sum + one, 0);
  let at = 0;
  const keysS = distances.map(one => {
    const timeS = firstS + at * FRAME_S;
    at += one;
    return timeS;
  });
  const packetOf = (timestamp: number | undefined) => (timestamp === undefined ? null : { timestamp });
  const packets = {
    getKeyPacket: async (timeS: number) => packetOf(keysS.findLast(one => one <= timeS)),
    getNextKeyPacket: async ({ timestamp }: { timestamp: number }) =>
      packetOf(keysS.find(one => one > timestamp)),
  };
  const index = frameIndexOf(
    Array.from({ length: frameCount }, (_, i) => firstS + i * FRAME_S),
    FRAME_S,
  );
  return { index, packets } as unknown as OpenFilm;
};

const distances = fc.array(fc.integer({ min: 1, max: 300 }), { minLength: 1, maxLength: 40 });

describe('the whole film in pieces', () => {
  it('holds each frame once, begins at key pictures only, and no piece takes two pieces and a key distance', () => {
    return fc.assert(
      fc.asyncProperty(distances, fc.integer({ min: 1, max: 900 }), fc.nat(10), async (of, about, firstS) => {
        const pieces = await wholePiecesOf(filmOf(of, firstS), about);
        const starts = of.map((_, i) => of.slice(0, i).reduce((sum, one) => sum + one, 0));
        const frameCount = starts.at(-1)! + of.at(-1)!;
        expect(pieces.map(one => one.fromFrame)).toEqual([
          0,
          ...pieces.slice(0, -1).map(one => one.toFrame + 1),
        ]);
        expect(pieces.at(-1)!.toFrame).toBe(frameCount - 1);
        for (const { fromFrame, toFrame } of pieces) {
          expect(starts).toContain(fromFrame);
          expect(toFrame - fromFrame + 1).toBeLessThan(2 * about + Math.max(...of));
        }
      }),
    );
  });

  it('knows how far key pictures lie apart', async () => {
    expect(await keyDistanceOf(filmOf(Array(20).fill(250), 2.5))).toBe(250);
    // One in 2,000 frames that comes much later than the others is not the film's way.
    expect(await keyDistanceOf(filmOf([30, 30, 400, ...Array(60).fill(30)], 0))).toBe(30);
    expect(await keyDistanceOf(filmOf([120], 1.47))).toBe(120);
  });
});
