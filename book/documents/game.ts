import * as z from 'zod/mini';
import {
  day,
  end,
  filmPoint,
  icePoint,
  idOf,
  instant,
  listOf,
  rank,
  shortWords,
  side,
  strength,
  words,
} from './fields.ts';
import { rinkChoice } from './team.ts';

/** A frame in which an event is seen; the middle of that frame, and half of its length. */
const eventFrame = z.object({ frameIndex: z.int(), filmTimeS: z.number(), halfFrameS: z.number() });

/** One film file of a game. The bytes are never in here: `hash` finds them on this machine or on the server. */
export const filmPart = z.object({
  rank,
  /** `sampled-sha256:…`, see `filmHashOf`. */
  hash: z.string(),
  fileName: z.string(),
  byteCount: z.number(),
  durationS: z.number(),
  frameCount: z.int(),
  label: shortWords,
  /** Of a game marked live: when its clock was stopped, and let run again. */
  breaks: z.exactOptional(
    listOf(
      idOf<'break'>(),
      z.object({
        stoppedAt: instant,
        goesOnAt: z.exactOptional(instant),
        /** No break: the game was over then. Who does not know it reads a clock that stands. */
        isOver: z.exactOptional(z.boolean()),
      }),
    ),
  ),
  /** What it was added as: a part that follows the others, or another camera of the same play; absent: not said. */
  as: z.exactOptional(z.enum(['part', 'camera'])),
  /** Another camera's film of the same play: one event that both show ties their clocks. */
  tied: z.exactOptional(z.object({ to: idOf<'film'>(), ours: eventFrame, theirs: eventFrame })),
});

export const moment = z.object({
  habit: idOf<'habit'>(),
  verdict: z.enum(['done', 'missed', 'cannotSee']),
  skater: z.exactOptional(idOf<'skater'>()),
  film: idOf<'film'>(),
  /** Presentation time in the film, and the index of the frame shown then. */
  filmTimeS: z.number(),
  frameIndex: z.int(),
  /** Goals this one was thought to cost, 0 to 5; height on the pulse. */
  costGoals: z.number(),
  note: words,
  by: shortWords,
  taggedAt: instant,
  freeze: z.exactOptional(idOf<'freeze'>()),
  /** The stretch to look at again, seconds of the film; absent: the frame alone. */
  fromS: z.exactOptional(z.number()),
  toS: z.exactOptional(z.number()),
  /** Where on the ice it was. */
  atM: z.exactOptional(icePoint),
  strength: z.exactOptional(strength),
  score: z.exactOptional(z.object({ us: z.int(), them: z.int() })),
  period: z.exactOptional(z.int().check(z.minimum(1), z.maximum(9))),
  /** Our unit on the ice. */
  unit: z.exactOptional(idOf<'unit'>()),
  /** A line of somebody's table that speaks of the other team: until somebody judges it, nothing that one of ours could have done. */
  ofOthers: z.exactOptional(z.boolean()),
  /** Its freeze measures otherwise than was said of it: which of the two counts, and who settled that; absent: the measure. */
  settled: z.exactOptional(
    z.object({ counts: z.enum(['word', 'measure']), by: shortWords, settledAt: instant }),
  ),
});

/** What came of a moment: the puck lost, hunted, won back, taken out, up to a chance or a whistle. */
export const follow = z.object({
  moment: idOf<'moment'>(),
  step: z.enum(['lost', 'hunted', 'regained', 'transition', 'chanceForUs', 'chanceForThem', 'whistle']),
  filmTimeS: z.number(),
  frameIndex: z.int(),
});

/** The same moment seen by a second pair of eyes, who did not see what the first had said. */
export const opinion = z.object({
  moment: idOf<'moment'>(),
  verdict: z.enum(['done', 'missed', 'cannotSee']),
  by: shortWords,
  givenAt: instant,
});

export const placed = z.object({
  side,
  kind: z.enum(['skater', 'goalie']),
  role: shortWords,
  skater: z.exactOptional(idOf<'skater'>()),
  /** Midway between the skates, on the ice. Feet are pinned, not heads. */
  feet: filmPoint,
  /** How well the feet are known, pixels (standard deviation), where the machine found them and no hand has moved them since. */
  feetSdPx: z.exactOptional(z.number().check(z.minimum(0), z.maximum(1000))),
  /** Where this skater should have been. */
  ghostM: z.exactOptional(icePoint),
});

/** A calibration that came from pins of other frames, through the camera's pan. */
export const carriedTie = z.object({
  /** The pinned frames it came from, nearest first. */
  from: z.array(z.int()).check(z.minLength(1), z.maxLength(64)),
  scaling: z.object({
    iceXM: z.number(),
    iceYM: z.number(),
    icePerM: z.number(),
    filmXPx: z.number(),
    filmYPx: z.number(),
    filmPerPx: z.number(),
  }),
  coefficients: z.array(z.number()).check(z.length(8)),
  covariance: z.array(z.number()).check(z.length(64)),
  pinSdPx: z.number(),
  lensK1: z.number(),
});

