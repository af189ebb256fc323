import { describe, expect, it } from 'vitest';
import { drawnAt, filmFromIceOf, isInPicture } from '../film/camera.reference.ts';
import { ellipseOf } from '../film/ellipse.ts';
import { filmFromIce, iceFromFilm } from '../film/ice-from-film.ts';
import { shownOf } from '../film/lens.ts';
import { holds } from '../film/pinned-view.reference.ts';
import { randomOf } from '../random/random.ts';
import { type Carry, carryPins } from './carry-pins.ts';
import { fitOfKept, keptFitOf } from './kept-fit.ts';
import { lensTermOf } from './lens-term.ts';
import { type PannedStretch, pannedStretch } from './panned-stretch.reference.ts';

/** Misses and half axes over the ice that a picture shows, metres, and how many ellipses hold the truth. */
const placedIn = ({ cameras, lens }: PannedStretch, carry: Carry, frameIndex: number) => {
  const carried = carry.at(frameIndex);
  if (carried.kind === 'none') throw new Error(`picture ${frameIndex}: ${carried.reason}`);
  const camera = cameras[frameIndex]!;
  const [missesM, reachesM]: [number[], number[]] = [[], []];
  let held = 0;
  for (let xM = -28; xM <= 28; xM += 4) {
    for (let yM = -12; yM <= 12; yM += 4) {
      const px = drawnAt(filmFromIceOf(camera), { xM, yM });
      if (!isInPicture(camera, px)) continue;
      const placed = iceFromFilm(carried.fit, shownOf(lens, px), { footSdPx: 0 });
      if (placed.kind === 'none') continue;
      // What is placed is drawn where it was pressed, lens and all.
      const drawn = filmFromIce(carried.fit, placed.atM)!;
      const pressed = shownOf(lens, px);
      expect(Math.hypot(drawn.xPx - pressed.xPx, drawn.yPx - pressed.yPx)).toBeLessThan(1e-6);
      const [dx, dy] = [placed.atM.xM - xM, placed.atM.yM - yM];
      missesM.push(Math.hypot(dx, dy));
      reachesM.push(ellipseOf(placed.covM2).semiMajorM);
      if (holds(placed.covM2, dx, dy)) held++;
    }
  }
  return { missesM, reachesM, held };
};

const medianOf = (values: readonly number[]) => [...values].sort((a, b) => a - b)[values.length >> 1]!;

