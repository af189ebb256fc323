import { type DrillPlan, rinkOf } from '@icewright/engine';
import type { IceCard, IceCardBlock } from '../card/ice-card.ts';
import { MIDDLE_FIRST } from './middle-first.plan.ts';
import { planOf, spotId } from './plan-of.ts';

const at = (xM: number, yM: number) => ({ xM, yM });
const rink = rinkOf({ preset: '200x85ft' });
const skate = { kind: 'skate', facing: 'forward', effortRatio: 1, stops: false } as const;
const carry = { ...skate, kind: 'carry' } as const;

const FOUR_CORNERS = planOf(
  [
    {
      role: 'F',
      atM: at(26.2, 9.2),
      facingRad: -2.4,
      waitingCount: 5,
      acts: [
        { ...skate, throughM: [at(16.5, 10.5), at(7, 9.3), at(-4, 5.2), at(-10, 4.6)] },
        { ...carry, throughM: [at(-16, 4.2), at(-21.4, 2.6)] },
        { kind: 'shoot', atEnd: 'minusX', speedMps: 25 },
      ],
    },
    {
      role: 'Co',
      kind: 'coach',
      atM: at(-24.2, 9.4),
      acts: [{ kind: 'pass', toSpot: spotId('F'), way: 'direct', speedMps: 12 }],
    },
    { role: 'G', kind: 'goalie', atM: at(-26.2, 0), facingRad: 0 },
  ],
  [{ atM: at(-26.3, 10.9), count: 20 }],
);

const BANK_OUT = planOf(
  [
    {
      role: 'D1',
      atM: at(-25, 6),
      facingRad: 0,
      acts: [{ kind: 'pass', toSpot: spotId('F1'), way: 'bank', speedMps: 14, cue: { on: 'whistle' } }],
    },
    {
      role: 'F1',
      atM: at(-12, 11),
      facingRad: 0.2,
      waitingCount: 3,
      acts: [
        { ...skate, throughM: [at(-6, 10.4), at(-2, 9)] },
        { ...carry, throughM: [at(8, 7), at(16, 3)] },
        { kind: 'shoot', atEnd: 'plusX', speedMps: 25 },
      ],
    },
    {
      role: 'X1',
      side: 'them',
      atM: at(-8, 3),
      facingRad: Math.PI,
      acts: [
        { kind: 'chase', whom: spotId('F1'), effortRatio: 1, cue: { on: 'receive', spot: spotId('F1') } },
      ],
    },
    { role: 'G', kind: 'goalie', atM: at(26.2, 0), facingRad: Math.PI },
  ],
  [{ atM: at(-25.6, 4.2), count: 8 }],
  [
    { kind: 'pylon', atM: at(2, 2), facingRad: 0 },
    { kind: 'pylon', atM: at(12, -3), facingRad: 0 },
  ],
);

const block = (
  startClock: string,
  endClock: string,
  minutes: number,
  words: readonly [title: string, cueWords: string],
  keyPoints: readonly string[],
  facts: readonly [leads: string, pucks: string, ice: string, workRest: string],
  plan?: DrillPlan,
): IceCardBlock => ({
  startClock,
  endClock,
  minutes,
  title: words[0],
  cueWords: words[1],
  keyPoints,
  ...(plan ? { plan } : {}),
  rink,
  facts: [
    { name: 'leads', words: facts[0] },
    { name: 'pucks', words: facts[1] },
    { name: 'ice', words: facts[2] },
    { name: 'work : rest', words: facts[3] },
  ].filter(fact => fact.words !== ''),
});

/** An invented practice of an invented team. */
export const ICE_CARD: IceCard = {
  team: 'Tern Harbour Lanterns',
  title: 'Practice 31',
  facts: [
    { small: 'Thursday 12 November', strong: '19:40 to 20:55' },
    { small: 'Cannery Road, sheet 2', strong: '75 min, whole sheet' },
    { small: 'Moss Point, away', strong: 'in 2 days' },
  ],
  today: 'the first forward back has the middle before the puck has our line.',
  blocks: [
    block(
      '19:40',
      '19:50',
      10,
      ['Four corners', 'heads up early'],
      ['Pass before the red line', 'Goalies: high, low, then free', 'Easy first, game pace last three'],
      ['Falk', 'two corners', 'whole sheet, both ways at once', '1 : 3'],
      FOUR_CORNERS,
    ),
    block(
      '19:51',
      '20:03',
      12,
      ['Middle first', 'turn, look, middle'],
      ['F3: read, turn, inside the dots', 'Level before our blue line', 'D1: gap 1.8 m at the line'],
      ['Ashdown', 'far circle', 'whole sheet, ends by turns', '1 : 8'],
      MIDDLE_FIRST,
    ),
    block(
      '20:04',
      '20:16',
      12,
      ['Off the boards', 'see it before you have it'],
      ['D1: head up, aim at the bounce, not at the stick', 'F1: stick on the ice, hips up ice'],
      ['Tarn, Žižková', 'behind the net', 'one end at a time', '1 : 4'],
      BANK_OUT,
    ),
    block(
      '20:17',
      '20:29',
      12,
      ['Rush, then back', 'five strides, then look'],
      ['3 on 2, two chase from behind', 'First back takes the middle', 'Play on to the whistle'],
      ['Ashdown', 'centre', 'whole sheet', '1 : 7'],
      MIDDLE_FIRST,
    ),
    block(
      '20:30',
      '20:34',
      4,
      ['Talk', 'what did you see?'],
      ['One thing each; drink; skates tied'],
      ['all', '', '', ''],
    ),
    block(
      '20:35',
      '20:53',
      18,
      ['Units', 'one touch, then move'],
      ['Five and four, 45 s', 'Kill: sticks in the lanes', 'Change ends at 20:44'],
      ['Falk', '8 an end', 'both ends', '1 : 2'],
      BANK_OUT,
    ),
  ],
  groups: [
    { name: 'White', people: '26 Lindqvaer, 17 Thornquist, 9 Amoako' },
    { name: 'Blue', people: '10 Varga, 24 Dacosta, 27 Halvorsby' },
    { name: 'Grey', people: '12 Rautiola, 15 Okpara, 19 Bergfalk' },
    { name: 'Red', people: '16 Castelnau, 23 Nkemelu, 11 Adeyemi*' },
    { name: 'D 1', people: '6 Ilmaste, 2 Sørmo' },
    { name: 'D 2', people: '3 Castell, 8 Žižková' },
    { name: 'D 3', people: '5 Hale, 4 Đặng Thị Ước' },
    { name: 'G', people: '1 Kvist, 30 Arroyo-Beck' },
  ],
  note: '* yellow jersey: no contact. Missing: 14, 22. One whistle: stop and look. Two: come in.',
  cautions: ['X2 stops at the hash marks, not at the boards.'],
};
