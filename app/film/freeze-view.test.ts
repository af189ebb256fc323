import { readFileSync } from 'node:fs';
import type { Freeze } from '@icewright/book';
import { ellipseOf, keptFitOf, rinkOf } from '@icewright/engine';
import { describe, expect, it } from 'vitest';
import { freezeViewOf, isAnyPin, landmarksInPicture, nearestUnpinned } from './freeze-view.ts';
import { refusedPinsWords } from './refused-pins.ts';

// Positions known exactly: fixtures/film-truth/README.md.
interface TruthFrame {
  readonly i: number;
  readonly ptsS: number;
  readonly landmarks: Record<string, [number, number]>;
  readonly skaters: { id: string; ice: [number, number]; foot: [number, number]; see: string }[];
}
const framesOf = (name: string) =>
  (
    JSON.parse(readFileSync(new URL(`../../fixtures/film-truth/${name}`, import.meta.url), 'utf8')) as {
      frames: TruthFrame[];
    }
  ).frames;

const rink = rinkOf({ preset: '200x85ft' });
const freezeOf = (frame: TruthFrame, landmarks: readonly string[]): Freeze =>
  ({
    film: 'film',
    frameIndex: frame.i,
    filmTimeS: frame.ptsS,
    picture: { widthPx: 1280, heightPx: 720 },
    title: '',
    attacks: 'plusX',
    clickSdPx: 1,
    madeAt: '2026-11-07T20:00:00Z',
    pins: Object.fromEntries(
      landmarks.map(landmark => {
        const [xPx, yPx] = frame.landmarks[landmark]!;
        return [`pin-${landmark}`, { landmark, at: { xPx, yPx }, leftOut: false }];
      }),
    ),
    skaters: Object.fromEntries(
      frame.skaters
        .filter(one => one.see === 'clear')
        .map(one => [
          one.id,
          { side: 'us', kind: 'skater', role: one.id, feet: { xPx: one.foot[0], yPx: one.foot[1] } },
        ]),
    ),
  }) as unknown as Freeze;

const spread = (frame: TruthFrame) => Object.keys(frame.landmarks).filter((_, i) => i % 4 === 0);

describe('a freeze with everything that hangs on it', () => {
  it.each(['A.json', 'B.json'])('%s: places everybody within their own ellipse on every frame', name => {
    for (const frame of framesOf(name)) {
      const view = freezeViewOf(freezeOf(frame, spread(frame)), rink);
      expect(view.fit, `frame ${frame.i}`).toBeDefined();
      for (const { id, atM, covM2 } of view.ice!.scene.skaters) {
        const [xM, yM] = frame.skaters.find(one => one.id === id)!.ice;
        expect(Math.hypot(atM.xM - xM, atM.yM - yM)).toBeLessThan(0.05 + ellipseOf(covM2).semiMajorM);
      }
      expect(view.held!.alongM).toBeGreaterThan(0);
    }
  });

  it('is held by carried pins until its own hold it', () => {
    const [frame] = framesOf('A.json');
    const pinned = freezeViewOf(freezeOf(frame!, spread(frame!)), rink);
    const kept = keptFitOf(pinned.fit!);
    const { coefficients, covariance } = kept;
    const tie = { ...kept, from: [120], coefficients: [...coefficients], covariance: [...covariance] };
    const bare = { ...freezeOf(frame!, []), carried: tie };
    const carried = freezeViewOf(bare, rink);
    expect(carried.isCarried).toBe(true);
    expect(carried.fitted).toBeUndefined();
    expect(carried.ice!.scene.skaters.map(one => one.atM)).toEqual(
      pinned.ice!.scene.skaters.map(one => one.atM),
    );
    // Two pins are not enough to take over; many are.
    const two = freezeViewOf({ ...freezeOf(frame!, spread(frame!).slice(0, 2)), carried: tie }, rink);
    expect(two.isCarried).toBe(true);
    expect(two.fitted?.kind).toBe('refused');
    expect(freezeViewOf({ ...freezeOf(frame!, spread(frame!)), carried: tie }, rink).isCarried).toBe(false);
  });

  it('offers the unpinned mark that lies under the pointer', () => {
    for (const frame of framesOf('B.json').slice(2)) {
      const pinned = spread(frame);
      const view = freezeViewOf(freezeOf(frame, pinned), rink);
      const offered = new Set(landmarksInPicture(view).map(one => one.id));
      for (const [id, [xPx, yPx]] of Object.entries(frame.landmarks)) {
        expect(offered.has(id) || pinned.includes(id)).toBe(true);
        if (!pinned.includes(id)) expect(nearestUnpinned(view, { xPx, yPx })).toBe(id);
      }
    }
  });

  it('a pin left out is not counted, and still says how far it is off', () => {
    const frame = framesOf('A.json')[3]!;
    const freeze = freezeOf(frame, spread(frame));
    const [first] = Object.keys(freeze.pins);
    const pins = structuredClone(freeze.pins) as Record<string, { leftOut: boolean; at: { xPx: number } }>;
    pins[first!]!.at.xPx += 30;
    const wrong = freezeViewOf({ ...freeze, pins } as Freeze, rink);
    expect(wrong.pins.find(one => one.disagrees)?.id).toBe(first);
    pins[first!]!.leftOut = true;
    const right = freezeViewOf({ ...freeze, pins } as Freeze, rink);
    expect(right.pins.some(one => one.disagrees)).toBe(false);
    expect(right.pins.find(one => one.id === first)?.residualPx).toBeCloseTo(30, 0);
  });

  it('says in words why pins do not hold the picture', () => {
    const frame = framesOf('A.json')[3]!;
    const words = (landmarks: string[]) => {
      const { fitted } = freezeViewOf(freezeOf(frame, landmarks), rink);
      return fitted?.kind === 'refused' ? refusedPinsWords(fitted).says : 'held';
    };
    expect(words(['centreSpot'])).toMatch(/One pin/);
    expect(words(['centreSpot', 'endSpot-x+y', 'endSpot+x+y'])).toMatch(/Three pins/);
    expect(words(['endSpot-x+y', 'neutralSpot-x+y', 'neutralSpot+x+y', 'endSpot+x+y'])).toMatch(
      /on one line/,
    );
    expect(words(['endSpot-x+y', 'endSpot-x-y', 'endSpot+x+y', 'endSpot+x-y'])).toBe('held');
  });
});

it('points at none of five pins that disagree, for any may be the wrong one', () => {
  const frame = framesOf('A.json')[0]!;
  const all = Object.keys(frame.landmarks);
  const five = [0, 0.25, 0.5, 0.75, 1].map(share => all[Math.round(share * (all.length - 1))]!);
  const right = freezeOf(frame, five);
  const [id, pin] = Object.entries(right.pins)[2]!;
  const off = { ...pin, at: { xPx: pin.at.xPx + 40, yPx: pin.at.yPx - 25 } };
  const wrong = { ...right, pins: { ...right.pins, [id]: off } } as Freeze;
  const view = freezeViewOf(wrong, rink);
  expect(view.fit?.disagreement?.kind).toBe('oneOf');
  expect(isAnyPin(wrong, view.fit)).toBe(true);
  expect(view.pins.filter(({ disagrees }) => disagrees)).toEqual([]);
  expect(isAnyPin(right, freezeViewOf(right, rink).fit)).toBe(false);
});
