import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evenly } from '../../test/evenly.ts';
import { BLADE_AHEAD_M, KEEP_APART_M, TURN_RATE_RADPS } from '../drill/drill-rows.ts';
import type { Body } from '../drill/in-boards.ts';
import { PIVOT_LOSS_RATIO } from '../motion/body-rows.ts';
import { levelOf } from '../skater/level.ts';
import type { IcePoint } from '../units/points.ts';
import { at, named, planOf, playableFrom, skate, type TestSpot } from './drill-shorthand.reference.ts';
import { referenceScreen } from './run.reference.ts';
import { runDrill } from './run-drill.ts';
import type { Run, Track } from './run-result.ts';

const { model } = levelOf('collegeWomen');
const runOf = (spots: readonly TestSpot[], lyingM?: IcePoint): Run =>
  runDrill(playableFrom(planOf(spots, lyingM)));

const timeOfAct = (run: Run, kind: 'actStarts' | 'actEnds', act: string): number => {
  for (const event of run.events) if (event.kind === kind && event.act === act) return event.timeS;
  throw new Error(`no ${kind} of ${act}`);
};

/** Straight between samples, the last one kept. */
const along =
  (track: Track) =>
  (timeS: number): Body => {
    const last = track.xM.length - 1;
    const place = Math.min(timeS * 120, last);
    const i = Math.min(Math.floor(place), last - 1);
    const t = place - i;
    const mix = (values: Float64Array): number => values[i]! + t * (values[i + 1]! - values[i]!);
    return { xM: mix(track.xM), yM: mix(track.yM), xMps: mix(track.xMps), yMps: mix(track.yMps) };
  };

const turnedRad = (a: number, b: number): number => Math.abs(Math.atan2(Math.sin(a - b), Math.cos(a - b)));