describe('pins carried through a pan', () => {
  it('hold the truth in at least 93 of 100 of their ellipses, which grow on the way', {
    timeout: 240_000,
  }, () => {
    let [held, asked] = [0, 0];
    const reaches = new Map<number, number[]>([10, 30, 55].map(frame => [frame, []]));
    for (let seed = 1; seed <= 8; seed++) {
      const random = randomOf(seed);
      const panned = pannedStretch(random);
      const term = lensTermOf(panned.stretch);
      const carry = carryPins(panned.stretch, term, [panned.pinnedAt(0, 0.5, random)]);
      for (const [frame, list] of reaches) {
        const { reachesM, missesM, held: ofThese } = placedIn(panned, carry, frame);
        list.push(...reachesM);
        held += ofThese;
        asked += missesM.length;
      }
    }
    expect(asked).toBeGreaterThan(400);
    expect(held / asked).toBeGreaterThan(0.93);
    const [near, middle, far] = [...reaches.values()].map(medianOf) as [number, number, number];
    expect(near).toBeLessThan(middle);
    expect(middle).toBeLessThan(far);
  });

  it('go backwards as well as forwards', () => {
    const random = randomOf(8);
    const panned = pannedStretch(random, { noisePx: 1e-4 });
    const term = lensTermOf(panned.stretch);
    for (const from of [0, 34, 59]) {
      const carry = carryPins(panned.stretch, term, [panned.pinnedAt(from, 1e-3, random)]);
      for (const to of [0, 3, 30, 47, 59]) {
        expect(Math.max(...placedIn(panned, carry, to).missesM), `${from} to ${to}`).toBeLessThan(0.05);
      }
    }
  });

  it('are better known between two pinned pictures than from either', () => {
    const random = randomOf(4);
    const panned = pannedStretch(random);
    const ends = [panned.pinnedAt(0, 1, random), panned.pinnedAt(59, 1, random)];
    const reachOf = (carry: Carry) => medianOf(placedIn(panned, carry, 35).reachesM);
    const term = lensTermOf(panned.stretch);
    const both = carryPins(panned.stretch, term, ends);
    for (const one of ends)
      expect(reachOf(both)).toBeLessThan(reachOf(carryPins(panned.stretch, term, [one])));
    const at = both.at(35);
    expect(at.kind === 'carried' && at.from).toEqual([59, 0]);
    expect(at.kind === 'carried' && at.disagree).toBe(false);
  });

  it('say so when two pinned pictures tell different stories', () => {
    const random = randomOf(5);
    const panned = pannedStretch(random);
    const wrong = panned.pinnedAt(59, 0.5, random);
    const shifted = wrong.pins.map(pin => ({ ...pin, iceM: { xM: pin.iceM.xM + 3, yM: pin.iceM.yM } }));
    const pinned = [panned.pinnedAt(30, 0.5, random), { ...wrong, pins: shifted }];
    const carry = carryPins(panned.stretch, lensTermOf(panned.stretch), pinned);
    const at = carry.at(45);
    expect(at.kind === 'carried' && at.disagree).toBe(true);
  });

  it('find the lens on the way: ignored, a term of 1.8 % is metres off', () => {
    const random = randomOf(6);
    const panned = pannedStretch(random, { k1: -0.018 });
    const term = lensTermOf(panned.stretch);
    const carry = carryPins(panned.stretch, term, [panned.pinnedAt(0, 0.1, random)]);
    expect(term.told).toBe(true);
    expect(Math.abs(term.value + 0.018)).toBeLessThan(3 * term.sd);
    expect(term.sd).toBeLessThan(0.003);
    const { missesM, held } = placedIn(panned, carry, 55);
    expect(medianOf(missesM)).toBeLessThan(0.3);
    expect(held / missesM.length).toBeGreaterThan(0.93);
  });

  it('take no lens for granted where the camera stands still', () => {
    const panned = pannedStretch(randomOf(7), { panRad: 0, keyEvery: 60 });
    const still = panned.stretch.frames.map(frame => ({
      ...frame,
      pairs: frame.pairs.map((_, i) => frame.pairs[4 * Math.floor(i / 4) + (i % 2)]!),
    }));
    const term = lensTermOf({ ...panned.stretch, frames: still });
    expect(term.told).toBe(false);
    expect(term.used).toBe(0);
  });
});

describe('a carried fit that is kept', () => {
  it('places as before, through a document and back', () => {
    const random = randomOf(14);
    const panned = pannedStretch(random, { k1: -0.03 });
    const term = lensTermOf(panned.stretch);
    const carried = carryPins(panned.stretch, term, [panned.pinnedAt(0, 0.5, random)]).at(40);
    if (carried.kind === 'none') throw new Error(carried.reason);
    const kept = JSON.parse(JSON.stringify(keptFitOf(carried.fit)));
    const px = { xPx: 1100, yPx: 300 };
    const back = iceFromFilm(fitOfKept(kept, panned.stretch.picture), px);
    const before = iceFromFilm(carried.fit, px);
    if (back.kind === 'none' || before.kind === 'none') throw new Error('not placed');
    expect(back.atM).toEqual(before.atM);
    expect(back.covM2).toEqual(before.covM2);
  });
});

describe('where nothing can be carried', () => {
  const panned = pannedStretch(randomOf(9));
  const pins = panned.pinnedAt(0, 0.5, randomOf(10));
  const term = lensTermOf(panned.stretch);

  it('it says why', () => {
    const reasonAt = (frames: typeof panned.stretch.frames, pinned: readonly (typeof pins)[], at: number) => {
      const answer = carryPins({ ...panned.stretch, frames }, term, pinned).at(at);
      return answer.kind === 'none' ? answer.reason : 'carried';
    };
    const { frames } = panned.stretch;
    expect(reasonAt(frames, [pins], 99)).toBe('notTracked');
    expect(reasonAt(frames, [], 20)).toBe('noPins');
    expect(reasonAt(frames, [{ ...pins, pins: pins.pins.slice(0, 3) }], 20)).toBe('noPins');
    const torn = frames.map(frame =>
      frame.frameIndex === 30
        ? { ...frame, keyFrame: 30, pairs: new Float32Array(0), isKey: true, lost: 'cut' as const }
        : frame,
    );
    expect(reasonAt(torn, [pins], 29)).toBe('carried');
    expect(reasonAt(torn, [pins], 30)).toBe('cut');
    expect(reasonAt(torn, [pins], 59)).toBe('cut');
    expect(reasonAt(torn, [pins, panned.pinnedAt(59, 0.5, randomOf(11))], 30)).toBe('carried');
  });
});
