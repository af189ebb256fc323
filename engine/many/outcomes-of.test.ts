import { describe, expect, it } from 'vitest';
import { at, drillOf, named, planOf } from '../run/drill-shorthand.reference.ts';
import { changesFor, freeQuantitiesOf, planWith } from './free-quantity.ts';
import { atOtherLine, findLineOf, isSameWant } from './outcome.ts';
import { outcomeWords } from './outcome-words.ts';
import { outcomesOf } from './outcomes-of.ts';

describe('what can be wanted of a drill', () => {
  const plan = drillOf();
  const outcomes = outcomesOf(plan);

  it('is named in words that a coach would say', () => {
    expect(
      outcomes.map(one => `${outcomeWords(one, plan).want} ${outcomeWords(one, plan).beforeLine}`.trim()),
    ).toEqual([
      'F3 catches X1 before',
      'F3 is level with the puck when it crosses',
      'D1 is level with the puck when it crosses',
      'X2 is level with the puck when it crosses',
      'we win the puck before it is over',
      'the pass from Co arrives at X2',
      'the pass from X2 arrives at X1',
      'X2 is ready when X2 has the puck',
      'X1 is ready when X1 has the puck',
      'D1 is ready when X2 has the puck',
    ]);
  });

  it('asks at the blue line the puck goes to, and elsewhere when told', () => {
    expect(findLineOf(outcomes[1]!)).toBe('blueLineMinusX');
    const moved = atOtherLine(outcomes[1]!, 'centreLine');
    expect(findLineOf(moved)).toBe('centreLine');
    expect(isSameWant(moved, outcomes[1]!)).toBe(true);
    expect(isSameWant(moved, outcomes[2]!)).toBe(false);
  });

  it('is nothing where nobody moves', () => {
    expect(outcomesOf(planOf([{ role: 'F1', atM: at(0, 0) }]))).toEqual([]);
  });
});

describe('what may move of a spot', () => {
  const plan = planOf([
    {
      role: 'F1',
      atM: at(4, 2),
      puck: true,
      acts: [
        {
          kind: 'pass',
          toSpot: named('F2'),
          way: 'direct',
          speedMps: 12,
          cue: { on: 'after', seconds: 1.5 },
        },
        { kind: 'gap', whom: named('F2'), distanceM: 3 },
      ],
    },
    { role: 'F2', atM: at(-4, 0) },
  ]);
  const quantities = freeQuantitiesOf(plan, named('F1'));

  it('is its start, its delay, its pass and its gap', () => {
    expect(quantities.map(one => [one.kind, one.now])).toEqual([
      ['spotAlong', 4],
      ['spotAlong', 2],
      ['delay', 1.5],
      ['passSpeed', 12],
      ['gap', 3],
    ]);
    expect(freeQuantitiesOf(plan, named('nobody'))).toEqual([]);
  });

  it('gives another plan and leaves the one it is given alone', () => {
    const before = JSON.stringify(plan);
    for (const free of quantities) {
      const value = (free.low + free.high) / 2;
      const changed = planWith(plan, free, value);
      const again = freeQuantitiesOf(changed, named('F1')).find(
        one =>
          one.kind === free.kind &&
          (one.kind !== 'spotAlong' || free.kind !== 'spotAlong' || one.way === free.way),
      );
      expect(again?.now).toBeCloseTo(value, 12);
      expect(planWith(changed, free, free.now)).toEqual(plan);
      expect(changed.spots[named('F2')]).toBe(plan.spots[named('F2')]);
    }
    expect(JSON.stringify(plan)).toBe(before);
  });

  it('takes a puck on the stick along', () => {
    expect(changesFor(plan, quantities[0]!, 6).map(change => change.value)).toEqual([at(6, 2), at(6, 2)]);
  });
});