describe('acts of the body in a rep', () => {
  it('a stop ends standing v²/2a further on, and who passes it on skates from rest', () => {
    const run = runOf([
      { role: 'F1', atM: at(-15, 0), acts: [skate([at(0, 0)]), { kind: 'stop' }, skate([at(5, 5)])] },
    ]);
    const [track] = run.tracks as [Track];
    const fromS = timeOfAct(run, 'actStarts', 'F1.1');
    const toS = timeOfAct(run, 'actEnds', 'F1.1');
    const speedMps = (toS - fromS) * model.stopDecelMps2;
    expect(along(track)(fromS).xMps).toBeCloseTo(speedMps, 1);
    const stood = along(track)(toS);
    expect(stood.xM - along(track)(fromS).xM).toBeCloseTo(speedMps ** 2 / (2 * model.stopDecelMps2), 2);
    expect(Math.hypot(stood.xMps, stood.yMps)).toBeLessThan(0.1);
    expect(along(track)(run.durationS).xM).toBeCloseTo(5, 1);
  });

  it('a change of facing is paid once: the backward way after it starts without another', () => {
    const change: TestSpot = {
      role: 'D1',
      atM: at(-15, 0),
      acts: [skate([at(0, 0)]), { kind: 'pivot' }, skate([at(12, 0)], { facing: 'backward' })],
    };
    const run = runOf([change]);
    const [track] = run.tracks as [Track];
    const fromS = timeOfAct(run, 'actStarts', 'D1.1');
    const toS = timeOfAct(run, 'actStarts', 'D1.2');
    expect(toS - fromS).toBeCloseTo(model.transitionS, 9);
    const before = along(track)(fromS).xMps;
    expect(along(track)(toS).xMps / before).toBeCloseTo(1 - PIVOT_LOSS_RATIO.value, 2);
    expect(turnedRad(track.facingRad[Math.ceil(toS * 120)]!, Math.PI)).toBeLessThan(0.05);
    expect(turnedRad(track.facingRad.at(-1)!, Math.PI)).toBeLessThan(0.01);
    // The way backward slows to the backward top speed at once, with no glide of the transition before it.
    const soon = along(track)(toS + 0.3).xMps;
    const slower = model.topSpeedMps * model.backwardRatio;
    expect(soon).toBeCloseTo(slower + (along(track)(toS).xMps - slower) * Math.exp(-0.3 / model.tauS), 1);
  });

  it('who stands turns round on the spot in the transition time', () => {
    const run = runOf([{ role: 'D1', atM: at(0, 0), facingRad: 0.4, acts: [{ kind: 'pivot' }] }]);
    expect(run.durationS).toBeCloseTo(model.transitionS, 1);
    expect(turnedRad(run.tracks[0]!.facingRad.at(-1)!, 0.4 + Math.PI)).toBeLessThan(0.01);
    expect(run.tracks[0]!.distanceM).toBe(0);
  });

  it('a turn changes the heading by its angle and goes on from there', () => {
    const run = runOf([
      {
        role: 'F1',
        atM: at(-15, 0),
        acts: [skate([at(-3, 0)]), { kind: 'turn', angleRad: -2, effortRatio: 0.5 }],
      },
    ]);
    const end = along(run.tracks[0]!)(timeOfAct(run, 'actEnds', 'F1.1'));
    expect(turnedRad(Math.atan2(end.yMps, end.xMps), -2)).toBeLessThan(0.02);
    expect(run.findings).toEqual([]);
  });

  it('a body turns to a spot at its rate, and goes on looking there', () => {
    const run = runOf([
      {
        role: 'F1',
        atM: at(0, 0),
        facingRad: 0,
        acts: [
          { kind: 'face', whom: named('F2') },
          { kind: 'hold', seconds: 0 },
        ],
      },
      { role: 'F2', atM: at(-6, 0.1), acts: [skate([at(-6, 8)], { cue: { on: 'after', seconds: 1.5 } })] },
      { role: 'F3', atM: at(0, -8), facingRad: 0, acts: [{ kind: 'face', whom: named('F2') }] },
    ]);
    const angleRad = Math.atan2(0.1, -6);
    expect(timeOfAct(run, 'actEnds', 'F1.0')).toBeCloseTo(angleRad / TURN_RATE_RADPS.value, 2);
    const [, whom, looks] = run.tracks as [Track, Track, Track];
    const wanted = Math.atan2(whom.yM.at(-1)! + 8, whom.xM.at(-1)!);
    expect(turnedRad(looks.facingRad.at(-1)!, wanted)).toBeLessThan(0.02);
  });

  it('without a spot it is the puck that is looked at, the one that is played before one that lies', () => {
    const run = runOf(
      [
        { role: 'F1', atM: at(0, 0), facingRad: 0, acts: [{ kind: 'face' }] },
        { role: 'F2', atM: at(-6, 0), puck: true, acts: [skate([at(-6, 6)], { kind: 'carry' })] },
      ],
      at(3, 3),
    );
    const [looks, carrier] = run.tracks as [Track, Track];
    const puck = run.pucks.find(one => one.owner.some(owner => owner === 1))!;
    expect(carrier.distanceM).toBeGreaterThan(5);
    expect(turnedRad(looks.facingRad.at(-1)!, Math.atan2(puck.yM.at(-1)!, puck.xM.at(-1)!))).toBeLessThan(
      0.05,
    );
  });
});

const insidePoint = fc.tuple(evenly(-18, 18), evenly(-7, 7)).map(([x, y]): IcePoint => at(x, y));

/** First time, in tenths of a second, at which the screener would mind one of the others. */
const mindsFrom = (run: Run): number => {
  const [from, to, screener] = run.tracks as [Track, Track, Track];
  for (let i = 0; i < run.sampleCount; i++) {
    for (const other of [from, to]) {
      for (let t = 0; t <= 1.25; t += 0.02) {
        const x = screener.xM[i]! - other.xM[i]! + t * (screener.xMps[i]! - other.xMps[i]!);
        const y = screener.yM[i]! - other.yM[i]! + t * (screener.yMps[i]! - other.yMps[i]!);
        if (Math.hypot(x, y) < KEEP_APART_M.value) return i / 12;
      }
    }
  }
  return Number.POSITIVE_INFINITY;
};

