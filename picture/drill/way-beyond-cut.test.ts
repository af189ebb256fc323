import { describe, expect, it } from 'vitest';
import { recordingOf } from '../pen/recording-pen.ts';
import { CUT_BANK, CUT_BANK_RINK, FREE_BANK, runOf } from '../scenes/drill-cut-bank.ts';
import { planOf, type SceneSpot, spotId } from '../scenes/plan-of.ts';
import { drawDrillOnly } from './draw-drill.ts';
import { drillLinesOf } from './drill-lines.ts';
import { drawnMarks } from './used-marks.ts';

const passOf = (plan: typeof CUT_BANK) => {
  const run = runOf(plan);
  const line = drillLinesOf(plan, CUT_BANK_RINK, { run }).find(each => each.kind === 'pass');
  if (line?.kind !== 'pass') throw new Error('no pass');
  return { run, line };
};

describe('a pass off the boards that is cut', () => {
  it('goes on from the cut over the bounce it has when nobody is in the way, as that rep was played', () => {
    const { line: cut } = passOf(CUT_BANK);
    const { line: free } = passOf(FREE_BANK);
    expect(free.meant).toBeUndefined();
    expect(free.legs).toHaveLength(3);
    expect(cut.legs).toHaveLength(2);
    expect(cut.meant).toHaveLength(3);
    const [from, bounce, end] = cut.meant!;
    expect(from).toEqual(cut.legs[1]);
    const apartM = (one: typeof from, other: typeof from) => Math.hypot(one!.x - other!.x, one!.y - other!.y);
    expect(apartM(bounce, free.legs[1])).toBeLessThan(0.3);
    // It ends beside whom it was for, no farther than a stick from where that one takes it.
    expect(apartM(end, free.legs[2])).toBeLessThan(1.5);
  });

  it('has its word at the boards and its own entry in the key', () => {
    const { run, line } = passOf(CUT_BANK);
    const calls = recordingOf(pen => drawDrillOnly(pen, CUT_BANK, CUT_BANK_RINK, { run, findings: [] }));
    const word = calls.find(call => call.call === 'text' && call.words === 'bank');
    if (word?.call !== 'text') throw new Error('no word');
    const bounce = line.meant![1]!;
    expect(Math.hypot(word.x - bounce.x, word.y - bounce.y)).toBeLessThan(3);
    expect(calls.some(call => call.call === 'path' && call.mark === 'passMeant')).toBe(true);
    const drawn = { rink: CUT_BANK_RINK, run, plan: CUT_BANK };
    expect(drawnMarks([drawn])).toEqual(expect.arrayContaining(['bank', 'meant']));
    expect(drawnMarks([{ ...drawn, plan: FREE_BANK, run: runOf(FREE_BANK) }])).not.toContain('meant');
  });
});

describe('a straight pass that is cut', () => {
  const at = (xM: number, yM: number) => ({ xM, yM });
  const planWith = (others: readonly SceneSpot[]) =>
    planOf(
      [
        {
          role: 'D1',
          atM: at(-12, 2),
          acts: [{ kind: 'pass', toSpot: spotId('F1'), way: 'direct', speedMps: 14 }],
        },
        { role: 'F1', atM: at(8, 6) },
        ...others,
      ],
      [{ atM: at(-12, 2), ownerSpot: spotId('D1'), count: 1 }],
    );

  it('goes on straight from the cut to beside whom it was for; one that arrives has no rest', () => {
    const { line: cut } = passOf(
      planWith([{ role: 'X1', side: 'them', atM: at(-4, 3.6), facingRad: Math.PI }]),
    );
    const { line: free } = passOf(planWith([]));
    expect(free.meant).toBeUndefined();
    expect(cut.meant).toHaveLength(2);
    const [from, end] = cut.meant!;
    expect(from).toEqual(cut.legs[1]);
    const [start] = cut.legs;
    const meet = free.legs[1]!;
    // The rest lies on the line of the part that was played, and ends where the free pass is taken or a stick beside it.
    const turn = (end!.y - from!.y) * (from!.x - start!.x) - (end!.x - from!.x) * (from!.y - start!.y);
    const long =
      Math.hypot(end!.x - from!.x, end!.y - from!.y) * Math.hypot(from!.x - start!.x, from!.y - start!.y);
    expect(Math.abs(turn) / long).toBeLessThan(0.02);
    expect(Math.hypot(end!.x - meet.x, end!.y - meet.y)).toBeLessThan(1.5);
  });
});

describe('the puck on a stick', () => {
  it('is seen beside the disc of who has it, in a drawing of any size', () => {
    for (const k of [1, 1.75]) {
      const calls = recordingOf(pen => drawDrillOnly(pen, FREE_BANK, CUT_BANK_RINK), { k });
      const circles = calls.flatMap(call => (call.call === 'circle' ? [call] : []));
      const pucks = circles.filter(({ mark }) => mark === 'puck');
      const disc = circles.find(({ mark, x }) => mark === 'discUs' && x === -10)!;
      expect(pucks).toHaveLength(1);
      expect(Math.hypot(pucks[0]!.x - disc.x, pucks[0]!.y - disc.y)).toBeGreaterThan(disc.radius);
    }
  });
});
