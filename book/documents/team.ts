import * as z from 'zod/mini';
import {
  clock,
  day,
  idOf,
  instant,
  line,
  listOf,
  rank,
  ratio,
  shortWords,
  strength,
  words,
} from './fields.ts';

const trigger = z.discriminatedUnion('at', [
  z.object({ at: z.literal('puckCrosses'), line }),
  z.object({ at: z.enum(['weLoseThePuck', 'weWinThePuck', 'passIsMade', 'theyShoot']) }),
]);

export const standard = z.discriminatedUnion('kind', [
  z.object({
    kind: z.enum(['levelWith', 'upWith', 'within', 'goalSide']),
    who: z.enum([
      'firstForwardBack',
      'everyForward',
      'puckCarrier',
      'nearestDefender',
      'everyDefender',
      'anyOfUs',
      'allOfUs',
    ]),
    whom: z.enum(['puck', 'carrier', 'nearestOfThem', 'lastOfThem', 'ourNet']),
    withinM: z.number().check(z.minimum(0), z.maximum(60)),
    when: trigger,
  }),
  z.object({
    kind: z.literal('numbers'),
    zone: z.enum(['house', 'middleLane', 'ourZone', 'neutralZone', 'theirZone', 'picture']),
    atLeastCount: z.int().check(z.minimum(0), z.maximum(6)),
    when: trigger,
  }),
]);

export const habit = z.object({
  rank,
  title: shortWords,
  /** What the skaters hear, in a few words. */
  says: shortWords,
  /** The reason, as the coach would give it. */
  reason: words,
  standard,
  /** Nobody has written its standard yet: that of the document is where writing begins, and judges nothing. */
  byEye: z.exactOptional(z.boolean()),
  /** Share of chances the coach wants done. */
  wantedRatio: ratio,
  /** Goals a miss is thought to cost; the coach's own estimate. */
  costGoals: z.number().check(z.minimum(0), z.maximum(5)),
  kept: z.boolean(),
});

export const skater = z.object({
  rank,
  number: z.int().check(z.minimum(0), z.maximum(99)),
  name: shortWords,
  position: z.enum(['F', 'D', 'G']),
  /** No contact until someone allowed to say so lifts it. */
  noContact: z.boolean(),
  /** Colour group of practice: a word, never only a hue. */
  group: shortWords,
  /** A sprint on the ice from a standing start, by gates: every time that was taken, several goes together. */
  timed: z.exactOptional(
    z
      .array(
        z.object({
          distanceM: z.number().check(z.minimum(0.5), z.maximum(80)),
          timeS: z.number().check(z.minimum(0.1), z.maximum(40)),
        }),
      )
      .check(z.minLength(3), z.maxLength(60)),
  ),
});

export const rinkChoice = z.discriminatedUnion('preset', [
  z.object({ preset: z.enum(['200x85ft', '60x30m', '60x26m', 'college200x100ft', 'halfIce', 'crossIce']) }),
  z.object({
    preset: z.literal('own'),
    lengthM: z.number().check(z.minimum(15), z.maximum(75)),
    widthM: z.number().check(z.minimum(10), z.maximum(40)),
    cornerRadiusM: z.number().check(z.minimum(0), z.maximum(12)),
  }),
]);

/**
 * A key of the coach's own: pressed while the film or the game runs, it keeps the seconds around that press as a moment, with whatever else it says. Without a
 * habit it marks nothing, and says how the game stands from then on.
 */
export const momentKey = z.object({
  rank,
  /** One letter or figure. */
  key: z.string().check(z.regex(/^[a-z0-9]$/)),
  habit: z.exactOptional(idOf<'habit'>()),
  verdict: z.enum(['done', 'missed', 'cannotSee']),
  skater: z.exactOptional(idOf<'skater'>()),
  strength: z.exactOptional(strength),
  unit: z.exactOptional(idOf<'unit'>()),
  beforeS: z.number().check(z.minimum(0), z.maximum(120)),
  afterS: z.number().check(z.minimum(0), z.maximum(120)),
});

/** Skaters who are on the ice together. */
export const unit = z.object({
  rank,
  title: shortWords,
  skaters: listOf(idOf<'skater'>(), z.object({ rank })),
});

/** A line in the team's list of documents, so that it can be shown without opening each. */
export const entry = z.object({
  kind: z.enum(['game', 'drill', 'practice', 'meeting']),
  title: shortWords,
  /** Day of a game, practice or meeting; for a drill the day it was made. */
  day,
  removed: z.boolean(),
});

export const team = z.object({
  kind: z.literal('team'),
  schema: z.literal(5),
  name: shortWords,
  season: shortWords,
  /** True for the invented team that shows the workbench round. */
  demo: z.boolean(),
  level: z.enum(['u10', 'u14', 'u18', 'collegeWomen', 'collegeMen', 'pro']),
  rink: rinkChoice,
  homeIce: shortWords,
  usualStart: clock,
  lengths: z.enum(['metres', 'feet']),
  clockFace: z.enum(['24', '12']),
  skaters: listOf(idOf<'skater'>(), skater),
  staff: listOf(idOf<'staff'>(), z.object({ rank, name: shortWords, role: shortWords })),
  habits: listOf(idOf<'habit'>(), habit),
  momentKeys: listOf(idOf<'momentKey'>(), momentKey),
  units: listOf(idOf<'unit'>(), unit),
  contents: listOf(idOf<'document'>(), entry),
  madeAt: instant,
});

export type Team = z.infer<typeof team>;
export type Habit = z.infer<typeof habit>;
export type MomentKey = z.infer<typeof momentKey>;
export type Unit = z.infer<typeof unit>;
export type Skater = z.infer<typeof skater>;
export type RinkChoice = z.infer<typeof rinkChoice>;
export type Entry = z.infer<typeof entry>;