describe('a screen', () => {
  it('follows the same way as the plain reference', () => {
    let compared = 0;
    fc.assert(
      fc.property(
        fc.array(insidePoint, { minLength: 5, maxLength: 5 }),
        fc.double({ min: 0.2, max: 0.8, noNaN: true }),
        (points, alongRatio) => {
          const [from, fromTo, to, toTo, screener] = points as [
            IcePoint,
            IcePoint,
            IcePoint,
            IcePoint,
            IcePoint,
          ];
          fc.pre(Math.hypot(from.xM - to.xM, from.yM - to.yM) > 6);
          const run = runOf([
            { role: 'X1', side: 'them', atM: from, acts: [skate([fromTo], { effortRatio: 0.6 })] },
            { role: 'X2', side: 'them', atM: to, acts: [skate([toTo], { effortRatio: 0.6 })] },
            {
              role: 'D1',
              atM: screener,
              acts: [{ kind: 'screen', from: named('X1'), to: named('X2'), alongRatio }],
            },
          ]);
          const [x1, x2, d1] = run.tracks as [Track, Track, Track];
          const reference = referenceScreen(
            { start: { ...screener, xMps: 0, yMps: 0 }, power: model, startsAtS: 0 },
            along(x1),
            along(x2),
            alongRatio,
            run.durationS,
          );
          // The reference does not turn aside for a body: compared until two would come near.
          const untilTenths = mindsFrom(run);
          reference.placesM.forEach((place, i) => {
            if (i >= untilTenths) return;
            compared++;
            const here = along(d1)(i / 10);
            expect(Math.hypot(here.xM - place.xM, here.yM - place.yM)).toBeLessThan(0.1);
          });
        },
      ),
      { numRuns: 25, seed: 41, endOnFailure: true },
    );
    expect(compared).toBeGreaterThan(150);
  });

  it('comes to rest with the blade in the lane to our net, the body a blade behind it, facing the puck', () => {
    const run = runOf([
      { role: 'X1', side: 'them', atM: at(-10, 8), acts: [{ kind: 'hold', seconds: 6 }] },
      { role: 'D1', atM: at(-20, -6), acts: [{ kind: 'screen', from: named('X1'), alongRatio: 0.4 }] },
    ]);
    const [, d1] = run.tracks as [Track, Track];
    const netXM = -27.1272;
    const lengthM = Math.hypot(netXM + 10, 8);
    const share = 0.4 + BLADE_AHEAD_M.value / lengthM;
    expect(d1.xM.at(-1)).toBeCloseTo(-10 + share * (netXM + 10), 2);
    expect(d1.yM.at(-1)).toBeCloseTo(8 - share * 8, 2);
    expect(turnedRad(d1.facingRad.at(-1)!, Math.atan2(8, -10 - netXM))).toBeLessThan(0.01);
  });

  it('alone keeps no rep alive, and gives way to the cue of the next act', () => {
    const run = runOf([
      { role: 'X1', side: 'them', atM: at(5, 0), acts: [skate([at(-12, 0)])] },
      {
        role: 'D1',
        atM: at(-10, 3),
        acts: [
          { kind: 'screen', from: named('X1'), alongRatio: 0.5 },
          skate([at(-20, 8)], { cue: { on: 'spotCrosses', spot: named('X1'), line: 'blueLineMinusX' } }),
        ],
      },
    ]);
    expect(run.durationS).toBeLessThan(10);
    expect(timeOfAct(run, 'actEnds', 'D1.0')).toBeCloseTo(timeOfAct(run, 'actStarts', 'D1.1'), 9);
  });
});

