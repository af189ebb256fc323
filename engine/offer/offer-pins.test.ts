import { describe, expect, it } from 'vitest';
import { type Camera, drawnAt, filmFromIceOf } from '../film/camera.reference.ts';
import type { ColourPicture } from '../film/colour-picture.ts';
import { TEST_RINK as RINK } from '../film/pinned-view.reference.ts';
import { landmarksOf } from '../rink/landmarks.ts';
import { rinkOf } from '../rink/rink-of.ts';
import { drawnPicture } from './drawn-picture.reference.ts';
import { offerPins, type PinsOffer } from './offer-pins.ts';
import { turnedLandmark } from './pins-with-ends.ts';

const camera = (panRad: number, tiltRad: number, focalPx: number, placeM: Camera['placeM']): Camera => ({
  placeM,
  panRad,
  tiltRad,
  rollRad: 0.005,
  focalPx,
  widthPx: 1280,
  heightPx: 720,
});
/** Drawn once each: a second's work. */
const drawings = new Map<string, ColourPicture>();
const drawn = (by: Camera, rink = RINK): ColourPicture => {
  const key = JSON.stringify([by, rink.code]);
  const picture = drawings.get(key) ?? drawnPicture(rink, by);
  drawings.set(key, picture);
  return picture;
};
const MIDDLE = camera(-0.1, 0.42, 1500, [2, -32, 15]);
const END = camera(0.6, 0.35, 1600, [-4, -31, 13]);

type Offered = Extract<PinsOffer, { kind: 'offered' }>;
const offered = (offer: PinsOffer): Offered => {
  if (offer.kind === 'none') throw new Error(`nothing was offered: ${offer.reason}`);
  return offer;
};
const placeOf = new Map(landmarksOf(RINK).map(({ id, atM }) => [id, atM]));
/** How far offered pins lie from where the camera that drew the picture puts their landmarks, pixels, the worst. */
const worstPx = ({ pins }: Offered, drawnBy: Camera): number =>
  Math.max(
    ...pins.map(({ landmark, filmPx }) => {
      const { xPx, yPx } = drawnAt(filmFromIceOf(drawnBy), placeOf.get(landmark)!)!;
      return Math.hypot(xPx - filmPx.xPx, yPx - filmPx.yPx);
    }),
  );

describe('pins offered for drawn pictures whose camera is known', () => {
  it.each([
    ['the middle', MIDDLE],
    ['an end', END],
  ])('lie on their landmarks: %s', (_, drawnBy) => {
    const offer = offered(offerPins(drawn(drawnBy), RINK));
    expect(offer.pins.length).toBeGreaterThanOrEqual(6);
    expect(worstPx(offer, drawnBy)).toBeLessThan(1);
    // The fit that accepting them gives draws every other landmark where the camera has it.
    const truth = filmFromIceOf(drawnBy);
    for (const { landmark } of offer.pins) {
      const at = placeOf.get(landmark)!;
      const fitted = drawnAt(offer.fit.filmFromIce, at)!;
      const true_ = drawnAt(truth, at)!;
      expect(Math.hypot(fitted.xPx - true_.xPx, fitted.yPx - true_.yPx)).toBeLessThan(1);
    }
  });

  it('are those of the mirrored sheet when the picture is mirrored', () => {
    const picture = drawn(MIDDLE);
    const names = (offer: Offered) => offer.pins.map(({ landmark }) => landmark).sort();
    const mirrored = offered(offerPins(mirrorOf(picture), RINK));
    const mirroredCamera = {
      ...MIDDLE,
      panRad: -MIDDLE.panRad,
      rollRad: -MIDDLE.rollRad,
      placeM: [-2, -32, 15] as const,
    };
    expect(worstPx(mirrored, mirroredCamera)).toBeLessThan(1);
    expect(names(mirrored).length).toBeGreaterThanOrEqual(6);
  });

  it('ask which end is which, unless the officials’ crease, an earlier camera or a pin tells', () => {
    // From the benches' side no officials' crease is near, and the far one tells.
    const across = camera(Math.PI - 0.1, 0.42, 1500, [2, 32, 15]);
    const told = offered(offerPins(drawn(across), RINK));
    expect(told.ends).toBe('refCrease');
    expect(worstPx(told, across)).toBeLessThan(1);
    const picture = drawn(END);
    const open = offered(offerPins(picture, RINK));
    expect(open.ends).toBe('open');
    const byCamera = offered(offerPins(picture, RINK, { cameraM: { xM: 4, yM: 30 } }));
    expect(byCamera.ends).toBe('earlierPins');
    // The other half of the answer: every landmark is that of the sheet turned by half.
    const [first] = open.pins;
    const { xM, yM } = placeOf.get(first!.landmark)!;
    const same = byCamera.pins.find(({ filmPx }) => filmPx.xPx === first!.filmPx.xPx)!;
    expect(placeOf.get(same.landmark)!.xM).toBeCloseTo(-xM, 9);
    expect(placeOf.get(same.landmark)!.yM).toBeCloseTo(-yM, 9);
    const byPin = offered(
      offerPins(picture, RINK, { pins: [{ iceM: { xM: -xM, yM: -yM }, filmPx: first!.filmPx }] }),
    );
    expect(byPin.ends).toBe('yourPins');
    expect(byPin.pins.map(({ landmark }) => landmark)).toEqual(byCamera.pins.map(({ landmark }) => landmark));
  });
});

