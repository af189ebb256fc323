import { type Drill, emptyDrill, exportDrills, importDrills, type Team } from '@icewright/book';
import { describe, expect, it } from 'vitest';
import { alreadyHere } from './already-here.ts';

const habits = {} as Team['habits'];
const madeAt = '2026-10-01T10:00:00Z';
const drill = (more: Partial<Drill> = {}): Drill => ({
  ...emptyDrill({ title: 'Round the dots', level: 'u18', rink: { preset: '60x30m' }, madeAt }),
  ...more,
});
/** As it comes back from a file. */
const returned = (one: Drill): Drill => {
  const read = importDrills(exportDrills([{ id: 'x', drill: one }], habits), {
    habits,
    madeAt: '2027-01-01T00:00:00Z',
  });
  if (read.kind !== 'ok') throw new Error(read.said);
  return read.drills[0]!.value;
};

describe('a drill file that is taken in', () => {
  it('is known again when nothing of it has changed, whenever it was made', () => {
    expect(alreadyHere(returned(drill()), [['mine', drill()]], habits)).toEqual({ kind: 'same', id: 'mine' });
  });

  it('says in which parts a drill of the same title differs, the nearest of several', () => {
    const here = [
      ['far', drill({ minutes: 3, says: 'Go' })],
      ['near', drill({ minutes: 20 })],
    ] as const;
    expect(alreadyHere(returned(drill()), here, habits)).toEqual({
      kind: 'differs',
      id: 'near',
      parts: ['minutes'],
    });
  });

  it('is new when nothing here has its title', () => {
    expect(alreadyHere(returned(drill({ title: 'Another' })), [['mine', drill()]], habits)).toEqual({
      kind: 'new',
    });
  });
});