describe('the cue of a place reached', () => {
  it('comes when the circle is entered, inside the step, whoever waits and however fast', () => {
    fc.assert(
      fc.property(
        insidePoint,
        insidePoint,
        fc.double({ min: 0.1, max: 3, noNaN: true }),
        fc.double({ min: 0.2, max: 0.8, noNaN: true }),
        evenly(-0.95, 0.95),
        (from, to, withinM, share, asideRatio) => {
          const farM = Math.hypot(to.xM - from.xM, to.yM - from.yM);
          fc.pre(farM > 8);
          // A circle whose middle lies beside the straight way, so that it is only cut.
          const asideM = asideRatio * withinM;
          const atM = at(
            from.xM + share * (to.xM - from.xM) - (asideM * (to.yM - from.yM)) / farM,
            from.yM + share * (to.yM - from.yM) + (asideM * (to.xM - from.xM)) / farM,
          );
          fc.pre(Math.hypot(atM.xM - from.xM, atM.yM - from.yM) > withinM);
          const run = runOf([
            { role: 'F1', atM: from, acts: [skate([to])] },
            {
              role: 'F2',
              atM: at(0, 11),
              acts: [{ kind: 'hold', seconds: 1, cue: { on: 'reaches', spot: named('F1'), atM, withinM } }],
            },
          ]);
          const cueS = timeOfAct(run, 'actStarts', 'F2.0') - model.expectedReactionS;
          const here = along(run.tracks[0]!)(cueS);
          expect(Math.hypot(here.xM - atM.xM, here.yM - atM.yM)).toBeCloseTo(withinM, 2);
        },
      ),
      { numRuns: 80, seed: 42, endOnFailure: true },
    );
  });

  it('does not come from being there already, and keeps the rep alive only while somebody may still come', () => {
    const waits = (withinM: number): TestSpot => ({
      role: 'F2',
      atM: at(0, 5),
      acts: [
        { kind: 'hold', seconds: 1, cue: { on: 'reaches', spot: named('F1'), atM: at(-10, 0), withinM } },
      ],
    });
    const run = runOf([
      { role: 'F1', atM: at(-10, 0), acts: [skate([at(0, 0)], { stops: true })] },
      waits(1),
    ]);
    expect(run.findings.map(finding => finding.kind)).toContain('cueNeverFires');
    expect(run.durationS).toBeLessThan(5);
  });
});

describe('the cue of being caught', () => {
  it('comes from who is after the puck too, once, with the reach', () => {
    const run = runOf([
      {
        role: 'X1',
        side: 'them',
        atM: at(10, 0),
        puck: true,
        acts: [skate([at(-20, 0)], { kind: 'carry', effortRatio: 0.6 })],
      },
      { role: 'F1', atM: at(15, 1), acts: [{ kind: 'steal', whom: named('X1'), effortRatio: 1 }] },
      { role: 'F2', atM: at(0, 8), acts: [skate([at(-5, 8)], { cue: { on: 'caught', spot: named('X1') } })] },
    ]);
    const cueS = timeOfAct(run, 'actStarts', 'F2.0') - model.expectedReactionS;
    const [whom, by] = run.tracks as [Track, Track];
    const here = along(whom)(cueS);
    const there = along(by)(cueS);
    expect(Math.hypot(here.xM - there.xM, here.yM - there.yM)).toBeCloseTo(model.lungeReachM, 2);
  });

  it('comes with the chaser’s reach, and sets off another', () => {
    const run = runOf([
      { role: 'X1', side: 'them', atM: at(10, 0), acts: [skate([at(-20, 0)], { effortRatio: 0.6 })] },
      { role: 'F1', atM: at(14, 1), acts: [{ kind: 'chase', whom: named('X1'), effortRatio: 1 }] },
      {
        role: 'F2',
        atM: at(0, 8),
        acts: [skate([at(-5, 8)], { cue: { on: 'caught', spot: named('X1') } })],
      },
    ]);
    const caught = run.events.find(event => event.kind === 'caught')!;
    expect(timeOfAct(run, 'actStarts', 'F2.0')).toBeCloseTo(caught.timeS + model.expectedReactionS, 9);
  });
});
