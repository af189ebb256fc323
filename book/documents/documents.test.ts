import type { DrillPlan, Standard } from '@icewright/engine';
import { describe, expectTypeOf, it } from 'vitest';
import type { Drill } from './drill.ts';
import type { Habit } from './team.ts';

describe('documents and engine speak of the same things', () => {
  it('a drill document is a drill plan, and a habit holds a standard', () => {
    expectTypeOf<Drill>().toExtend<DrillPlan>();
    expectTypeOf<Habit['standard']>().toExtend<Standard>();
    expectTypeOf<Standard>().toExtend<Habit['standard']>();
  });
});
