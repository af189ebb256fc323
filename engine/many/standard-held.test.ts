import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evenly } from '../../test/evenly.ts';
import type { Playable } from '../drill/playable.ts';
import type { Standard } from '../habit/standard.ts';
import { at, named, planOf, playableFrom, skate } from '../run/drill-shorthand.reference.ts';
import { runDrill } from '../run/run-drill.ts';
import { wrapRad } from '../units/angles.ts';
import type { IcePoint } from '../units/points.ts';
import { judgeRep } from './judge-rep.ts';
import { standardHeldIn } from './standard-held.ts';

const AT_LINE = { at: 'puckCrosses', line: 'blueLineMinusX' } as const;

/** A carrier comes to our line; one forward comes back from `fromM`, `delayS` late. */
const rep = (fromXM: number, delayS: number) => {
  const playable = playableFrom(
    planOf([
      {
        role: 'X1',
        side: 'them',
        atM: at(8, 5),
        facingRad: Math.PI,
        puck: true,
        acts: [skate([at(-20, 4)], { kind: 'carry' }), { kind: 'shoot', atEnd: 'minusX', speedMps: 20 }],
      },
      {
        role: 'F1',
        atM: at(fromXM, -3),
        facingRad: Math.PI,
        acts: [skate([at(-22, -1)], { cue: { on: 'after', seconds: delayS } })],
      },
      { role: 'G', kind: 'goalie', atM: at(-26, 0) },
    ]),
  );
  return { playable, run: runDrill(playable) };
};

/** The same rep at the other end: everybody turned about the centre spot, on the same side as before, playing towards the other net. */
const repAtOtherEnd = (fromXM: number, delayS: number) => {
  const { playable } = rep(fromXM, delayS);
  const turned = (atM: IcePoint): IcePoint => at(0 - atM.xM, 0 - atM.yM);
  const there: Playable = {
    ...playable,
    pucks: playable.pucks.map(puck => ({ ...puck, atM: turned(puck.atM) })),
    spots: playable.spots.map(spot => ({
      ...spot,
      atM: turned(spot.atM),
      facingRad: wrapRad(spot.facingRad + Math.PI),
      attacks: spot.side === 'us' ? 'minusX' : 'plusX',
      acts: spot.acts.map(act => {
        if (act.kind === 'shoot') return { ...act, atEnd: 'plusX' };
        return 'throughM' in act ? { ...act, throughM: act.throughM.map(turned) } : act;
      }),
    })),
  };
  return { playable: there, run: runDrill(there) };
};

describe('a habit held in a rep', () => {
  it('is judged the same at the other end, where ours play towards the other net', () => {
    const standards: readonly Standard[] = [
      { kind: 'levelWith', who: 'firstForwardBack', whom: 'puck', withinM: 1.5, when: AT_LINE },
      { kind: 'goalSide', who: 'firstForwardBack', whom: 'puck', withinM: 0, when: AT_LINE },
      { kind: 'within', who: 'firstForwardBack', whom: 'ourNet', withinM: 16, when: AT_LINE },
      { kind: 'numbers', zone: 'ourZone', atLeastCount: 1, when: { at: 'theyShoot' } },
    ];
    const answers = new Set<string>();
    fc.assert(
      fc.property(evenly(-2, 16), evenly(0, 1.5), (fromXM, delayS) => {
        const here = rep(fromXM, delayS);
        const there = repAtOtherEnd(fromXM, delayS);
        for (const standard of standards) {
          const wanted = standardHeldIn(standard, here.run, here.playable).kind;
          expect(standardHeldIn(standard, there.run, there.playable).kind).toBe(wanted);
          answers.add(`${standard.kind} ${wanted}`);
        }
      }),
      { numRuns: 40, seed: 3 },
    );
    for (const answer of ['levelWith held', 'levelWith notHeld', 'within held', 'within notHeld'])
      expect(answers).toContain(answer);
  });

  it('is judged as level with the puck is, by a way of its own, for one forward', () => {
    const standard: Standard = {
      kind: 'levelWith',
      who: 'firstForwardBack',
      whom: 'puck',
      withinM: 1.5,
      when: AT_LINE,
    };
    fc.assert(
      fc.property(evenly(-2, 16), evenly(0, 1.5), (fromXM, delayS) => {
        const { playable, run } = rep(fromXM, delayS);
        const track = run.tracks[1]!;
        const over = run.events.find(
          event => event.kind === 'puckCrosses' && event.line === 'blueLineMinusX',
        )!;
        const sample = Math.round(over.timeS * run.stepHz);
        const byHand = track.xM[sample]! - run.pucks[0]!.xM[sample]! <= 1.5;
        expect(standardHeldIn(standard, run, playable).kind).toBe(byHand ? 'held' : 'notHeld');
      }),
      { numRuns: 40 },
    );
  });

  it('goalies and coaches are not counted, and a moment that does not come is said', () => {
    const { playable, run } = rep(4, 0);
    const house: Standard = { kind: 'numbers', zone: 'ourZone', atLeastCount: 1, when: { at: 'theyShoot' } };
    expect(standardHeldIn(house, run, playable).kind).toBe('held');
    expect(standardHeldIn({ ...house, atLeastCount: 2 }, run, playable).kind).toBe('notHeld');
    expect(standardHeldIn({ ...house, when: { at: 'weWinThePuck' } }, run, playable)).toEqual({
      kind: 'none',
    });
  });

  it('the puck is lost when theirs has what ours had', () => {
    const playable = playableFrom(
      planOf([
        {
          role: 'F1',
          atM: at(0, 0),
          puck: true,
          acts: [
            {
              kind: 'pass',
              toSpot: named('F2'),
              way: 'direct',
              speedMps: 12,
              cue: { on: 'after', seconds: 1 },
            },
          ],
        },
        { role: 'F2', atM: at(12, 0), facingRad: Math.PI },
        { role: 'X1', side: 'them', atM: at(7, 0.2), facingRad: Math.PI },
      ]),
    );
    const run = runDrill(playable);
    const taken = run.events.find(event => event.kind === 'intercept')!;
    const near: Standard = {
      kind: 'within',
      who: 'anyOfUs',
      whom: 'puck',
      withinM: 30,
      when: { at: 'weLoseThePuck' },
    };
    const held = standardHeldIn(near, run, playable);
    expect(held.kind).toBe('held');
    expect(held.kind !== 'none' && held.timeS).toBeCloseTo(taken.timeS, 1);
    expect(judgeRep({ kind: 'standardHeld', standard: near }, run, playable).verdict).toBe('yes');
    expect(
      judgeRep({ kind: 'standardHeld', standard: { ...near, withinM: 0.1 } }, run, playable).verdict,
    ).toBe('other');
  });
});
