import type { Id } from '@icewright/engine';
import * as z from 'zod/mini';

// Compiled validators need `eval`, which the page's content policy forbids; plain ones are as fast here.
z.config({ jitless: true });

/** Small field schemas that every document uses. A value is checked once, where it enters, and typed from there on. */

export const idOf = <Kind extends string>() =>
  z.string().check(z.minLength(1), z.maxLength(64)) as unknown as z.ZodMiniType<Id<Kind>, Id<Kind>>;

/** Order within a list: a number on the item, so that two people can move items at the same time. */
export const rank = z.number();

/** Characters that a long text may hold. Generous, because texts merge: two people's additions are both kept. */
export const longTextLimit = 20_000;
/** A long text, merged as text; each stands in `long-texts.ts`. */
export const words = z.string().check(z.maxLength(longTextLimit));
export const shortWords = z.string().check(z.maxLength(200));

/** Metres; a sheet of ice is never over 100 m, and a point may be dragged a little outside it. */
export const icePoint = z.object({
  xM: z.number().check(z.minimum(-100), z.maximum(100)),
  yM: z.number().check(z.minimum(-100), z.maximum(100)),
});

/** Pixels of the shown picture. */
export const filmPoint = z.object({ xPx: z.number(), yPx: z.number() });

export const ratio = z.number().check(z.minimum(0), z.maximum(1));
export const end = z.enum(['minusX', 'plusX']);
export const side = z.enum(['us', 'them']);
export const line = z.enum([
  'goalLineMinusX',
  'blueLineMinusX',
  'centreLine',
  'blueLinePlusX',
  'goalLinePlusX',
]);
/** A calendar day, 2026-11-07. Never a `Date`: a game is on a day wherever it is read. */
export const day = z.string().check(z.regex(/^\d{4}-\d{2}-\d{2}$/));
/** A clock time, 19:40. */
export const clock = z.string().check(z.regex(/^([01]\d|2[0-3]):[0-5]\d$/));
/** A moment in UTC, ISO 8601. */
export const instant = z.string().check(z.regex(/^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}:\d{2}(\.\d+)?Z$/));

/** Skaters on the ice, ours first: 5v4 when they are one short. */
export const strength = z.string().check(z.regex(/^[3-6]v[3-6]$/));

export const listOf = <Kind extends string, Item extends z.ZodMiniType>(
  key: z.ZodMiniType<Id<Kind>, Id<Kind>>,
  item: Item,
) => z.record(key as never, item) as unknown as z.ZodMiniType<Record<Id<Kind>, z.infer<Item>>>;
