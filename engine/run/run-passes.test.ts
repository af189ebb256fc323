import { describe, expect, it } from 'vitest';
import type { DrillPlan } from '../drill/drill.ts';
import { puckModelOf } from '../puck/puck-model.ts';
import { slideStopDistance, slowingOf } from '../puck/slide.ts';
import { levelOf } from '../skater/level.ts';
import {
  at,
  drillOf,
  eventOf,
  named,
  planOf,
  runOf,
  skate,
  type TestSpot,
} from './drill-shorthand.reference.ts';
import type { Run } from './run-result.ts';

const level = levelOf('collegeWomen');
const kindsOf = (run: Run) => run.findings.map(finding => finding.kind);

describe('the puck', () => {
  const passAhead = (more: object = {}): DrillPlan =>
    planOf([
      {
        role: 'D1',
        atM: at(-20, -5),
        puck: true,
        acts: [{ kind: 'pass', toSpot: named('F1'), way: 'direct', speedMps: 14, ...more }],
      },
      { role: 'F1', atM: at(-14, 8), facingRad: 0, acts: [skate([at(-4, 9), at(8, 4), at(16, 0)])] },
    ]);

  it('meets the blade of a receiver on a curved route', () => {
    const run = runOf(passAhead());
    const got = eventOf(run, 'receive', 'F1')!;
    const i = Math.round(got.timeS * 120);
    const track = run.tracks[1]!;
    const bladeX = track.xM[i]! + Math.cos(track.facingRad[i]!);
    const bladeY = track.yM[i]! + Math.sin(track.facingRad[i]!);
    expect(Math.hypot(got.atM.xM - bladeX, got.atM.yM - bladeY)).toBeLessThan(0.15);
    expect(kindsOf(run)).toEqual([]);
  });

  it('meets it off the boards too', () => {
    const run = runOf(passAhead({ way: 'bank', speedMps: 16 }));
    const got = eventOf(run, 'receive', 'F1')!;
    expect(eventOf(run, 'bounce')!.timeS).toBeLessThan(got.timeS);
    const i = Math.round(got.timeS * 120);
    const track = run.tracks[1]!;
    expect(Math.hypot(got.atM.xM - track.xM[i]!, got.atM.yM - track.yM[i]!)).toBeLessThan(1.2);
  });

  it('never jumps: it moves no faster than the shot, but for the draw to the blade', () => {
    const run = runOf(drillOf());
    for (let i = 1; i < run.sampleCount; i++) {
      const step = Math.hypot(
        run.pucks[0]!.xM[i]! - run.pucks[0]!.xM[i - 1]!,
        run.pucks[0]!.yM[i]! - run.pucks[0]!.yM[i - 1]!,
      );
      expect(step).toBeLessThan(0.25);
    }
  });

  it('ends in the net after a shot, and the goal line is crossed in between', () => {
    const run = runOf(drillOf());
    const shot = eventOf(run, 'shot')!;
    const line = run.events.find(e => e.kind === 'puckCrosses' && e.line === 'goalLineMinusX')!;
    expect(line.timeS).toBeGreaterThan(shot.timeS);
    expect(run.pucks[0]!.xM.at(-1)).toBeLessThan(-27.1);
    expect(Math.abs(run.pucks[0]!.yM.at(-1)!)).toBeLessThan(0.92);
  });

  it('is cut off by an opponent who stands in the lane, and the lane is called shut', () => {
    const run = runOf(
      planOf([
        {
          role: 'D1',
          atM: at(-20, 0),
          puck: true,
          acts: [{ kind: 'pass', toSpot: named('F1'), way: 'direct', speedMps: 10 }],
        },
        { role: 'F1', atM: at(5, 0), facingRad: Math.PI },
        { role: 'X1', side: 'them', atM: at(-6, 1), facingRad: Math.PI },
      ]),
    );
    const shut = run.findings.find(finding => finding.kind === 'laneShut')!;
    expect(shut.value).toBeLessThan(0);
    const cut = eventOf(run, 'intercept', 'X1')!;
    expect(cut.timeS).toBeGreaterThanOrEqual(level.model.reactionS);
    expect(run.pucks[0]!.owner.at(-1)).toBe(2);
    expect(eventOf(run, 'receive', 'F1')).toBeUndefined();
  });

  it('off the boards too is cut off where the stick is on the puck, and that is where the lane is called shut', () => {
    const run = runOf(
      planOf([
        {
          role: 'D1',
          atM: at(-15, 6),
          puck: true,
          acts: [{ kind: 'pass', toSpot: named('F1'), way: 'bank', speedMps: 14 }],
        },
        { role: 'F1', atM: at(20, 6), facingRad: Math.PI },
        { role: 'X1', side: 'them', atM: at(2, 10.5), facingRad: Math.PI },
      ]),
    );
    const shut = run.findings.find(finding => finding.kind === 'laneShut')!;
    const cut = eventOf(run, 'intercept', 'X1')!;
    expect(shut.timeS).toBeCloseTo(cut.timeS, 1);
    // The puck of the played rep at that time.
    expect(Math.hypot(shut.atM.xM - cut.atM.xM, shut.atM.yM - cut.atM.yM)).toBeLessThan(0.5);
  });

  const passTo = (speedMps: number, farXM: number, acts: TestSpot['acts'] = []): Run =>
    runOf(
      planOf([
        {
          role: 'D1',
          atM: at(-20, 0),
          puck: true,
          acts: [{ kind: 'pass', toSpot: named('F1'), way: 'direct', speedMps }],
        },
        { role: 'F1', atM: at(farXM, 5), facingRad: 0, acts },
      ]),
    );

  it('dies short of who stands too far for so weak a pass, by what the slide does not cover', () => {
    const run = passTo(1, 10);
    const finding = run.findings.find(one => one.kind === 'passDiesShort')!;
    const fromM = eventOf(run, 'pass', 'D1')!.atM;
    const slidM = slideStopDistance(slowingOf(puckModelOf()), 1);
    const reachesM = Math.hypot(finding.atM.xM - fromM.xM, finding.atM.yM - fromM.yM);
    expect(reachesM).toBeCloseTo(slidM, 6);
    expect(finding.value).toBeCloseTo(Math.hypot(10 - finding.atM.xM, 5 - finding.atM.yM), 9);
    expect(run.findings.map(one => one.kind)).not.toContain('receiverCannotGetThere');
  });

  it('goes by a receiver whose way nobody could foresee, with the distance said', () => {
    const run = runOf(
      planOf([
        {
          role: 'D1',
          atM: at(-20, 0),
          puck: true,
          acts: [
            {
              kind: 'pass',
              toSpot: named('F1'),
              way: 'direct',
              speedMps: 12,
              cue: { on: 'after', seconds: 1.5 },
            },
          ],
        },
        { role: 'F1', atM: at(0, 8), acts: [{ kind: 'chase', whom: named('F2'), effortRatio: 1 }] },
        { role: 'F2', atM: at(8, -4), acts: [skate([at(12, -8), at(4, -11), at(-4, -8)])] },
      ]),
    );
    const finding = run.findings.find(one => one.kind === 'receiverCannotGetThere')!;
    expect(finding.value).toBeGreaterThan(finding.threshold);
    const i = Math.round(finding.timeS * run.stepHz);
    const f1 = run.tracks[1]!;
    const apartM = Math.hypot(f1.xM[i]! - finding.atM.xM, f1.yM[i]! - finding.atM.yM);
    expect(Math.abs(apartM - finding.value)).toBeLessThan(0.2);
  });

  it('slides on when its receiver skates away from it, with the distance said', () => {
    const run = passTo(4, 10, [skate([at(25, 5)])]);
    const finding = run.findings.find(one => one.kind === 'passDiesShort')!;
    expect(finding.value).toBeGreaterThan(finding.threshold);
    expect(run.pucks[0]!.owner.at(-1)).toBe(-1);
    const moved = Math.hypot(
      run.pucks[0]!.xM.at(-1)! - run.pucks[0]!.xM[0]!,
      run.pucks[0]!.yM.at(-1)! - run.pucks[0]!.yM[0]!,
    );
    expect(moved).toBeGreaterThan(5);
  });
});