describe('one or two pins of the coach are taken as given', () => {
  // By themselves these pictures show one circle and no second spot, or two spots and no circle.
  const CORNER = { ...camera(0.508, 0.501, 2936, [6.49, -34.43, 16.9]) };
  const CENTRE = { ...camera(0.0148, 0.326, 2126, [7.99, -32.59, 12.94]) };
  const pinOn = (landmark: string, drawnBy: Camera, offPx = 1) => {
    const iceM = placeOf.get(landmark as never)!;
    const { xPx, yPx } = drawnAt(filmFromIceOf(drawnBy), iceM)!;
    return { iceM, filmPx: { xPx: Math.round(xPx) + offPx, yPx: Math.round(yPx) - offPx } };
  };

  it.each([
    ['of two views tells which it is', CORNER, 'twoViews', 'hashEnd+x+y.goalSide.middleSide'],
    ['brings to a view what was too little', CENTRE, 'tooLittle', 'centreSpot'],
  ] as const)('one of them %s', (_, drawnBy, reason, landmark) => {
    const picture = drawn(drawnBy);
    expect(offerPins(picture, RINK)).toMatchObject({ kind: 'none', reason });
    const offer = offered(offerPins(picture, RINK, { pins: [pinOn(landmark, drawnBy)] }));
    expect(offer.pins.length).toBeGreaterThanOrEqual(5);
    // The centre spot lies on itself when the sheet is turned: then the ends stay to be asked.
    const worst = Math.min(worstPx(offer, drawnBy), worstPx(turnedOf(offer), drawnBy));
    expect(worst).toBeLessThan(1);
    if (landmark !== 'centreSpot')
      expect([offer.ends, worstPx(offer, drawnBy) < 1]).toEqual(['yourPins', true]);
  });

  it('but one that is wrong makes no other view of a clear picture, and no view of a poor one', () => {
    const wrong = { ...pinOn('endSpot+x+y', END), iceM: placeOf.get('neutralSpot+x+y' as never)! };
    const clear = offered(offerPins(drawn(END), RINK, { pins: [wrong] }));
    expect(Math.min(worstPx(clear, END), worstPx(turnedOf(clear), END))).toBeLessThan(1);
    const poor = { ...pinOn('centreSpot', CENTRE), iceM: placeOf.get('neutralSpot+x+y' as never)! };
    expect(offerPins(drawn(CENTRE), RINK, { pins: [poor] }).kind).toBe('none');
  });
});

const turnedOf = (offer: Offered): Offered => ({
  ...offer,
  pins: offer.pins.map(one => ({ ...one, landmark: turnedLandmark(one.landmark) })),
});

describe('no pins are offered', () => {
  const plain = (red: number, green: number, blue: number): ColourPicture => {
    const rgba = new Uint8ClampedArray(4 * 640 * 360);
    for (let at = 0; at < rgba.length; at += 4) rgba.set([red, green, blue, 255], at);
    return { widthPx: 640, heightPx: 360, rgba };
  };

  it('for a black picture, and for one without markings', () => {
    expect(offerPins(plain(0, 0, 0), RINK)).toMatchObject({ kind: 'none', reason: 'noIce' });
    expect(offerPins(plain(230, 235, 240), RINK)).toMatchObject({ kind: 'none', reason: 'tooLittle' });
  });

  it('for a picture of another sheet', () => {
    const other = rinkOf({ preset: '60x30m' });
    expect(offerPins(drawn(MIDDLE, other), RINK)).toMatchObject({ kind: 'none', reason: 'otherSheet' });
    expect(offerPins(drawn(MIDDLE), other)).toMatchObject({ kind: 'none', reason: 'otherSheet' });
    expect(offerPins(drawn(END, other), RINK).kind).toBe('none');
  });
});

const mirrorOf = ({ widthPx, heightPx, rgba }: ColourPicture): ColourPicture => {
  const mirrored = new Uint8ClampedArray(rgba.length);
  for (let y = 0; y < heightPx; y++) {
    for (let x = 0; x < widthPx; x++) {
      const from = 4 * (y * widthPx + x);
      mirrored.set(rgba.subarray(from, from + 4), 4 * (y * widthPx + widthPx - 1 - x));
    }
  }
  return { widthPx, heightPx, rgba: mirrored };
};
