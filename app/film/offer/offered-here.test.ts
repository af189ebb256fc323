import type { Freeze } from '@icewright/book';
import {
  filmFromIce,
  fitPinsOn,
  landmarksOf,
  type OfferedPin,
  rinkOf,
  turnedLandmark,
} from '@icewright/engine';
import { describe, expect, it } from 'vitest';
import { freezeViewOf, type PinView } from '../freeze-view.ts';
import { heldWith, offeredHere, turnedFit } from './offered-here.ts';
import { inFilmPixels, smallPicture } from './small-picture.ts';

const RINK = rinkOf({ preset: '200x85ft' });
const placeOf = new Map(landmarksOf(RINK).map(({ id, atM }) => [id as string, atM]));

// A camera straight above, 10 px a metre: what it draws is told by hand.
const drawn = (landmark: string) => {
  const { xM, yM } = placeOf.get(landmark)!;
  return { xPx: 640 + 10 * xM, yPx: 360 - 10 * yM };
};
const OFFERED: readonly OfferedPin[] = [
  'endSpot-x+y',
  'endSpot-x-y',
  'neutralSpot+x+y',
  'neutralSpot+x-y',
  'centreLine.centreCircle+y',
].map(landmark => ({ landmark, filmPx: drawn(landmark), sdPx: 0.3 }));
const fitted = fitPinsOn(
  RINK,
  OFFERED.map(({ landmark, filmPx }) => ({ id: landmark, landmark, filmPx })),
  1,
);
if (fitted.kind === 'refused') throw new Error(fitted.reason);
const FIT = fitted.fit;

const pin = (landmark: string, at = drawn(landmark), number = 1): PinView => ({
  id: landmark,
  number,
  landmark,
  words: landmark,
  at,
  iceM: placeOf.get(landmark)!,
  leftOut: false,
  disagrees: false,
});
const beside = (pins: readonly PinView[]) => ({ pins, freeze: { clickSdPx: 1 } as never });

describe('an offer beside the pins that are there', () => {
  it('adds those that are not pinned yet', () => {
    const { adds, disagree } = offeredHere(OFFERED, FIT, false, beside([pin('endSpot-x+y')]));
    expect(adds.map(({ landmark }) => landmark)).not.toContain('endSpot-x+y');
    expect(adds.length).toBe(4);
    expect(disagree).toEqual([]);
  });

  it('names the pin that lies elsewhere, and adds nothing when most of them do', () => {
    const wrong = pin('endSpot+x+y', { xPx: 700, yPx: 100 }, 2);
    const one = offeredHere(OFFERED, FIT, false, beside([pin('endSpot-x+y'), pin('endSpot-x-y'), wrong]));
    expect(one.disagree).toEqual([wrong]);
    expect(one.adds.length).toBe(3);
    expect(offeredHere(OFFERED, FIT, false, beside([wrong])).adds).toEqual([]);
    // One that is not counted is nobody's witness.
    expect(offeredHere(OFFERED, FIT, false, beside([{ ...wrong, leftOut: true }])).adds.length).toBe(5);
  });

  it('turned round, names every mark by the half turn, and draws it at the same pixel', () => {
    const { adds } = offeredHere(OFFERED, FIT, true, beside([]));
    expect(adds.map(({ landmark }) => landmark).sort()).toEqual(
      OFFERED.map(({ landmark }) => turnedLandmark(landmark)).sort(),
    );
    for (const { landmark, at } of adds) {
      const px = filmFromIce(turnedFit(FIT), placeOf.get(landmark)!)!;
      expect(px.xPx).toBeCloseTo(at.xPx, 6);
      expect(px.yPx).toBeCloseTo(at.yPx, 6);
    }
    expect(turnedLandmark(turnedLandmark('hashEnd+x-y.goalSide.boardsSide'))).toBe(
      'hashEnd+x-y.goalSide.boardsSide',
    );
  });
});

describe('a picture made smaller', () => {
  it('is left alone when it is small, and keeps its colours and places when it is not', () => {
    const width = 2560;
    const data = new Uint8ClampedArray(4 * width * 1440);
    for (let y = 0; y < 1440; y++)
      for (let x = 0; x < width; x++) data[4 * (y * width + x)] = x < 1000 ? 200 : 40;
    const small = smallPicture({ data, width, height: 1440 } as ImageData);
    expect([small.widthPx, small.heightPx, small.filmPerPx]).toEqual([1280, 720, 2]);
    const redAt = (x: number) => small.rgba[4 * (300 * 1280 + x)];
    expect([redAt(499), redAt(500)]).toEqual([200, 40]);
    const same = { data: data.subarray(0, 4 * 640 * 360), width: 640, height: 360 } as ImageData;
    expect(smallPicture(same).rgba).toBe(same.data);
  });

  it('gives an offer that lies on the film’s own pixels again', () => {
    const { pins, fit } = inFilmPixels({ pins: OFFERED, fit: FIT }, 2);
    for (const { landmark, filmPx } of pins) {
      expect(filmPx.xPx).toBe(2 * drawn(landmark).xPx);
      expect(filmFromIce(fit, placeOf.get(landmark)!)!.yPx).toBeCloseTo(2 * drawn(landmark).yPx, 6);
    }
  });
});

describe('how well an offer would hold the picture', () => {
  const freeze = {
    pins: {},
    skaters: {},
    picture: { widthPx: 1280, heightPx: 720 },
    clickSdPx: 1,
  } as unknown as Freeze;
  const view = { freeze, rink: RINK, pins: [] };
  const { adds } = offeredHere(OFFERED, FIT, false, view);

  it('is what stands once the same pins are accepted, whichever way the ends are turned', () => {
    const accepted = Object.fromEntries(
      adds.map(({ landmark, at }, i) => [i, { landmark, at, leftOut: false }]),
    );
    const stands = freezeViewOf({ ...freeze, pins: accepted } as Freeze, RINK).held!;
    expect(heldWith(adds, view)).toEqual(stands);
    const turned = heldWith(offeredHere(OFFERED, FIT, true, view).adds, view)!;
    expect(turned.worstM).toBeCloseTo(stands.worstM, 6);
  });

  it('tells the worst place in view too: far from pins on one side it is much worse than the middle', () => {
    const held = heldWith(adds, view)!;
    // From above the same pixel is the same error all over; what pins between −21 and +7 m leave open grows towards +30 m.
    expect(held.worstM).toBeGreaterThan(2 * Math.max(held.alongM, held.acrossM));
    expect(heldWith(adds.slice(0, 2), view)).toBeUndefined();
  });
});
