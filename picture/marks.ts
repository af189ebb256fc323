import type { Ink } from './inks.ts';

/**
 * The one table of marks. Widths of marks on the ice are ice metres, those of charts are px; `byK` marks grow on small
 * drawings. Every pen reads this table; the style sheet of the screens is written from it.
 */
export interface Mark {
  readonly stroke?: Ink;
  readonly fill?: Ink;
  readonly width?: number;
  readonly byK?: true;
  /** Painted line of true width that must stay visible on small drawings. */
  readonly paint?: true;
  readonly dash?: readonly [number, number];
  readonly cap?: 'round';
  readonly join?: 'round';
  readonly opacity?: number;
}

const markTable = <const T extends Record<string, Mark>>(table: T): T => table;

export const MARKS = markTable({
  // the sheet
  ice: { fill: 'ice' },
  boards: { stroke: 'rink-board', width: 0.12 },
  blueLine: { stroke: 'rink-blue', width: 0.305 },
  centreLine: { stroke: 'rink-red', width: 0.305 },
  centreBreak: { stroke: 'ice', width: 0.16, dash: [0.45, 0.75] },
  redPaint: { stroke: 'rink-red', width: 0.051, paint: true },
  bluePaint: { stroke: 'rink-blue', width: 0.051, paint: true },
  redSpot: { fill: 'rink-red' },
  blueSpot: { fill: 'rink-blue' },
  crease: { fill: 'rink-crease' },
  net: { fill: 'ice', stroke: 'ink-3', width: 0.09 },
  dotLine: { stroke: 'ink-3', width: 0.07, dash: [0.07, 0.4], cap: 'round', opacity: 0.8 },
  limit: { stroke: 'ink-3', width: 0.06, dash: [0.06, 0.26], cap: 'round' },
  zone: { stroke: 'ink', width: 0.1, dash: [0.1, 0.3], cap: 'round' },
  dimension: { stroke: 'ink-2', width: 0.045 },
  scaleFull: { fill: 'ink', stroke: 'ink', width: 0.06 },
  scaleOpen: { fill: 'ice', stroke: 'ink', width: 0.06 },

  // what skaters do
  casing: { stroke: 'ice', width: 0.46, byK: true, opacity: 0.86 },
  skate: { stroke: 'ink', width: 0.16, byK: true, join: 'round' },
  chase: { stroke: 'ink', width: 0.2, byK: true, join: 'round', dash: [0.02, 0.36], cap: 'round' },
  back: { stroke: 'ink', width: 0.13, byK: true, cap: 'round' },
  pass: { stroke: 'ink', width: 0.15, byK: true, dash: [0.8, 0.52] },
  /** The rest of one that was cut, as it was meant. */
  passMeant: { stroke: 'ink-2', width: 0.1, byK: true, dash: [0.02, 0.36], cap: 'round' },
  passHead: { stroke: 'ink', width: 0.15, byK: true },
  shot: { stroke: 'ink', width: 0.11, byK: true },
  stop: { stroke: 'ink', width: 0.19, byK: true },
  head: { fill: 'ink' },
  pivot: { fill: 'ice', stroke: 'ink', width: 0.13, byK: true },
  tick: { stroke: 'ink-2', width: 0.08, byK: true },
  thin: { stroke: 'ink', width: 0.08, byK: true },
  stick: { stroke: 'ink', width: 0.16, byK: true },
  bounce: { fill: 'ink' },
  wedge: { fill: 'wash' },

  // who and what
  halo: { fill: 'ice' },
  /** Where a goalie went by the puck alone: over her own disc, or nobody would see it. */
  goalieWayCasing: { stroke: 'ice', width: 0.2, byK: true, join: 'round', cap: 'round', opacity: 0.86 },
  goalieWay: { stroke: 'ink-2', width: 0.09, byK: true, join: 'round', cap: 'round' },
  goalieLast: { fill: 'ice', stroke: 'ink-2', width: 0.09, byK: true },
  discUs: { fill: 'ink' },
  discThem: { fill: 'ice', stroke: 'ink', width: 0.17, byK: true },
  queueUs: { fill: 'ink', stroke: 'ice', width: 0.11, byK: true },
  queueThem: { fill: 'ice', stroke: 'ink', width: 0.11, byK: true },
  discGhost: { fill: 'ice', stroke: 'ink', width: 0.11, byK: true, dash: [0.34, 0.26] },
  ghostWarm: { fill: 'ice', stroke: 'warm', width: 0.14, byK: true, dash: [0.4, 0.28] },
  unseen: { stroke: 'ink-2', width: 0.12, byK: true, dash: [0.02, 0.3], cap: 'round' },
  selected: { stroke: 'cool', width: 0.2, byK: true },
  handle: { fill: 'ice', stroke: 'cool', width: 0.16, byK: true },
  now: { fill: 'cool', stroke: 'ice', width: 0.16, byK: true },
  puck: { fill: 'ink' },
  pylon: { fill: 'ink' },
  netMoved: { fill: 'ice', stroke: 'ink', width: 0.13 },
  divider: { stroke: 'ink', width: 0.25, dash: [1.2, 0.7] },

  // when
  cueFull: { fill: 'ink', stroke: 'ink', width: 0.12, byK: true },
  cueOpen: { fill: 'ice', stroke: 'ink', width: 0.12, byK: true },
  place: { stroke: 'ink', width: 0.09, byK: true },

  // on a freeze
  fixUs: { fill: 'ink', stroke: 'ink', width: 0.13, byK: true },
  fixThem: { fill: 'ice', stroke: 'ink', width: 0.15, byK: true },
  link: { stroke: 'ink', width: 0.08, byK: true },
  level: { stroke: 'ink', width: 0.08, byK: true, dash: [0.3, 0.2] },
  ellipse: { fill: 'ink', stroke: 'ink-2', width: 0.06, opacity: 0.1 },
  ellipseEdge: { stroke: 'ink-2', width: 0.06 },
  way: { stroke: 'warm', width: 0.14, byK: true, dash: [0.14, 0.3], cap: 'round' },
  wayHead: { fill: 'warm' },
  laneGround: { fill: 'ice' },
  laneEdge: { stroke: 'ink-2', width: 0.06, byK: true },
  ruling: { stroke: 'ink', width: 0.06, byK: true },
  pin: { stroke: 'cool', width: 0.12, byK: true },
  pinBad: { stroke: 'warm', width: 0.12, byK: true },
  pictureEdge: { stroke: 'ink-3', width: 0.07, dash: [0.5, 0.3] },
  flag: { fill: 'ice', stroke: 'ink', width: 0.1, byK: true, join: 'round' },
  flagLook: { fill: 'warm', stroke: 'warm', width: 0.1, byK: true, join: 'round' },

  // over a film, px of its own measure
  filmShade: { fill: 'ink', opacity: 0.68 },
  filmBeam: { fill: 'ink', opacity: 0.2 },
  filmGround: { fill: 'ice', opacity: 0.2 },
  filmRuling: { stroke: 'ink', width: 1.1, byK: true, opacity: 0.8 },
  filmCasing: { stroke: 'ice', width: 5.4, byK: true, cap: 'round', join: 'round', opacity: 0.85 },
  filmLine: { stroke: 'ink', width: 2.4, byK: true, join: 'round' },
  /** Broader than the ring round the feet of a skater who is placed, so that the two are told apart. */
  filmRing: { stroke: 'ink', width: 5, byK: true, join: 'round' },
  filmRingCasing: { stroke: 'ice', width: 9, byK: true, join: 'round', opacity: 0.9 },
  filmEdge: { stroke: 'ink', width: 1.5, byK: true, join: 'round' },
  filmBar: { stroke: 'ink', width: 1.9, byK: true, join: 'round' },
  filmHead: { fill: 'ink', stroke: 'ice', width: 1.4, byK: true, join: 'round' },
  filmGhost: { stroke: 'warm', width: 2.4, byK: true, dash: [7, 4], join: 'round' },
  filmGhostBody: { fill: 'ice', opacity: 0.5 },
  filmWay: { stroke: 'warm', width: 2.6, byK: true, dash: [0.2, 5.4], cap: 'round' },
  filmWayHead: { fill: 'warm', stroke: 'ice', width: 1.4, byK: true, join: 'round' },

  // of many reps: faint, so that what comes often is dark
  manyYes: { stroke: 'ink', width: 0.07, opacity: 0.16 },
  manyOther: { stroke: 'ink-2', width: 0.07, dash: [0.12, 0.14], opacity: 0.3 },
  manyReceived: { fill: 'ink', opacity: 0.16 },
  manyCutOff: { stroke: 'ink', width: 0.1, opacity: 0.4 },
  manyMissed: { stroke: 'ink', width: 0.06, opacity: 0.22 },

  // charts, px
  ruleFull: { fill: 'ink', stroke: 'ink', width: 1 },
  ruleOpen: { fill: 'paper', stroke: 'ink', width: 1 },
  hair: { stroke: 'hair', width: 1 },
  axisLine: { stroke: 'edge', width: 1 },
  baseLine: { stroke: 'ink-2', width: 1 },
  playLine: { stroke: 'cool', width: 2 },
  todayLine: { stroke: 'cool', width: 1.5 },
  staveLine: { stroke: 'hair', width: 1 },
  staveZero: { stroke: 'edge', width: 1 },
  barLine: { stroke: 'ink-2', width: 1 },
  rest: { stroke: 'ink', width: 1.4, dash: [1.8, 4.4] },
  cueTie: { stroke: 'ink-3', width: 1, dash: [1.2, 3.8], cap: 'round' },
  scoreLine: { stroke: 'ink', width: 2.2, join: 'round' },
  scoreGoalie: { stroke: 'ink-2', width: 1.4, join: 'round' },
  scoreChosen: { stroke: 'ink', width: 3.2, join: 'round' },
  scoreBack: { stroke: 'ink', width: 1.7, cap: 'round' },
  scoreChase: { stroke: 'ink', width: 2.2, join: 'round', dash: [7, 4] },
  scorePass: { stroke: 'ink', width: 2, dash: [9, 6] },
  scoreShot: { stroke: 'ink', width: 1.5 },
  scoreRing: { fill: 'paper', stroke: 'ink', width: 1.7 },
  scoreStop: { stroke: 'ink', width: 2.5 },
  pulseDone: { fill: 'ink' },
  pulseMissed: { fill: 'warm' },
  pulseOther: { fill: 'edge', opacity: 0.55 },
  pulseUnseen: { fill: 'paper', stroke: 'ink', width: 1.5 },
  pulseOtherUnseen: { fill: 'paper', stroke: 'edge', width: 1 },
  band: { fill: 'ink', opacity: 0.1 },
  pooled: { stroke: 'ink', width: 2.2 },
  whisker: { stroke: 'ink-3', width: 1 },
  gameDot: { fill: 'paper', stroke: 'ink', width: 1.5 },
  minutes: { fill: 'ink-2' },
  wanted: { stroke: 'ink-3', width: 1.3, dash: [1, 4], cap: 'round' },
  practisedFrom: { stroke: 'ink-2', width: 1, dash: [3, 3] },
  whereYes: { fill: 'ink' },
  whereOther: { fill: 'paper', stroke: 'ink-3', width: 1 },
  tuneNow: { fill: 'cool', stroke: 'paper', width: 1.5 },
  changeMoved: { stroke: 'ink', width: 1.8 },
  changeMovedDot: { fill: 'ink' },
  changeDown: { stroke: 'warm', width: 1.8 },
  changeDownDot: { fill: 'warm' },
  changeNone: { stroke: 'ink-2', width: 1.8 },
  changeNoneDot: { fill: 'paper', stroke: 'ink', width: 1.8 },
  changeUnknown: { stroke: 'ink-2', width: 1.8, dash: [3, 3] },
  changeUnknownDot: { fill: 'paper', stroke: 'ink-2', width: 1.6, dash: [2, 2] },

  // the card, points
  cardRule: { stroke: 'ink', width: 0.85 },
  cardBox: { stroke: 'ink', width: 1.4 },
  cardFull: { fill: 'ink', stroke: 'ink', width: 0.7 },
  cardOpen: { fill: 'paper', stroke: 'ink', width: 0.7 },
  cardDash: { stroke: 'ink', width: 1.05 },
});

export type MarkName = keyof typeof MARKS;

export const markOf = (name: MarkName): Mark => MARKS[name];
