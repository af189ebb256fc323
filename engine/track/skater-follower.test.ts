import { beforeAll, describe, expect, it } from 'vitest';
import { iceFromFilm } from '../film/ice-from-film.ts';
import type { PinFit } from '../film/pins.ts';
import { randomOf } from '../random/random.ts';
import type { IcePoint } from '../units/points.ts';
import { type DrawnSkater, drawnFrame, feetPx } from './drawn-skaters.reference.ts';
import { followedWay, type Look } from './followed-way.ts';
import type { FoundWays, HandMark } from './found-ways.ts';
import { skatePowerOf } from './skate-power.ts';
import { skaterFollowerOf } from './skater-follower.ts';
import { uprightAt } from './upright.ts';

const POWER = skatePowerOf('collegeMen');
const dark = (across: number, up: number) =>
  up > 0.9 ? 45 + 60 * Math.sin(9 * across) : up > 0.7 ? 160 : 50;
const light = (across: number, up: number) => (up > 0.9 ? 235 - 40 * Math.cos(8 * across) : 90);

/** Curving through the picture at 5 to 6 m/s. */
const curving = (timeS: number): IcePoint => ({ xM: -8 + 5.5 * timeS, yM: 2 + 2 * Math.sin(1.2 * timeS) });
/** Skates by in front of him at 1.2 s. */
const passing = (timeS: number): IcePoint => ({ xM: 4.6 - 5 * (timeS - 0.1), yM: 1.6 });

interface Told {
  readonly ways: readonly FoundWays[];
  readonly looks: readonly Look[];
  readonly fits: ReadonlyMap<number, PinFit>;
  readonly marks: readonly HandMark[];
}

const follow = (
  handsS: readonly number[],
  skaters: readonly DrawnSkater[],
  endS = 2.4,
  panMps = 0.1,
): Told => {
  const random = randomOf(2);
  const frames = Array.from({ length: Math.round(endS * 30) + 1 }, (_, frameIndex) => {
    const timeS = frameIndex / 30;
    return { frameIndex, timeS, ...drawnFrame(timeS, panMps, skaters) };
  });
  const fits = new Map(frames.map(({ frameIndex, fit }) => [frameIndex, fit]));
  const marks = handsS.map((handS): HandMark => {
    const { frameIndex, timeS, filmFromIce } = frames[Math.round(handS * 30)]!;
    const { xPx, yPx } = feetPx(filmFromIce, skaters[0]!.at(timeS));
    return { frameIndex, timeS, footPx: { xPx: xPx + random.normal(), yPx: yPx + random.normal() } };
  });
  const fitAt = (frameIndex: number) => fits.get(frameIndex) ?? null;
  const follower = skaterFollowerOf(marks, fitAt, POWER);
  for (const { frameIndex, timeS, picture } of frames) follower.next(frameIndex, timeS, picture);
  const ways = follower.end();
  return { ways, looks: followedWay(ways, marks, fitAt, frames, POWER), fits, marks };
};

const missesOf = (looks: readonly Look[], at: (timeS: number) => IcePoint): number[] =>
  looks.map(({ timeS, xM, yM }) => Math.hypot(xM - at(timeS).xM, yM - at(timeS).yM));

const rms = (values: readonly number[]) =>
  Math.sqrt(values.reduce((sum, v) => sum + v * v, 0) / values.length);

