import { PASS_WAYS, type SpotId } from '@icewright/engine';
import * as z from 'zod/mini';
import {
  end,
  icePoint,
  idOf,
  instant,
  line,
  listOf,
  rank,
  ratio,
  shortWords,
  side,
  words,
} from './fields.ts';
import { rinkChoice } from './team.ts';

const spotId = idOf<'spot'>();

const cue = z.discriminatedUnion('on', [
  z.object({ on: z.literal('whistle') }),
  z.object({ on: z.literal('after'), seconds: z.number().check(z.minimum(0), z.maximum(120)) }),
  z.object({ on: z.enum(['receive', 'shot', 'losesPuck', 'caught']), spot: spotId }),
  z.object({ on: z.literal('spotCrosses'), spot: spotId, line }),
  z.object({
    on: z.literal('reaches'),
    spot: spotId,
    atM: icePoint,
    withinM: z.number().check(z.minimum(0.1), z.maximum(30)),
  }),
  z.object({ on: z.literal('puckCrosses'), line }),
]);

const common = { rank, cue: z.exactOptional(cue) };
const speed = z.number().check(z.minimum(1), z.maximum(50));

export const act = z.discriminatedUnion('kind', [
  z.object({
    ...common,
    kind: z.enum(['skate', 'carry']),
    throughM: z.array(icePoint).check(z.minLength(1), z.maxLength(64)),
    facing: z.enum(['forward', 'backward']),
    effortRatio: ratio,
    stops: z.boolean(),
  }),
  z.object({
    ...common,
    kind: z.literal('pass'),
    toSpot: spotId,
    way: z.enum(PASS_WAYS),
    speedMps: z.number().check(z.minimum(0), z.maximum(50)),
  }),
  z.object({ ...common, kind: z.literal('shoot'), atEnd: end, speedMps: speed }),
  z.object({ ...common, kind: z.literal('hold'), seconds: z.number().check(z.minimum(0), z.maximum(120)) }),
  z.object({ ...common, kind: z.enum(['chase', 'steal']), whom: spotId, effortRatio: ratio }),
  z.object({
    ...common,
    kind: z.literal('gap'),
    whom: spotId,
    distanceM: z.number().check(z.minimum(0), z.maximum(30)),
  }),
  z.object({
    ...common,
    kind: z.literal('screen'),
    from: spotId,
    to: z.exactOptional(spotId),
    alongRatio: ratio,
  }),
  z.object({ ...common, kind: z.literal('pickUp'), effortRatio: ratio }),
  z.object({
    ...common,
    kind: z.literal('turn'),
    angleRad: z.number().check(z.minimum(-2 * Math.PI), z.maximum(2 * Math.PI)),
    effortRatio: ratio,
  }),
  z.object({ ...common, kind: z.literal('face'), whom: z.exactOptional(spotId) }),
  z.object({ ...common, kind: z.enum(['leave', 'stop', 'pivot']) }),
]);

const countInGame = z.int().check(z.minimum(0), z.maximum(6));

/** A small area game: see `SmallGame` of the engine. */
export const smallGame = z.object({
  rank,
  fromM: icePoint,
  toM: icePoint,
  usCount: countInGame,
  themCount: countInGame,
  nets: z.array(idOf<'gear'>()).check(z.maxLength(6)),
  resets: z.enum(['coach', 'whoScored', 'whoWasScoredOn']),
  shiftS: z.number().check(z.minimum(5), z.maximum(600)),
});

/** How reps follow each other: see `Flow` of the engine. */
export const flow = z.object({
  next: z.discriminatedUnion('on', [
    z.object({ on: z.literal('every'), seconds: z.number().check(z.minimum(1), z.maximum(600)) }),
    z.object({ on: z.literal('clear'), line }),
    z.object({ on: z.literal('end') }),
  ]),
  ends: z.enum(['one', 'both', 'byTurns']),
  pauseS: z.number().check(z.minimum(0), z.maximum(120)),
  goesTo: z.record(z.string(), spotId) as unknown as z.ZodMiniType<Readonly<Record<SpotId, SpotId>>>,
});

export const VARIANTS = ['simpler', 'harder', 'halfIce', 'fewer'] as const;

export const spot = z.object({
  rank,
  side,
  kind: z.enum(['skater', 'goalie', 'coach']),
  role: shortWords,
  atM: icePoint,
  facingRad: z.number(),
  /** The end it plays towards, where that is not the usual one of its side. */
  attacks: z.exactOptional(end),
  waitingCount: z.int().check(z.minimum(0), z.maximum(30)),
  acts: listOf(idOf<'act'>(), act),
});

/** Skaters of the team's own timed tests: a mix of all that are timed, or some by name and the rest of the level. */
export const people = z.discriminatedUnion('as', [
  z.object({ as: z.literal('timedTeam') }),
  z.object({ as: z.literal('named'), bySpot: listOf(spotId, idOf<'skater'>()) }),
]);

/** A link that keeps its way back: to the freeze a drill was made from. */
export const freezeLink = z.object({
  kind: z.literal('freeze'),
  game: idOf<'document'>(),
  freeze: idOf<'freeze'>(),
  said: shortWords,
});

/**
 * What a coach wants of a rep: see `Outcome` of the engine. A habit is named and not copied, so that it is always held by its
 * standard of today.
 */
export const want = z.discriminatedUnion('kind', [
  z.object({ kind: z.literal('caughtBefore'), spot: spotId, by: z.exactOptional(spotId), line }),
  z.object({ kind: z.enum(['passArrives', 'cueInTime']), spot: spotId, act: idOf<'act'>() }),
  z.object({ kind: z.literal('puckRegained'), side, beforeLine: line }),
  z.object({
    kind: z.literal('levelWithPuck'),
    spot: spotId,
    atLine: line,
    withinM: z.number().check(z.minimum(0), z.maximum(30)),
  }),
  z.object({ kind: z.literal('habitHeld'), habit: idOf<'habit'>() }),
]);

export const drill = z.object({
  kind: z.literal('drill'),
  schema: z.literal(4),
  title: shortWords,
  says: shortWords,
  /** One key point a line. */
  keyPoints: words,
  habits: z.array(idOf<'habit'>()),
  level: z.enum(['u10', 'u14', 'u18', 'collegeWomen', 'collegeMen', 'pro']),
  rink: rinkChoice,
  from: z.exactOptional(freezeLink),
  /** The drill that this one is a version of, and what for. */
  variantOf: z.exactOptional(z.object({ drill: idOf<'document'>(), as: z.enum(VARIANTS) })),
  minutes: z.number().check(z.minimum(1), z.maximum(60)),
  spots: listOf(spotId, spot),
  pucks: listOf(
    idOf<'puck'>(),
    z.object({ atM: icePoint, ownerSpot: z.exactOptional(spotId), count: z.int() }),
  ),
  gear: listOf(
    idOf<'gear'>(),
    z.object({ kind: z.enum(['pylon', 'net', 'smallNet', 'divider']), atM: icePoint, facingRad: z.number() }),
  ),
  games: listOf(idOf<'game'>(), smallGame),
  flow: z.exactOptional(flow),
  /** What is counted over many reps; the likeliest of what the drill can give when left out. */
  wanted: z.exactOptional(want),
  /** Who of the team skates it; skaters of the level when left out. */
  people: z.exactOptional(people),
  madeAt: instant,
});

export type Drill = z.infer<typeof drill>;
export type DrillSpot = z.infer<typeof spot>;
export type DrillAct = z.infer<typeof act>;
export type DrillWant = z.infer<typeof want>;
export type DrillPeople = z.infer<typeof people>;
