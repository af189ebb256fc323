import { type Drill, emptyDrill, emptyPractice, emptyTeam, type Practice, type Team } from '@icewright/book';
import { describe, expect, it } from 'vitest';
import { cardOf } from './card-of.ts';

const skater = (rank: number, number: number, name: string, group: string, noContact = false) => ({
  rank,
  number,
  name,
  position: 'F',
  noContact,
  group,
});
const team = {
  ...emptyTeam({
    name: 'Invented',
    level: 'u18',
    rink: { preset: '60x30m' },
    madeAt: '2026-09-01T10:00:00Z',
  }),
  clockFace: '12',
  skaters: {
    a: skater(1, 9, 'Amoako', 'White'),
    b: skater(2, 11, 'Žižková', 'White', true),
    c: skater(3, 14, 'Nakatani', 'Blue'),
  },
} as unknown as Team;
const practice = {
  ...emptyPractice({ title: 'Practice 3', day: '2026-11-12', starts: '19:40', iceMinutes: 60 }),
  missing: ['c'],
  blocks: {
    t: {
      rank: 1,
      title: 'Talk',
      minutes: 3,
      changeoverMinutes: 0,
      says: '',
      keyPoints: 'One\n\n Two ',
      leads: 'Ashdown',
      pucks: '',
      ice: '',
      groups: '',
    },
  },
} as unknown as Practice;

describe('a practice as it is printed', () => {
  const card = cardOf(team, practice, new Map(), undefined);

  it('says clock times in the face the team reads, and only the facts there are', () => {
    expect(card.facts[0]).toEqual({ small: 'Thursday 12 November', strong: '7:40\u2009pm to 8:40\u2009pm' });
    expect(card.blocks[0]).toMatchObject({
      startClock: '7:40\u2009pm',
      endClock: '7:43\u2009pm',
      keyPoints: ['One', 'Two'],
      facts: [{ name: 'leads', words: 'Ashdown' }],
    });
    expect(card.blocks[0]).not.toHaveProperty('plan');
  });

  it('leaves out who is missing, and cautions for who may not be hit', () => {
    expect(card.groups).toEqual([{ name: 'White', people: '9\u00a0Amoako, 11\u00a0Žižková*' }]);
    expect(card.note).toContain('Missing: 14.');
    expect(card.cautions).toEqual(['11\u00a0Žižková: no contact until the medical staff lift it.']);
  });

  it('cautions where a drill of today takes somebody too fast into the boards, and not where he stops in time', () => {
    const sprintTo = (xM: number) =>
      ({
        ...emptyDrill({
          title: 'Long sprint',
          level: 'u18',
          rink: { preset: '60x30m' },
          madeAt: team.madeAt,
        }),
        spots: {
          f: {
            rank: 1,
            side: 'us',
            kind: 'skater',
            role: 'F1',
            atM: { xM: 0, yM: 5 },
            facingRad: 0,
            waiting: 0,
            acts: {
              go: {
                rank: 1,
                kind: 'skate',
                cue: { on: 'whistle' },
                throughM: [{ xM, yM: 5 }],
                facing: 'forward',
                effortRatio: 1,
                stops: false,
              },
            },
          },
        },
      }) as unknown as Drill;
    const twice = {
      ...practice,
      blocks: {
        t: { ...practice.blocks['t' as never], drill: 'd' },
        u: { ...practice.blocks['t' as never], rank: 2, drill: 'd' },
      },
    } as unknown as Practice;
    const said = (xM: number) =>
      cardOf(team, twice, new Map([['d', sprintTo(xM)]]), undefined).cautions.slice(1);
    expect(said(29)).toEqual([
      expect.stringMatching(/^Long sprint: F1 comes too near the boards: .* needed to stop\.$/),
    ]);
    expect(said(10)).toEqual([]);
  });
});