describe('a skater followed between two hand frames', () => {
  let alone: Told;
  beforeAll(() => {
    alone = follow([0, 2.4], [{ at: curving, grey: dark }]);
  }, 60_000);

  it('is where he is drawn, under a panning camera', () => {
    expect(alone.looks).toHaveLength(73);
    // 24 px a metre here, and 10 px a metre into the depth: a click of 1 px alone is 0.1 m.
    expect(rms(missesOf(alone.looks, curving))).toBeLessThan(0.25);
    const speeds = alone.looks.map(({ timeS, vxMps, vyMps }) => {
      const truth = Math.hypot(5.5, 2.4 * Math.cos(1.2 * timeS));
      return Math.hypot(vxMps, vyMps) - truth;
    });
    expect(rms(speeds)).toBeLessThan(0.3);
  });

  it('is found from before and from after', () => {
    const [beyond, between] = alone.ways;
    expect(beyond!.from).toBeNull();
    expect(between!.forward.length).toBeGreaterThan(60);
    expect(between!.backward.length).toBeGreaterThan(60);
  });

  it('is held by its ±, which is largest in the middle', () => {
    const held = alone.looks.filter(
      ({ timeS, xM, yM, sdM }) => Math.hypot(xM - curving(timeS).xM, yM - curving(timeS).yM) < 2.45 * sdM,
    );
    expect(held.length / alone.looks.length).toBeGreaterThan(0.9);
    const sdAt = (i: number) => alone.looks[i]!.sdM;
    expect(sdAt(36)).toBeGreaterThan(sdAt(9));
    expect(sdAt(36)).toBeGreaterThan(sdAt(63));
  });

  it('is taken up again behind another who skates through the picture in front of him', () => {
    const { looks } = follow(
      [0, 2.4],
      [
        { at: curving, grey: dark },
        { at: passing, grey: light },
      ],
    );
    expect(rms(missesOf(looks, curving))).toBeLessThan(0.35);
    expect(Math.max(...missesOf(looks.slice(-15), curving))).toBeLessThan(0.4);
  }, 60_000);

  it('goes on a little beyond the last hand, ever less sure', () => {
    const { looks } = follow([0.6], [{ at: curving, grey: dark }], 1.6);
    expect(looks[0]!.timeS).toBeLessThan(0.2);
    expect(looks[looks.length - 1]!.timeS).toBeGreaterThan(1.3);
    expect(looks[looks.length - 1]!.sdM).toBeGreaterThan(looks.find(({ timeS }) => timeS > 0.59)!.sdM);
  }, 60_000);

  it('is told no longer than he is in the picture', () => {
    // The camera pans away from him, and the line he stands beside stays longer in the picture.
    const leaving = (timeS: number): IcePoint => ({ xM: -8.8 - 0.5 * timeS, yM: 2 });
    const { looks } = follow([0], [{ at: leaving, grey: dark }], 1.5, 0.4);
    const outS = Array.from({ length: 46 }, (_, i) => i / 30).find(
      timeS => feetPx(drawnFrame(timeS, 0.4, []).filmFromIce, leaving(timeS)).xPx < 0,
    )!;
    expect(looks.at(-1)!.timeS).toBeGreaterThan(0.3);
    expect(looks.at(-1)!.timeS).toBeLessThan(outS);
    for (const { timeS, xM, yM, sdM } of looks) {
      expect(Math.hypot(xM - leaving(timeS).xM, yM - leaving(timeS).yM)).toBeLessThan(2.45 * sdM);
    }
  }, 60_000);

  it('is nowhere surer than the feet he is followed from', () => {
    const { ways, looks, fits, marks } = follow([0.6], [{ at: curving, grey: dark }], 0.9);
    const [mark] = marks;
    const unsure = followedWay(
      ways,
      [{ ...mark!, footSdPx: 10 }],
      frameIndex => fits.get(frameIndex) ?? null,
      looks,
      POWER,
    );
    // What 10 px are on the ice instead of the 2 of a click, in the direction in which they are most.
    const placeOf = (xPx: number, yPx: number) => {
      const placed = iceFromFilm(fits.get(mark!.frameIndex)!, { xPx, yPx });
      if (placed.kind === 'none') throw new Error('off the ice');
      return placed.atM;
    };
    const { xPx, yPx } = mark!.footPx;
    const here = placeOf(xPx, yPx);
    const farM = Array.from({ length: 36 }, (_, i) => {
      const [cos, sin] = [Math.cos(i * (Math.PI / 36)), Math.sin(i * (Math.PI / 36))];
      const there = placeOf(xPx + cos * 0.1, yPx + sin * 0.1);
      return Math.hypot(there.xM - here.xM, there.yM - here.yM) * 10 * Math.sqrt(10 ** 2 - 2 ** 2);
    });
    const at = looks.findIndex(({ frameIndex }) => frameIndex === mark!.frameIndex);
    const offM = Math.max(...farM);
    expect(offM).toBeGreaterThan(0.3);
    expect(unsure[at]!.sdM).toBeCloseTo(Math.hypot(looks[at]!.sdM, offM), 1);
    // Everywhere on the way, not only where they were put down.
    for (const [i, { sdM }] of unsure.entries())
      expect(sdM).toBeGreaterThan(Math.hypot(looks[i]!.sdM, 0.7 * offM));
  }, 60_000);

  it('is told nowhere when no hand has a place on the ice', () => {
    const follower = skaterFollowerOf(
      [{ frameIndex: 0, timeS: 0, footPx: { xPx: 10, yPx: 10 } }],
      () => null,
      POWER,
    );
    follower.next(0, 0, { widthPx: 20, heightPx: 20, grey: new Uint8Array(400) });
    expect(follower.end()).toEqual([]);
  });
});

// A pinhole camera draws a metre across the view as f / depth, and a metre up as that times the cosine of how steeply it looks down.
describe('somebody upright', () => {
  it('is as high and as wide as a pinhole camera draws him', () => {
    const { fit, filmFromIce } = drawnFrame(0, 0, []);
    for (const atM of [
      { xM: -8, yM: 2 },
      { xM: -4, yM: -6 },
      { xM: -12, yM: 9 },
    ]) {
      const upright = uprightAt(fit, atM)!;
      const depthM = filmFromIce[6] * atM.xM + filmFromIce[7] * atM.yM + filmFromIce[8];
      const downRad = Math.asin(13 / Math.hypot(atM.xM - 1, atM.yM + 33, 13));
      const acrossPx = Math.hypot(...upright.acrossPx);
      expect(acrossPx / (900 / depthM)).toBeCloseTo(1, 1);
      expect(-upright.upPx[1] / acrossPx).toBeCloseTo(Math.cos(downRad), 1);
      expect(Math.abs(upright.upPx[0] / upright.upPx[1])).toBeLessThan(0.12);
    }
  });
});
