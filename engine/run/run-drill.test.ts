import { describe, expect, it } from 'vitest';
import type { DrillPlan } from '../drill/drill.ts';
import { boardsDistanceAt } from '../drill/in-boards.ts';
import { puckModelOf } from '../puck/puck-model.ts';
import { slideStopDistance, slowingOf } from '../puck/slide.ts';
import { levelOf } from '../skater/level.ts';
import { sprintTimeTo } from '../skater/sprint.ts';
import {
  at,
  drillOf,
  named,
  planOf,
  playableFrom,
  skate,
  type TestSpot,
} from './drill-shorthand.reference.ts';
import { runDrill } from './run-drill.ts';
import type { Run, RunEvent } from './run-result.ts';

const level = levelOf('collegeWomen');
const runOf = (plan: DrillPlan): Run => runDrill(playableFrom(plan));
const eventOf = (run: Run, kind: RunEvent['kind'], spot?: string): RunEvent | undefined =>
  run.events.find(
    event => event.kind === kind && (spot === undefined || ('spot' in event && event.spot === spot)),
  );
const kindsOf = (run: Run) => run.findings.map(finding => finding.kind);

describe('scripted acts', () => {
  it('a straight route from rest crosses a line exactly when the sprint law says', () => {
    const run = runOf(planOf([{ role: 'F1', atM: at(-12, 3), acts: [skate([at(15, 3)])] }]));
    const law = sprintTimeTo(level.model, 12) as number;
    const centre = run.events.find(event => event.kind === 'spotCrosses' && event.line === 'centreLine')!;
    expect(centre.timeS).toBeCloseTo(law, 2);
    expect(centre.atM.xM).toBeCloseTo(0, 6);
    // The time is inside a step, not at its end.
    expect(Math.abs(centre.timeS * 120 - Math.round(centre.timeS * 120))).toBeGreaterThan(1e-4);
  });

  it('the next route starts with the speed the skater has', () => {
    const run = runOf(
      planOf([{ role: 'F1', atM: at(-15, 0), acts: [skate([at(0, 0)]), skate([at(12, 4)])] }]),
    );
    const ends = eventOf(run, 'actEnds', 'F1')!.timeS;
    const track = run.tracks[0]!;
    const speedAt = (i: number) => Math.hypot(track.xMps[i]!, track.yMps[i]!);
    const i = Math.floor(ends * 120);
    expect(speedAt(i)).toBeGreaterThan(7);
    expect(Math.abs(speedAt(i + 1) - speedAt(i))).toBeLessThan(0.2);
  });

  it('answers a whistle after the reaction, a delay on time, a hold for as long as it is', () => {
    const run = runOf(
      planOf([
        {
          role: 'F1',
          atM: at(0, 0),
          acts: [
            { kind: 'hold', seconds: 1.25, cue: { on: 'whistle' } },
            skate([at(5, 0)], { cue: { on: 'after', seconds: 0.503 }, stops: true }),
          ],
        },
      ]),
    );
    const starts = run.events.filter(event => event.kind === 'actStarts').map(event => event.timeS);
    const reaction = level.model.expectedReactionS;
    expect(starts[0]).toBeCloseTo(reaction, 9);
    expect(starts[1]).toBeCloseTo(reaction + 1.25 + 0.503, 9);
    expect(run.tracks[0]!.xM.at(-1)).toBeCloseTo(5, 6);
  });

  it('starts on a line that another spot crosses, one reaction after the crossing', () => {
    const run = runOf(
      planOf([
        { role: 'F1', atM: at(-12, 3), acts: [skate([at(15, 3)])] },
        {
          role: 'F2',
          atM: at(0, -8),
          acts: [skate([at(10, -8)], { cue: { on: 'spotCrosses', spot: named('F1'), line: 'centreLine' } })],
        },
      ]),
    );
    const centre = run.events.find(e => e.kind === 'spotCrosses' && e.line === 'centreLine')!.timeS;
    expect(eventOf(run, 'actStarts', 'F2')!.timeS).toBeCloseTo(centre + level.model.expectedReactionS, 9);
  });

  it('skates backward slower than forward, facing the other way', () => {
    const forward = runOf(planOf([{ role: 'D1', atM: at(-10, 0), acts: [skate([at(10, 0)])] }]));
    const backward = runOf(
      planOf([
        {
          role: 'D1',
          atM: at(-10, 0),
          facingRad: Math.PI,
          acts: [skate([at(10, 0)], { facing: 'backward' })],
        },
      ]),
    );
    expect(backward.durationS).toBeGreaterThan(forward.durationS * 1.1);
    expect(Math.abs(backward.tracks[0]!.facingRad.at(-1)!)).toBeCloseTo(Math.PI, 6);
  });
});

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

