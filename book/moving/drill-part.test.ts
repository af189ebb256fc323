import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { drillPartText, readDrillPart } from './drill-part.ts';

const spot = {
  rank: 0,
  side: 'us',
  kind: 'skater',
  role: 'F1',
  atM: { xM: 1, yM: 2 },
  facingRad: 0,
  waitingCount: 0,
  acts: {},
};
const part = { spots: { a: spot }, pucks: {}, gear: {}, games: {}, acts: [], outside: { b: 'X1' } };
const textOf = (changed: object): string => drillPartText({ ...part, ...changed } as never);
const saidOf = (text: string): string => {
  const read = readDrillPart(text);
  return read.kind === 'refused' ? read.said : 'taken';
};

describe('a part of a drill as text', () => {
  it('comes back as it was', () => {
    expect(readDrillPart(textOf({}))).toEqual({
      kind: 'part',
      part: { icewright: 'part of a drill', schema: 1, ...part },
    });
  });

  it('refused with one sentence that says what, when anything is wrong', () => {
    expect(saidOf('')).toBe('What was copied is not a part of a drill.');
    expect(saidOf('{"icewright":"a song"}')).toMatch(
      /cannot be read: “icewright”: this must be “part of a drill”/,
    );
    expect(saidOf(textOf({ spots: { a: { ...spot, side: 'ours' } } }))).toMatch(
      /side: this must be one of us, them, and “ours” stands there \(spots\.a\.side\)\.$/,
    );
    expect(saidOf(textOf({ spots: { a: { ...spot, atM: { xM: 1e9, yM: 0 } } } }))).toMatch(
      /place along the sheet, in metres: .*\(spots\.a\.atM\.xM\)\.$/,
    );
    expect(saidOf(textOf({ pucks: { p: { atM: { xM: 0, yM: 0 }, ownerSpot: 'z', count: 1 } } }))).toMatch(
      /puck on the stick of somebody/,
    );
    expect(saidOf(' '.repeat(2_000_000))).toMatch(/too long/);
  });

  it('never throws, whatever is pasted', () => {
    fc.assert(
      fc.property(
        fc.oneof(
          fc.string(),
          fc.json(),
          fc
            .jsonValue()
            .map(value => JSON.stringify({ ...part, icewright: 'part of a drill', schema: 1, spots: value })),
        ),
        text => {
          const read = readDrillPart(text);
          expect(read.kind === 'part' || read.said.endsWith('.')).toBe(true);
        },
      ),
      { numRuns: 500, seed: 31 },
    );
  });
});