export const freeze = z.object({
  film: idOf<'film'>(),
  frameIndex: z.int(),
  filmTimeS: z.number(),
  picture: z.object({ widthPx: z.number(), heightPx: z.number() }),
  title: shortWords,
  habit: z.exactOptional(idOf<'habit'>()),
  /** The end we attack in this picture. */
  attacks: end,
  pins: listOf(idOf<'pin'>(), z.object({ landmark: z.string(), at: filmPoint, leftOut: z.boolean() })),
  /** Holds the picture until its own pins do. */
  carried: z.exactOptional(carriedTie),
  /** How well a click hits its mark, pixels (standard deviation). */
  clickSdPx: z.number(),
  skaters: listOf(idOf<'placed'>(), placed),
  /** Who of us may be without a mark: nobody whom the picture shows, or nobody at all; absent: that was not said. */
  allPlaced: z.exactOptional(z.enum(['inPicture', 'onIce'])),
  puck: z.exactOptional(z.object({ at: filmPoint, carrier: z.exactOptional(idOf<'placed'>()) })),
  /** How long playback stands at this picture, seconds; absent: it goes on. */
  holdS: z.exactOptional(z.number().check(z.minimum(0), z.maximum(600))),
  madeAt: instant,
});

/** Numbers of one quantity, one for each look of a followed stretch. */
const perLook = z.array(z.number()).check(z.maxLength(20_000));

/**
 * One skater followed through a stretch of film. `hands` are the frames on which a hand set his feet; `followed` is what was
 * found between them, and is made anew when a hand changes.
 */
export const track = z.object({
  film: idOf<'film'>(),
  side,
  kind: z.enum(['skater', 'goalie']),
  role: shortWords,
  skater: z.exactOptional(idOf<'skater'>()),
  attacks: end,
  hands: listOf(idOf<'hand'>(), z.object({ frameIndex: z.int(), filmTimeS: z.number(), feet: filmPoint })),
  followed: z.exactOptional(
    z.object({
      frameIndex: perLook,
      filmTimeS: perLook,
      /** The feet on the ice, and their standard deviation along either axis. */
      xM: perLook,
      yM: perLook,
      sdM: perLook,
      vxMps: perLook,
      vyMps: perLook,
      sdMps: perLook,
    }),
  ),
  madeAt: instant,
});

/** A place on the ice that stays, or one that goes with a followed skater, or with one who stands in a freeze. */
const markPlace = z.object({
  atM: icePoint,
  track: z.exactOptional(idOf<'track'>()),
  placed: z.exactOptional(z.object({ freeze: idOf<'freeze'>(), placed: idOf<'placed'>() })),
});

/** Something drawn over the film and tied to the ice, in metres. One place for a ring; from one to the next for a lane. */
export const mark = z.object({
  film: idOf<'film'>(),
  kind: z.enum(['ring', 'lane', 'link', 'arrow', 'zone', 'ghost', 'spotlight', 'text']),
  at: z.array(markPlace).check(z.minLength(1), z.maxLength(64)),
  /** Radius of a ring or a spotlight, width of a lane, metres; absent: the usual one. */
  sizeM: z.exactOptional(z.number().check(z.minimum(0.2), z.maximum(20))),
  text: shortWords,
  /** Film seconds between which it is seen. */
  fromS: z.number(),
  toS: z.number(),
  /** Seen only while this freeze stands, whatever the seconds say. */
  freeze: z.exactOptional(idOf<'freeze'>()),
  madeAt: instant,
});

export const game = z.object({
  kind: z.literal('game'),
  schema: z.literal(5),
  opponent: shortWords,
  day,
  place: z.enum(['home', 'away', 'neutral']),
  /** The sheet it was played on; absent: the team's own. Every metre of its freezes hangs on it. */
  rink: z.exactOptional(rinkChoice),
  score: z.exactOptional(z.object({ us: z.int(), them: z.int() })),
  note: words,
  films: listOf(idOf<'film'>(), filmPart),
  moments: listOf(idOf<'moment'>(), moment),
  follows: listOf(idOf<'follow'>(), follow),
  opinions: listOf(idOf<'opinion'>(), opinion),
  freezes: listOf(idOf<'freeze'>(), freeze),
  tracks: listOf(idOf<'track'>(), track),
  marks: listOf(idOf<'mark'>(), mark),
});

export type Game = z.infer<typeof game>;
export type FilmPart = z.infer<typeof filmPart>;
export type Moment = z.infer<typeof moment>;
export type Follow = z.infer<typeof follow>;
export type Opinion = z.infer<typeof opinion>;
export type Freeze = z.infer<typeof freeze>;
export type Track = z.infer<typeof track>;
export type Mark = z.infer<typeof mark>;
export type Placed = z.infer<typeof placed>;
