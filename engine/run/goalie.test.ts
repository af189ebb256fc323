import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { manyRun } from '../many/many-run.ts';
import { at, planOf, playableFrom, type TestAct } from './drill-shorthand.reference.ts';
import { GOALIE_NEAR_S, GOALIE_REACTS_S, GOALIE_RESET_S } from './goalie-rows.ts';
import { runDrill } from './run-drill.ts';

const shoot = (speedMps: number, more: Partial<TestAct> = {}): TestAct =>
  ({ kind: 'shoot', atEnd: 'plusX', speedMps, cue: { on: 'whistle' }, ...more }) as TestAct;
const GOAL_XM = 27.1;

const shotFrom = (xM: number, yM: number, speedMps: number, hasGoalie = true) =>
  playableFrom(
    planOf([
      { role: 'F1', atM: at(xM, yM), facingRad: 0, puck: true, acts: [shoot(speedMps)] },
      ...(hasGoalie
        ? [
            {
              role: 'G',
              kind: 'goalie' as const,
              side: 'them' as const,
              atM: at(26.1, 0),
              facingRad: Math.PI,
            },
          ]
        : []),
    ]),
  );
const endOf = (playable: ReturnType<typeof shotFrom>) =>
  runDrill(playable).events.find(
    event => event.kind === 'goal' || event.kind === 'save' || event.kind === 'wide',
  );

describe('a shot and a goalie', () => {
  it('is a goal without a goalie, from wherever it is shot', () => {
    expect(endOf(shotFrom(15, 5, 25, false))?.kind).toBe('goal');
  });

  it('at the middle: stopped when the puck takes longer than the reaction and the move, by hand', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 5, max: 24, noNaN: true }),
        fc.double({ min: 15, max: 35, noNaN: true }),
        (xM, speedMps) => {
          // The puck leaves from the blade, a metre ahead, and is barely slowed over so short a way.
          const takesS = (26.1 - xM - 1) / speedMps;
          const needsS = GOALIE_REACTS_S.value + GOALIE_NEAR_S.value;
          fc.pre(Math.abs(takesS - needsS) > 0.02 && takesS > 0.01);
          expect(endOf(shotFrom(xM, 0, speedMps))?.kind).toBe(takesS > needsS ? 'save' : 'goal');
        },
      ),
    );
  });

  it('the same from the other side of the ice', () => {
    for (const yM of [2, 5, 9]) {
      expect(endOf(shotFrom(18, yM, 25))?.kind).toBe(endOf(shotFrom(18, -yM, 25))?.kind);
    }
  });

  it('every shot ends once: in the net, at the goalie, or wide', () => {
    const playable = shotFrom(14, 6, 25);
    const tally = manyRun(playable, { seed: 3, repCount: 150 });
    const [shot] = tally.shots;
    const counts = [shot!.goal.count, shot!.save.count, shot!.wide.count];
    expect(counts.reduce((sum, count) => sum + count, 0)).toBe(shot!.taken.count);
    // From fifteen metres the goalie has time for nearly all that is on the net; a few are wide.
    expect(shot!.save.count).toBeGreaterThan(shot!.goal.count);
    expect(shot!.wide.count).toBeGreaterThan(0);
  });

  it('the nearer the shot, the more go in', () => {
    const goals = [20, 16, 10].map(
      xM => manyRun(shotFrom(xM, 2, 25), { seed: 3, repCount: 150 }).shots[0]!.goal.count,
    );
    expect(goals[0]).toBeGreaterThan(goals[1]!);
    expect(goals[1]).toBeGreaterThanOrEqual(goals[2]!);
  });

  it('who was shot at a moment ago is not set for the next', () => {
    const two = (gapS: number) =>
      playableFrom(
        planOf([
          { role: 'F1', atM: at(12, 3), puck: true, acts: [shoot(25)] },
          {
            role: 'F2',
            atM: at(12, -3),
            puck: true,
            acts: [shoot(25, { cue: { on: 'after', seconds: gapS } })],
          },
          { role: 'G', kind: 'goalie', side: 'them', atM: at(26.1, 0), facingRad: Math.PI },
        ]),
      );
    const goalsOfSecond = (gapS: number) =>
      manyRun(two(gapS), { seed: 5, repCount: 150 }).shots.find(shot => shot.spot === 'F2')!.goal.count;
    expect(goalsOfSecond(GOALIE_RESET_S.value / 2)).toBeGreaterThan(goalsOfSecond(GOALIE_RESET_S.value + 1));
  });

  it('the puck stays with the goalie', () => {
    const run = runDrill(shotFrom(10, 0, 25));
    expect(run.pucks[0]!.xM.at(-1)).toBeLessThan(GOAL_XM);
    expect(run.pucks[0]!.xM.at(-1)).toBeGreaterThan(25);
  });
});
