import { describe, expect, it } from 'vitest';
import { puckModelOf } from '../puck/puck-model.ts';
import { boardsOf } from '../rink/boards.ts';
import { levelOf } from '../skater/level.ts';
import type { CarryOption, OptionScene, OptionSkater, PassOption } from './option-parts.ts';
import { passOptions } from './pass-options.ts';

const boards = boardsOf(60.96, 25.908, 8.5344);
const { model } = levelOf('collegeWomen');
const stands = (id: string, xM: number, yM: number): OptionSkater => ({
  id,
  kind: 'skater',
  atM: { xM, yM },
  velocityMps: { xMps: 0, yMps: 0 },
  model,
});
const scene = (us: readonly OptionSkater[], them: readonly OptionSkater[]): OptionScene => ({
  boards,
  puck: puckModelOf(),
  puckM: us[0]!.atM,
  carrierId: us[0]!.id,
  us,
  them,
  attacks: 'plusX',
});
const isPass = (option: PassOption | CarryOption): option is PassOption => option.kind !== 'carry';
const passTo = (answer: ReturnType<typeof passOptions>, id: string, kind: 'direct' | 'bank') =>
  answer.options.filter(isPass).find(one => one.toId === id && one.kind === kind);

describe('the options of a carrier', () => {
  it('keep a bank pass when a stick shuts the direct lane (common practice, no source)', () => {
    // A defender has her stick in the lane along the boards; the same pass off the boards passes behind her.
    const open = scene([stands('D1', -20, -9), stands('LW', -4, -9)], []);
    const shut = scene(open.us, [stands('X1', -12, -8.6)]);
    const direct = passTo(passOptions(shut), 'LW', 'direct')!;
    const bank = passTo(passOptions(shut), 'LW', 'bank')!;
    expect(direct.lane.band).toBe('shut');
    expect(direct.marginS).toBeLessThan(0);
    expect(bank.lane.band).toBe('open');
    expect(bank.marginS).toBeGreaterThan(0);
    expect(bank.chance).toBeGreaterThan(direct.chance);
    const without = passTo(passOptions(open), 'LW', 'direct')!;
    expect(without.lane.band).toBe('open');
    expect(without.chance).toBeGreaterThan(bank.chance);
  });

  it('leave no open lane between five defenders around three attackers at the line (common practice, no source)', () => {
    // Attackers abreast at the blue line of the end they attack, 10 m apart; two defenders between each pair or beside, one behind.
    const us = [stands('LW', 7, 9), stands('C', 7, 0), stands('RW', 7, -9)];
    const them = [
      stands('X1', 8.2, 4.6),
      stands('X2', 8.2, -4.6),
      stands('X3', 9, 9.4),
      stands('X4', 9, -9.4),
      stands('X5', 9.2, 0.4),
    ];
    for (const carrierId of ['LW', 'C', 'RW']) {
      const carrier = us.find(one => one.id === carrierId)!;
      const answer = passOptions({ ...scene(us, them), carrierId, puckM: carrier.atM });
      for (const option of answer.options.filter(isPass)) expect(option.lane.band).not.toBe('open');
    }
  });

  it('rank by chance, give every term of it, and multiply to the chance', () => {
    const answer = passOptions(
      scene([stands('C', 0, 0), stands('LW', 9, 6), stands('D1', -9, -5)], [stands('X1', 5, 2)]),
    );
    const chances = answer.options.map(one => one.chance);
    expect(chances).toEqual([...chances].sort((a, b) => b - a));
    expect(answer.options.filter(one => one.kind === 'carry')).toHaveLength(1);
    for (const option of answer.options.filter(isPass)) {
      const factor = (term: string) => option.why.find(one => one.term === term)!.value;
      expect(factor('lane') * factor('aim') * factor('control')).toBeCloseTo(option.chance, 12);
      for (const term of ['lane', 'aim', 'control']) {
        expect(factor(term)).toBeGreaterThanOrEqual(0);
        expect(factor(term)).toBeLessThanOrEqual(1);
      }
    }
  });

  it('turn round with the ends', () => {
    const turn = (one: OptionSkater): OptionSkater => ({ ...one, atM: { xM: -one.atM.xM, yM: -one.atM.yM } });
    const us = [stands('C', 2, 1), stands('LW', 12, 7), stands('RW', 11, -8)];
    const them = [stands('X1', 7, 2), stands('X2', 9, -3)];
    const there = passOptions(scene(us, them)).options;
    const back = passOptions({ ...scene(us.map(turn), them.map(turn)), attacks: 'minusX' }).options;
    expect(back).toHaveLength(there.length);
    there.forEach((option, index) => {
      expect(back[index]!.kind).toBe(option.kind);
      expect(back[index]!.chance).toBeCloseTo(option.chance, 6);
    });
  });

  it('refuse receivers who are offside, when the line is given', () => {
    const answer = passOptions({ ...scene([stands('C', 2, 0), stands('LW', 12, 5)], []), blueLineXM: 7.6 });
    expect(answer.none.map(one => one.reason)).toEqual(['offside', 'offside']);
    expect(answer.options).toHaveLength(1);
  });

  it('name those whose velocity a picture does not tell, and are less sure about them', () => {
    const { velocityMps: _, ...unknown } = stands('X1', 6, 3.4);
    const us = [stands('C', 0, 0), stands('LW', 12, 0)];
    const sure = passOptions(scene(us, [stands('X1', 6, 3.4)]));
    const unsure = passOptions(scene(us, [unknown]));
    expect(sure.unknownVelocity).toEqual([]);
    expect(unsure.unknownVelocity).toEqual(['X1']);
    const lane = (answer: typeof sure) =>
      passTo(answer, 'LW', 'direct')!.why.find(one => one.term === 'lane')!.value;
    expect(Math.abs(lane(unsure) - 0.5)).toBeLessThan(Math.abs(lane(sure) - 0.5));
  });

  it('carry away from the one opponent', () => {
    const answer = passOptions(scene([stands('C', 0, 0)], [stands('X1', 4, 4)]));
    const carry = answer.options[0] as CarryOption;
    expect(carry.kind).toBe('carry');
    expect(Math.sin(carry.headingRad)).toBeLessThan(0);
  });
});