describe('findings', () => {
  it('says which cue never comes, and which act has no puck', () => {
    const run = runOf(
      planOf([
        {
          role: 'F1',
          atM: at(0, 0),
          acts: [skate([at(5, 0)], { cue: { on: 'receive', spot: named('F2') } })],
        },
        { role: 'F2', atM: at(5, 5), acts: [{ kind: 'shoot', atEnd: 'plusX', speedMps: 20 }] },
      ]),
    );
    expect(kindsOf(run).sort()).toEqual(['cueNeverFires', 'noPuckToPlay']);
  });

  it('says that a cue comes during the act before', () => {
    const run = runOf(
      planOf([
        { role: 'F1', atM: at(0, 0), acts: [skate([at(15, 0)])] },
        {
          role: 'F2',
          atM: at(-5, 8),
          acts: [
            { kind: 'hold', seconds: 4 },
            skate([at(5, 8)], { cue: { on: 'spotCrosses', spot: named('F1'), line: 'blueLinePlusX' } }),
          ],
        },
      ]),
    );
    const finding = run.findings.find(one => one.kind === 'twoActsAtOnce')!;
    expect(finding.value).toBeGreaterThan(1);
    expect(eventOf(run, 'actStarts', 'F2')).toBeDefined();
  });

  it('flags a crossing at speed, and not one that is a second apart', () => {
    const crossing = (delayS: number) =>
      runOf(
        planOf([
          { role: 'F1', atM: at(-12, 0), acts: [skate([at(12, 0)])] },
          {
            role: 'F2',
            atM: at(0, -12),
            facingRad: 1.5,
            acts: [skate([at(0, 11)], { cue: { on: 'after', seconds: delayS } })],
          },
        ]),
      );
    const flagged = crossing(0).findings.find(finding => finding.kind === 'pathsCrossTooFast')!;
    expect(flagged.value).toBeGreaterThan(9);
    expect(Math.hypot(flagged.atM.xM, flagged.atM.yM)).toBeLessThan(1.5);
    expect(kindsOf(crossing(1))).not.toContain('pathsCrossTooFast');
  });

  it('flags a route that ends at full speed a metre before the end boards, not one along the side boards', () => {
    const into = runOf(planOf([{ role: 'F1', atM: at(5, 0), acts: [skate([at(29, 0)])] }]));
    const finding = into.findings.find(one => one.kind === 'tooFastIntoBoards')!;
    const needM = finding.speedMps! ** 2 / (2 * level.model.stopDecelMps2) + 0.5;
    expect(finding.threshold).toBeCloseTo(needM, 9);
    expect(finding.value).toBeLessThan(finding.threshold);
    const beside = runOf(planOf([{ role: 'F1', atM: at(-15, 12), acts: [skate([at(15, 12)])] }]));
    expect(kindsOf(beside)).not.toContain('tooFastIntoBoards');
  });

  it('keeps everybody on the ice and says what was drawn off it', () => {
    const run = runOf(
      planOf([
        { role: 'F1', atM: at(40, 3), acts: [skate([at(0, 20), at(-5, 0)])] },
        { role: 'F2', atM: at(0, -12), acts: [{ kind: 'chase', whom: named('F1'), effortRatio: 1 }] },
      ]),
    );
    expect(kindsOf(run).filter(kind => kind === 'offTheIce')).toHaveLength(2);
    const { boards } = playableFrom(planOf([])).rink;
    for (const track of run.tracks) {
      track.xM.forEach((x, i) => {
        expect(boardsDistanceAt(boards, x, track.yM[i]!)).toBeGreaterThan(0.49);
      });
    }
  });

  it('gives way from a gap to the next act when its cue comes', () => {
    const run = runOf(
      planOf([
        {
          role: 'X1',
          side: 'them',
          atM: at(10, 0),
          puck: true,
          acts: [skate([at(-5, 0)], { kind: 'carry' }), { kind: 'shoot', atEnd: 'minusX', speedMps: 20 }],
        },
        {
          role: 'D1',
          atM: at(0, 0),
          acts: [
            { kind: 'gap', whom: named('X1'), distanceM: 3 },
            skate([at(-20, 5)], { cue: { on: 'shot', spot: named('X1') }, stops: true }),
          ],
        },
      ]),
    );
    expect(run.tracks[1]!.xM.at(-1)).toBeCloseTo(-20, 6);
  });
});

describe('the same again', () => {
  it('gives the same run twice', () => {
    expect(runOf(drillOf())).toEqual(runOf(drillOf()));
  });
});
