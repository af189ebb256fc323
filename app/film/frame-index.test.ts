import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { exactTimeOf, frameAtTime, frameIndexOf, middleOfFrame, nearestFrame } from './frame-index.ts';
import { openFilm } from './open-film.ts';

const film = (name: string) =>
  new Blob([readFileSync(new URL(`../../fixtures/film/${name}`, import.meta.url))]);

describe('the number of a frame is the rank of its time stamp', () => {
  // Frame counts and first times as the recorder of these films wrote them down (frameCount, firstFrameS).
  it.each([
    ['A.mp4', 600, 0, 30],
    ['B.mp4', 960, 0, 60_000 / 1001],
    ['C.mp4', 400, 0.4, undefined],
    ['D.webm', 325, 0, 25],
  ] as const)('%s', async (name, frameCount, firstS, rate) => {
    const answer = await openFilm({ file: film(name) }, async () => true);
    if (answer.kind !== 'film') throw new Error(`${name} was refused: ${answer.says}`);
    expect(answer.index.frameCount).toBe(frameCount);
    expect(answer.index.timesS[0]).toBeCloseTo(firstS, 3);
    if (rate) for (let i = 0; i < frameCount; i++) expect(answer.index.timesS[i]).toBeCloseTo(i / rate, 3);
    answer.close();
  });

  // The recorder's own clocks: 30, 60000/1001 and 25 pictures a second from 0; a transport stream counts in 1/90000
  // (ISO/IEC 13818-1 §2.4.3.7).
  it.each([
    ['film/A.mp4', 37, 37, 30],
    ['film/B.mp4', 959, 959 * 1001, 60_000],
    ['film/D.webm', 11, 11, 25],
    ['film-kinds/h264_aac.ts', 2, 132_000 + 2 * 3000, 90_000],
  ] as const)('%s: frame %d begins at exactly %d/%d s', async (name, frameIndex, num, den) => {
    const bytes = readFileSync(new URL(`../../fixtures/${name}`, import.meta.url));
    const answer = await openFilm({ file: new Blob([bytes]) }, async () => true);
    if (answer.kind !== 'film') throw new Error(answer.says);
    const exact = exactTimeOf(answer.index, frameIndex);
    expect([exact.num * den, Number.isInteger(exact.num)]).toEqual([num * exact.den, true]);
    answer.close();
  });

  it('reads the turn of a film held upright', async () => {
    const answer = await openFilm({ file: film('C.mp4') }, async () => true);
    if (answer.kind !== 'film') throw new Error(answer.says);
    expect([answer.widthPx, answer.heightPx]).toEqual([720, 1280]);
    expect([90, 270]).toContain(answer.rotationDeg);
    answer.close();
  });

  const steps = fc.array(fc.integer({ min: 2_000, max: 90_000 }), { minLength: 2, maxLength: 80 });
  const indexOfSteps = (microseconds: number[]) => {
    let at = 0;
    return frameIndexOf(
      microseconds.map(step => (at += step) / 1e6),
      0.03,
    );
  };

  it('finds a frame again from its own time, its middle, and a rounded time', () => {
    fc.assert(
      fc.property(steps, microseconds => {
        const index = indexOfSteps(microseconds);
        for (let i = 0; i < index.frameCount; i++) {
          expect(frameAtTime(index, index.timesS[i]!)).toBe(i);
          expect(frameAtTime(index, middleOfFrame(index, i))).toBe(i);
          expect(nearestFrame(index, Math.round(index.timesS[i]! * 1000) / 1000)).toBe(i);
        }
      }),
    );
  });

  it('agrees with a plain walk through all time stamps', () => {
    fc.assert(
      fc.property(steps, fc.double({ min: 0, max: 8, noNaN: true }), (microseconds, timeS) => {
        const index = indexOfSteps(microseconds);
        let plain = 0;
        index.timesS.forEach((t, i) => {
          if (t <= timeS + 1e-6) plain = i;
        });
        expect(frameAtTime(index, timeS)).toBe(plain);
      }),
    );
  });
});
