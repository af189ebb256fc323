import * as z from 'zod/mini';
import { day, idOf, listOf, rank, shortWords, words } from './fields.ts';

/** What an item shows; `said` is what it was called, for the day on which it is gone. */
export const shownLink = z.discriminatedUnion('kind', [
  z.object({
    kind: z.literal('moment'),
    game: idOf<'document'>(),
    moment: idOf<'moment'>(),
    said: shortWords,
  }),
  z.object({
    kind: z.literal('freeze'),
    game: idOf<'document'>(),
    freeze: idOf<'freeze'>(),
    said: shortWords,
  }),
]);

/** A picture at which the film stands, by its frame; without seconds it stands until somebody presses. */
const stop = z.object({
  frameIndex: z.int(),
  filmTimeS: z.number(),
  seconds: z.exactOptional(z.number().check(z.minimum(1), z.maximum(600))),
});

export const meetingItem = z.object({
  rank,
  of: shownLink,
  /** What is said, in the coach's words: the audience may read it. */
  says: shortWords,
  /** The question for the group. */
  asks: shortWords,
  /** For the speaker alone. */
  notes: words,
  /** Absent: the film runs through. */
  stop: z.exactOptional(stop),
  /** The stretch of film for this meeting, seconds; absent: the moment's own. */
  stretch: z.exactOptional(z.object({ fromS: z.number(), toS: z.number() })),
  /** Minutes that are talked about it, beside the film and the stop. */
  talkMinutes: z.number().check(z.minimum(0), z.maximum(60)),
  /** Kept, and left out when the meeting runs. */
  hidden: z.boolean(),
});

export const meeting = z.object({
  kind: z.literal('meeting'),
  schema: z.literal(1),
  title: shortWords,
  day,
  budgetMinutes: z.number().check(z.minimum(1), z.maximum(180)),
  /** The audience reads what is said below the picture. */
  showsWords: z.boolean(),
  items: listOf(idOf<'item'>(), meetingItem),
});

export type Meeting = z.infer<typeof meeting>;
export type MeetingItem = z.infer<typeof meetingItem>;
