import { describe, expect, it } from 'vitest';
import { NearPace } from './near-pace.ts';

/** Jumps of so many frames on a machine that takes so long for each. */
const after = (jumps: number, framesToGo: number, msAFrame: number): NearPace => {
  const pace = new NearPace();
  for (let jump = 0; jump < jumps; jump++) {
    pace.keyCameOut(framesToGo, 1000 * jump);
    pace.wantedCameOut(1000 * jump + framesToGo * msAFrame);
  }
  return pace;
};

describe('when a key picture is shown', () => {
  it('at once when the wanted frame is far off, late when it is near', () => {
    const pace = new NearPace();
    expect(pace.keyCameOut(200, 0)).toBe(0);
    expect(pace.keyCameOut(10, 0)).toBeGreaterThan(0);
  });

  it('learns the pace of the machine: a slow one shows it sooner, a quick one waits longer', () => {
    expect(after(12, 15, 20).keyCameOut(15, 0)).toBe(0);
    expect(after(12, 60, 1).keyCameOut(60, 0)).toBeGreaterThan(0);
  });

  it('learns nothing of a jump that was given up', () => {
    const pace = new NearPace();
    for (let jump = 0; jump < 20; jump++) {
      pace.keyCameOut(15, 0);
      pace.givenUp();
      pace.wantedCameOut(100_000);
    }
    expect(pace.keyCameOut(15, 0)).toBeGreaterThan(0);
  });
});
