import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Moment } from '../documents/game.ts';
import { type EventReading, eventTableOf, readEventTable, wordsIn } from './event-table.ts';

const hunt = { habit: 'hunt' as Moment['habit'], verdict: 'done' } as const;
const how: EventReading = {
  period: 0,
  time: 1,
  clock: 'periodDown',
  periodMinutes: 20,
  what: 2,
  means: { 'puck won': hunt },
  skater: 3,
  x: 4,
  y: 5,
  unit: 'feet',
  origin: { lengthM: 60.96, widthM: 25.908 },
};
const text = `period,clock,event,player,x,y
1,19:30,face-off,,100,42.5
1,18:00,puck won,#14 Okal,125,42.5
2,20:00,puck won,9,,
`;
const table = eventTableOf(text);
if ('sentence' in table) throw new Error(table.sentence);

describe('a table of events from elsewhere', () => {
  it('puts lines at their time in the film, from the tie before them, and their place in metres from centre ice', () => {
    const read = readEventTable(table, how, [
      { line: 0, filmTimeS: 40 },
      { line: 2, filmTimeS: 1500 },
    ]);
    expect(read).toMatchObject({
      kind: 'ok',
      leftOutCount: 1,
      moments: [
        { ...hunt, filmTimeS: 130, skaterNumber: 14, period: 1 },
        { ...hunt, filmTimeS: 1500, skaterNumber: 9, period: 2 },
      ],
    });
    const [first, second] = read.kind === 'ok' ? read.moments : [];
    // 125 ft of 200 is 25 ft past the middle: 7.62 m; 42.5 ft is the middle of 85.
    expect(first!.atM!.xM).toBeCloseTo(7.62, 9);
    expect(first!.atM!.yM).toBeCloseTo(0, 9);
    expect(second!.atM).toBeUndefined();
  });

  it('turns places round in the periods that were played to the other end, and wants the period for it', () => {
    const two = eventTableOf(
      'period,clock,event,player,x,y\n1,100,puck won,,125,20\n2,100,puck won,,125,20\n',
    );
    if ('sentence' in two) throw new Error(two.sentence);
    const placesOf = (turned: 'even' | 'odd') => {
      const read = readEventTable(two, { ...how, clock: 'whole', turned }, [{ line: 0, filmTimeS: 200 }]);
      return read.kind === 'ok' ? read.moments.map(one => one.atM!) : [];
    };
    const [stands, turned] = placesOf('even');
    expect(stands!.xM).toBeCloseTo(7.62, 9);
    expect(turned).toEqual({ xM: -stands!.xM, yM: -stands!.yM });
    expect(placesOf('odd')).toEqual([turned, stands]);
    const { period: _, ...without } = { ...how, clock: 'whole', turned: 'even' } as const;
    expect(readEventTable(two, without, [{ line: 0, filmTimeS: 0 }])).toEqual({
      kind: 'refused',
      sentence: 'Line 2: its period is wanted, from 1 to 9, to know to which end it was played.',
    });
  });

  it('takes no line of others for one of ours: neither their number nor a verdict on us', () => {
    const two = eventTableOf(
      'time,event,team,number,note\n10,goal,LAN,4,far post\n20,goal,QBY,4,from the slot\n30,goal,,4,\n',
    );
    if ('sentence' in two) throw new Error(two.sentence);
    const missed = { habit: 'hunt' as Moment['habit'], verdict: 'missed' } as const;
    const of: EventReading = {
      time: 0,
      clock: 'whole',
      periodMinutes: 20,
      what: 1,
      means: { goal: missed },
      skater: 3,
      note: 4,
      unit: 'feet',
      origin: 'centre',
    };
    const taken = (reading: EventReading) => {
      const read = readEventTable(two, reading, [{ line: 0, filmTimeS: 10 }]);
      return read.kind === 'ok' ? { ...read, moments: read.moments.map(({ id: _, ...one }) => one) } : read;
    };
    const first = { ...missed, filmTimeS: 10, skaterNumber: 4, note: 'far post' };
    expect(taken({ ...of, team: 2, ours: ['LAN'] })).toEqual({
      kind: 'ok',
      leftOutCount: 0,
      moments: [
        first,
        { habit: 'hunt', verdict: 'cannotSee', filmTimeS: 20, note: 'QBY 4: from the slot', ofOthers: true },
        { habit: 'hunt', verdict: 'cannotSee', filmTimeS: 30, note: '4', ofOthers: true },
      ],
    });
    expect(taken({ ...of, team: 2, ours: ['LAN'], others: 'leftOut' })).toEqual({
      kind: 'ok',
      leftOutCount: 2,
      moments: [first],
    });
    // Without such a column nothing tells them apart.
    const all = taken(of);
    expect(all.kind === 'ok' && all.moments.map(one => one.skaterNumber)).toEqual([4, 4, 4]);
  });

  it('gives a line the same id whenever it comes in, and other lines other ids', () => {
    const ids = (ties: { line: number; filmTimeS: number }[]) => {
      const read = readEventTable(table, how, ties);
      return read.kind === 'ok' ? read.moments.map(one => one.id) : [];
    };
    const once = ids([{ line: 0, filmTimeS: 40 }]);
    expect(ids([{ line: 1, filmTimeS: 7 }])).toEqual(once);
    expect(new Set(once).size).toBe(2);
  });

  it('moves with its tie: a film that began later by t has every line later by t', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 5000 }), fc.integer({ min: 0, max: 500 }), (atS, laterS) => {
        const times = (filmTimeS: number) => {
          const read = readEventTable(table, how, [{ line: 0, filmTimeS }]);
          return read.kind === 'ok' ? read.moments.map(one => one.filmTimeS) : [];
        };
        expect(times(atS + laterS)).toEqual(times(atS).map(one => one + laterS));
      }),
    );
  });

  it('counts the words of a column, the commonest first', () => {
    expect(wordsIn(table, 2)).toEqual([
      ['puck won', 2],
      ['face-off', 1],
    ]);
  });

  it.each([
    ['1,soon,puck won,14,,', 'Line 2: a time is wanted, as 754.2, 12:34 or 1:02:03, not "soon".'],
    ['1,21:00,puck won,14,,', 'Line 2: the clock shows more than the 20 minutes of a period.'],
    [',12:00,puck won,14,,', 'Line 2: its period is wanted beside the clock, from 1 to 9.'],
    ['1,12:00,puck won,14,left,3', 'Line 2: a place is wanted, not "left, 3".'],
    ['1,12:00,puck won,14,900,3', 'Line 2: 900, 3 lies off the ice: is it in feet?'],
  ])('refuses %s in one sentence', (line, sentence) => {
    const bad = eventTableOf(`period,clock,event,player,x,y\n${line}\n`);
    if ('sentence' in bad) throw new Error(bad.sentence);
    expect(readEventTable(bad, how, [{ line: 0, filmTimeS: 0 }])).toEqual({ kind: 'refused', sentence });
  });

  it('wants a tie, heads and lines', () => {
    expect(readEventTable(table, how, [])).toMatchObject({ kind: 'refused' });
    expect(eventTableOf('')).toMatchObject({ sentence: expect.stringContaining('first line') });
    expect(eventTableOf('a,b\n')).toMatchObject({ sentence: expect.stringContaining('no line') });
  });
});
