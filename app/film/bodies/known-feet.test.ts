import { readFileSync } from 'node:fs';
import type { Game } from '@icewright/book';
import { fitPinsOn, rinkOf } from '@icewright/engine';
import { expect, it } from 'vitest';
import { knownFeet } from './known-feet.ts';

const [frame] = (
  JSON.parse(readFileSync(new URL('../../../fixtures/film-truth/A.json', import.meta.url), 'utf8')) as {
    frames: {
      landmarks: Record<string, [number, number]>;
      skaters: { ice: [number, number]; foot: [number, number] }[];
    }[];
  }
).frames;
const pins = Object.entries(frame!.landmarks).map(([id, [xPx, yPx]]) => ({
  id,
  landmark: id,
  filmPx: { xPx, yPx },
}));
const fitted = fitPinsOn(rinkOf({ preset: '200x85ft' }), pins, 1);
if (fitted.kind !== 'fit') throw new Error('the pins of the drawn film do not fit');

const [one, other] = frame!.skaters;
const followed = {
  frameIndex: [0, 30],
  filmTimeS: [0, 1],
  xM: [other!.ice[0], other!.ice[0]],
  yM: [other!.ice[1], other!.ice[1]],
  sdM: [0.1, 0.1],
  vxMps: [0, 0],
  vyMps: [0, 0],
  sdMps: [0.1, 0.1],
};
const feet = { xPx: one!.foot[0], yPx: one!.foot[1] };
const game = {
  freezes: { a: { film: 'f', frameIndex: 15, skaters: { x: { feet } } } },
  tracks: {
    t: { film: 'f', hands: { h: { frameIndex: 30, feet: { xPx: 7, yPx: 8 } } }, followed },
    u: { film: 'f', hands: {} },
  },
} as unknown as Pick<Game, 'freezes' | 'tracks'>;
const at = (frameIndex: number, film = 'f') =>
  knownFeet(game, { film, frameIndex, filmTimeS: frameIndex / 30 }, fitted.fit);

it('knows who is placed in a freeze of the picture and who is followed through it, where the truth has his feet', () => {
  const [placed, passing] = at(15);
  expect(placed).toEqual(feet);
  expect(Math.hypot(passing!.xPx - other!.foot[0], passing!.yPx - other!.foot[1])).toBeLessThan(2);
  expect(at(15)).toHaveLength(2);
});

it('goes by the hand where one was put, and knows nobody beyond what is followed, nor in another film', () => {
  expect(at(30)).toEqual([{ xPx: 7, yPx: 8 }]);
  expect(at(16)).toHaveLength(1);
  expect(at(45)).toEqual([]);
  expect(at(15, 'g')).toEqual([]);
});
