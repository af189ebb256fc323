import { describe, expect, it } from 'vitest';
import { boardsDistanceAt } from '../drill/in-boards.ts';
import { levelOf } from '../skater/level.ts';
import { sprintTimeTo } from '../skater/sprint.ts';
import {
  at,
  drillOf,
  eventOf,
  named,
  planOf,
  playableFrom,
  runOf,
  skate,
} from './drill-shorthand.reference.ts';
import type { Run } from './run-result.ts';

const level = levelOf('collegeWomen');
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
