import { describe, expect, it } from 'vitest';
import type { Cue } from '../drill/drill.ts';
import { at, named, planOf, playableFrom, skate, type TestSpot } from './drill-shorthand.reference.ts';
import { findingSentence } from './finding-sentence.ts';
import { runDrill } from './run-drill.ts';
import type { Finding, FindingKind } from './run-result.ts';

const found = (spots: readonly TestSpot[], kind: FindingKind): readonly Finding[] =>
  runDrill(playableFrom(planOf(spots))).findings.filter(finding => finding.kind === kind);

const NET_XM = -27.1272;
const whistle: Cue = { on: 'whistle' };

describe('bodies that touch', () => {
  const beside = (apartM: number): readonly TestSpot[] => [
    { role: 'F1', atM: at(-10, 0), acts: [skate([at(10, 0)])] },
    { role: 'F2', atM: at(-10, apartM), acts: [skate([at(10, apartM)])] },
  ];

  it('are said once when two skate shoulder in shoulder, with the distance, and not a metre apart', () => {
    const touch = found(beside(0.5), 'bodiesTouch');
    expect(touch).toHaveLength(1);
    expect(touch[0]!.value).toBeCloseTo(0.5, 6);
    expect(found(beside(1), 'bodiesTouch')).toEqual([]);
  });

  it('are not said of two who cross at full speed in less than the time: that is a crossing', () => {
    const crossing: readonly TestSpot[] = [
      { role: 'F1', atM: at(-10, 0), acts: [skate([at(10, 0)])] },
      { role: 'F2', atM: at(10, 0.3), acts: [skate([at(-10, 0.3)])] },
    ];
    expect(found(crossing, 'bodiesTouch')).toEqual([]);
    expect(found(crossing, 'pathsCrossTooFast')).toHaveLength(1);
  });

  it('are said again when they touch again', () => {
    const twice = found(
      [
        { role: 'F1', atM: at(0, 0) },
        {
          role: 'F2',
          atM: at(0, 4),
          acts: [
            skate([at(0, 0.5)], { stops: true, effortRatio: 0.4 }),
            skate([at(0, 4)], { stops: true, effortRatio: 0.4 }),
            skate([at(0, 0.5)], { stops: true, effortRatio: 0.4 }),
          ],
        },
      ],
      'bodiesTouch',
    );
    expect(twice).toHaveLength(2);
  });
});

describe('a gap that is not held', () => {
  const spots = (startXM: number, distanceM: number): readonly TestSpot[] => [
    {
      role: 'X1',
      side: 'them',
      atM: at(10, 3),
      acts: [skate([at(-20, 2)], { effortRatio: 0.75, cue: whistle })],
    },
    { role: 'D1', atM: at(startXM, 3), acts: [{ kind: 'gap', whom: named('X1'), distanceM, cue: whistle }] },
  ];

  it('is not said of one that is', () => {
    expect(found(spots(4, 2.4), 'gapNotHeld')).toEqual([]);
  });

  it('is said when the keeper starts behind the carrier and never gets there, and weighs in our end', () => {
    const lost = found(spots(16, 2.4), 'gapNotHeld');
    expect(lost).toHaveLength(1);
    expect(lost[0]!.weight).toBe('look');
    expect(lost[0]!.threshold).toBe(2.4);
    expect(lost[0]!.atM.xM).toBeLessThan(10);
    expect(Math.abs(lost[0]!.value - 2.4)).toBeGreaterThan(0.35 * 2.4);
    const plan = planOf(spots(16, 2.4));
    const carrier = runDrill(playableFrom(plan)).tracks[0]!;
    const at = Math.round(lost[0]!.timeS * 120);
    expect(lost[0]!.speedMps).toBeCloseTo(Math.hypot(carrier.xMps[at]!, carrier.yMps[at]!), 9);
    expect(findingSentence(lost[0]!, plan)).toContain(`X1, who goes at ${lost[0]!.speedMps!.toFixed(1)} m/s`);
  });
});

describe('a gap that is open before our line and behind it', () => {
  // D1 keeps far off in the middle of the ice and nearer, yet off, in our end: the first is the wider, the second is what hurts.
  const spots = (waitsS: number): readonly TestSpot[] => [
    {
      role: 'X1',
      side: 'them',
      atM: at(16, 3),
      acts: [skate([at(-24, 2)], { effortRatio: 0.95, cue: whistle })],
    },
    {
      role: 'D1',
      atM: at(24, 3),
      facingRad: Math.PI,
      acts: [{ kind: 'gap', whom: named('X1'), distanceM: 2.4, cue: { on: 'after', seconds: waitsS } }],
    },
  ];

  it('weighs no less when it is wider still before: she who starts later is not the better off', () => {
    for (const waitsS of [0.1, 0.6, 1.2, 2]) {
      const [lost] = found(spots(waitsS), 'gapNotHeld');
      expect(lost?.weight, `${waitsS} s`).toBe('look');
      expect(lost!.atM.xM).toBeLessThan(-7);
    }
  });
});

describe('through the net', () => {
  it('is said of a route over the goal frame, where and when it goes in', () => {
    const through = found(
      [{ role: 'F1', atM: at(NET_XM + 8, 0), acts: [skate([at(NET_XM - 2, 0)], { stops: true })] }],
      'throughNet',
    );
    expect(through).toHaveLength(1);
    expect(through[0]!.atM.xM).toBeCloseTo(NET_XM, 0);
    expect(through[0]!.spots).toEqual(['F1']);
  });

  it('is not said of one round it', () => {
    const round = [at(NET_XM + 2, 3), at(NET_XM - 2, 1), at(NET_XM - 2, -1), at(NET_XM + 2, -3)];
    expect(found([{ role: 'F1', atM: at(NET_XM + 8, 4), acts: [skate(round)] }], 'throughNet')).toEqual([]);
  });

  it('is said of the crease only when a goalie stands there, and never of the goalie', () => {
    const over: TestSpot = {
      role: 'F1',
      atM: at(NET_XM + 5, 4),
      acts: [skate([at(NET_XM + 1.5, 0), at(NET_XM + 5, -4)])],
    };
    const goalie: TestSpot = { role: 'G', kind: 'goalie', atM: at(NET_XM + 0.7, 0) };
    expect(found([over], 'throughNet')).toEqual([]);
    const crossed = found([over, goalie], 'throughNet');
    expect(crossed.map(finding => finding.spots)).toEqual([['F1', 'G']]);
    expect(findingSentence(crossed[0]!, planOf([over, goalie]))).toMatch(
      /^F1 skates through the crease of G at/,
    );
  });
});
