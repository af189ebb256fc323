import { describe, expect, it } from 'vitest';
import { drawnAt, filmFromIceOf } from '../film/camera.reference.ts';
import type { ColourPicture } from '../film/colour-picture.ts';
import { fitOfPart } from '../film/fit-of-part.ts';
import { TEST_RINK } from '../film/pinned-view.reference.ts';
import { randomOf } from '../random/random.ts';
import type { FilmPoint } from '../units/points.ts';
import { bodyMaskOf } from './body-mask.ts';
import { drawnPeople, WIDE_CAMERA } from './drawn-people.reference.ts';

const PEOPLE = [
  { atM: { xM: -6, yM: 4 }, wears: [25, 35, 90] as const },
  { atM: { xM: 2, yM: -3 }, wears: [10, 120, 115] as const },
  { atM: { xM: 3.2, yM: -3.5 }, wears: [25, 35, 90] as const },
  { atM: { xM: 9, yM: 8 }, wears: [10, 120, 115] as const },
];
const { picture, fit } = drawnPeople(WIDE_CAMERA, PEOPLE, [], randomOf(3));
// The same picture without them, noise and all: what differs is theirs, whatever the mask says.
const empty = drawnPeople(WIDE_CAMERA, [], [], randomOf(3)).picture;
/** What heads are drawn with. */
const SKIN = [190, 150, 120];
const isTheirs = (at: number) => [0, 1, 2].some(k => picture.rgba[4 * at + k] !== empty.rgba[4 * at + k]);

const maskOf = (of: ColourPicture, tie = fit, known: readonly FilmPoint[] = []): Uint8Array => {
  const mask = bodyMaskOf(of, tie, TEST_RINK, known);
  if ('kind' in mask) throw new Error(mask.reason);
  return mask;
};

describe('what skaters hide of the ice', () => {
  const mask = maskOf(picture);

  it('holds nearly all of each body and hardly any ice', () => {
    let [theirs, held, beside] = [0, 0, 0];
    mask.forEach((one, at) => {
      if (isTheirs(at)) {
        theirs++;
        held += one;
      } else beside += one;
    });
    expect(theirs).toBeGreaterThan(1000);
    expect(held / theirs).toBeGreaterThan(0.95);
    expect(beside / theirs).toBeLessThan(0.05);
  });

  it('holds a helmet that is hardly brighter than the ice behind it', () => {
    const rgba = picture.rgba.slice();
    const helmets: number[] = [];
    for (let at = 0; at < rgba.length / 4; at++) {
      if (SKIN.some((value, k) => rgba[4 * at + k] !== value)) continue;
      helmets.push(at);
      // By less than what counts as no ice anywhere else.
      for (let k = 0; k < 3; k++) rgba[4 * at + k] = empty.rgba[4 * at + k]! + 10;
    }
    expect(helmets.length).toBeGreaterThan(60);
    const held = maskOf({ ...picture, rgba });
    expect(helmets.filter(at => held[at] === 1).length / helmets.length).toBeGreaterThan(0.9);
  });

  it('holds nothing where nobody is', () => {
    expect(maskOf(empty).some(one => one === 1)).toBe(false);
  });

  it('holds somebody whom nobody finds, once it is known where he stands, and no bare ice where nobody is', () => {
    // As pale as the ice and without a fold: only skates and head are surely something else.
    const atM = { xM: -4, yM: 6 };
    const pale = drawnPeople(WIDE_CAMERA, [{ atM, wears: [205, 212, 216] }], [], randomOf(3)).picture;
    const feet = drawnAt(filmFromIceOf(WIDE_CAMERA), atM)!;
    const heldOf = (of: Uint8Array) => {
      let [his, held, beside] = [0, 0, 0];
      of.forEach((one, at) => {
        const isHis = [0, 1, 2].some(k => pale.rgba[4 * at + k] !== empty.rgba[4 * at + k]);
        if (isHis) his++;
        if (one === 1) isHis ? held++ : beside++;
      });
      return { share: held / his, beside };
    };
    expect(heldOf(maskOf(pale)).share).toBe(0);
    // Placed by a hand that is a few pixels off.
    for (const [offX, offY] of [
      [0, 0],
      [5, -3],
      [-6, 4],
    ] as const) {
      const known = heldOf(maskOf(pale, fit, [{ xPx: feet.xPx + offX, yPx: feet.yPx + offY }]));
      expect(known.share).toBeGreaterThan(0.3);
      expect(known.beside).toBeLessThan(20);
    }
    expect(maskOf(empty, fit, [feet]).some(one => one === 1)).toBe(false);
    // Outside of the picture, as a part of a film's picture is asked: nothing.
    expect(heldOf(maskOf(pale, fit, [{ xPx: -300, yPx: feet.yPx }])).share).toBe(0);
  });

  it('says the same of a part of the picture', () => {
    const [left, top, width, height] = [560, 300, 300, 260];
    const rgba = new Uint8ClampedArray(4 * width * height);
    for (let y = 0; y < height; y++) {
      const from = 4 * ((y + top) * picture.widthPx + left);
      rgba.set(picture.rgba.subarray(from, from + 4 * width), 4 * y * width);
    }
    const part = maskOf({ widthPx: width, heightPx: height, rgba }, fitOfPart(fit, left, top)!);
    let [both, either] = [0, 0];
    part.forEach((one, at) => {
      const whole = mask[(Math.floor(at / width) + top) * picture.widthPx + left + (at % width)]!;
      both += one & whole;
      either += one | whole;
    });
    expect(either).toBeGreaterThan(500);
    expect(both / either).toBeGreaterThan(0.95);
  });
});
