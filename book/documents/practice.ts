import * as z from 'zod/mini';
import { clock, day, idOf, listOf, rank, shortWords, words } from './fields.ts';

export const block = z.object({
  rank,
  /** The drill this block plays; a block without one is a talk, a stretch, free ice. */
  drill: z.exactOptional(idOf<'document'>()),
  title: shortWords,
  minutes: z.number().check(z.minimum(1), z.maximum(120)),
  /** Minutes to move nets, pucks and people before the next block. */
  changeoverMinutes: z.number().check(z.minimum(0), z.maximum(20)),
  says: shortWords,
  keyPoints: words,
  leads: shortWords,
  pucks: shortWords,
  ice: shortWords,
  groups: shortWords,
});

export const practice = z.object({
  kind: z.literal('practice'),
  schema: z.literal(1),
  title: shortWords,
  day,
  starts: clock,
  iceMinutes: z.number().check(z.minimum(10), z.maximum(240)),
  place: shortWords,
  /** The one thing of today, in the coach's words. */
  today: words,
  note: words,
  blocks: listOf(idOf<'block'>(), block),
  missing: z.array(idOf<'skater'>()),
});

export type Practice = z.infer<typeof practice>;
export type Block = z.infer<typeof block>;
