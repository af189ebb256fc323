import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evenly } from '../../test/evenly.ts';
import { manyRun } from '../many/many-run.ts';
import { at, named, planOf, playableFrom, type TestAct, type TestSpot } from './drill-shorthand.reference.ts';
import { GOALIE_REACTS_S, GOALIE_SLIDE_MPS } from './goalie-rows.ts';
import { runDrill } from './run-drill.ts';
import type { Track } from './run-result.ts';

const NET_XM = 27.1272;
const OUT_M = 1;
const goalie: TestSpot = {
  role: 'G',
  kind: 'goalie',
  side: 'them',
  atM: at(NET_XM - OUT_M, 0),
  facingRad: Math.PI,
};
const hold = (seconds: number): TestAct => ({ kind: 'hold', seconds, cue: { on: 'whistle' } });
const passTo = (role: string, cue: TestAct['cue'] = { on: 'whistle' }): TestAct =>
  ({ kind: 'pass', toSpot: named(role), way: 'direct', speedMps: 15, cue }) as TestAct;

/** How far the goalie is to the side of the line from a place to the middle of the net, metres. */
const offAngleM = (track: Track, i: number, xM: number, yM: number): number => {
  const x = xM - NET_XM;
  return Math.abs((track.xM[i]! - NET_XM) * yM - track.yM[i]! * x) / Math.hypot(x, yM);
};

describe('a goalie who guards a net', () => {
  it('comes to the angle of a puck that stays, as far out as it was put, and faces it', () => {
    fc.assert(
      fc.property(fc.double({ min: 8, max: 22, noNaN: true }), evenly(-9, 9), (xM, yM) => {
        const run = runDrill(
          playableFrom(planOf([{ role: 'F1', atM: at(xM, yM), puck: true, acts: [hold(3)] }, goalie])),
        );
        const track = run.tracks[1]!;
        const last = run.sampleCount - 1;
        const puckXM = run.pucks[0]!.xM[last]!;
        const puckYM = run.pucks[0]!.yM[last]!;
        expect(offAngleM(track, last, puckXM, puckYM)).toBeLessThan(0.02);
        expect(Math.hypot(track.xM[last]! - NET_XM, track.yM[last]!)).toBeCloseTo(OUT_M, 1);
        const toPuckRad = Math.atan2(puckYM - track.yM[last]!, puckXM - track.xM[last]!);
        expect(Math.cos(track.facingRad[last]! - toPuckRad)).toBeGreaterThan(0.999);
      }),
      { numRuns: 15, seed: 1 },
    );
  });

  it('follows a pass no sooner than it reacts, and no faster than it slides', () => {
    const run = runDrill(
      playableFrom(
        planOf([
          {
            role: 'F1',
            atM: at(19, 7),
            puck: true,
            acts: [hold(2), passTo('F2', { on: 'after', seconds: 0 })],
          },
          { role: 'F2', atM: at(19, -7), acts: [hold(6)] },
          goalie,
        ]),
      ),
    );
    const track = run.tracks[2]!;
    const passS = run.events.find(event => event.kind === 'pass')!.timeS;
    const speeds = Array.from(track.xM, (_, i) => Math.hypot(track.xMps[i]!, track.yMps[i]!));
    const atOf = (timeS: number): number => Math.floor(timeS * 120);
    expect(Math.max(...speeds)).toBeLessThanOrEqual(GOALIE_SLIDE_MPS.value);
    // Still to the half of a hand in a second until the reaction is over; then on its way.
    expect(Math.max(...speeds.slice(atOf(passS), atOf(passS + GOALIE_REACTS_S.value)))).toBeLessThan(0.05);
    expect(Math.max(...speeds.slice(atOf(passS + GOALIE_REACTS_S.value)))).toBeGreaterThan(1);
    const receiveS = run.events.find(event => event.kind === 'receive')!.timeS;
    // It is late when the puck is taken, and there a second after.
    expect(offAngleM(track, atOf(receiveS), 19, -7)).toBeGreaterThan(0.2);
    expect(offAngleM(track, atOf(receiveS + 1.2), 19, -7)).toBeLessThan(0.1);
  });

  it('lets in more after a pass across the slot than from a puck that stayed', () => {
    // Common practice, no source: the puck that crosses the middle before the net is the one the goalie is late for.
    const shoot: TestAct = {
      kind: 'shoot',
      atEnd: 'plusX',
      speedMps: 22,
      cue: { on: 'receive', spot: named('F2') },
    } as TestAct;
    const goalRatio = (fromM: ReturnType<typeof at>): number => {
      const [shot] = manyRun(
        playableFrom(
          planOf([
            { role: 'F1', atM: fromM, puck: true, facingRad: -1, acts: [passTo('F2')] },
            { role: 'F2', atM: at(15, -6), facingRad: 0, acts: [shoot] },
            goalie,
          ]),
        ),
        { seed: 5, repCount: 120 },
      ).shots;
      return shot!.goal.count / shot!.taken.count;
    };
    const across = goalRatio(at(15, 6));
    const straight = goalRatio(at(5, -11.5));
    expect(across).toBeGreaterThan(straight + 0.08);
  });
});
