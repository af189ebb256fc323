import * as z from 'zod/mini';
import { act, drill, smallGame, spot, VARIANTS, want } from '../documents/drill.ts';
import { icePoint, shortWords } from '../documents/fields.ts';
import type { DocumentOf } from '../documents/kinds.ts';

/**
 * A drill file: one drill or several, for another staff. It holds nothing of the team that made it: habits stand by
 * their words, and the way back to a film stays at home.
 */
export const drillFileFormat = 'icewright-drill';
export const drillFileVersion = 1;
export const drillSchemaId = `urn:icewright:drill-file:${drillFileVersion}`;

/** Characters of a file, and how much one drill in it may hold: far over any drill on ice, far under what a browser bears. */
export const drillFileLimit = 4 * 2 ** 20;
const MOST = { drills: 200, habits: 50, spots: 60, acts: 100, pucks: 60, gear: 200, games: 12 } as const;

/** Names and limits for the published schema. */
const said = z.registry<{ id?: string; description?: string; maxProperties?: number }>();

/** At most so many entries, checked here and said in the published schema. */
const limited = <List extends z.ZodMiniType>(list: List, most: number): List => {
  const isFew = z.refine(
    value => Object.keys(value as object).length <= most,
    `at most ${most} of them fit here`,
  );
  const few = (list as z.ZodMiniType).check(isFew) as List;
  said.add(few, { maxProperties: most });
  return few;
};

const { shape } = drill;

/** A habit is of its team: wanting it stays at home. */
const wantInFile = want.check(
  z.refine(value => value.kind !== 'habitHeld', 'a habit cannot be wanted here: it is of a team'),
);

export const drillInFile = z.strictObject({
  title: shape.title,
  says: shape.says,
  keyPoints: shape.keyPoints,
  /** By the words of their titles. */
  habits: z.array(shortWords).check(z.maxLength(MOST.habits)),
  level: shape.level,
  rink: shape.rink,
  /** The drill of this file that it is a version of, 0 the first, and what for. */
  variantOf: z.exactOptional(
    z.object({ drill: z.int().check(z.minimum(0), z.maximum(MOST.drills - 1)), as: z.enum(VARIANTS) }),
  ),
  minutes: shape.minutes,
  spots: limited(
    z.record(
      z.string().check(z.minLength(1), z.maxLength(64)),
      z.extend(spot, { acts: limited(spot.shape.acts, MOST.acts) }),
    ),
    MOST.spots,
  ) as unknown as typeof shape.spots,
  pucks: limited(shape.pucks, MOST.pucks),
  gear: limited(shape.gear, MOST.gear),
  games: limited(shape.games, MOST.games),
  flow: shape.flow,
  wanted: z.exactOptional(wantInFile),
});

export const drillFile = z.strictObject({
  $schema: z.optional(z.literal(drillSchemaId)),
  format: z.literal(drillFileFormat),
  version: z.literal(drillFileVersion),
  drills: z.array(drillInFile).check(z.minLength(1), z.maxLength(MOST.drills)),
});

export type DrillInFile = z.infer<typeof drillInFile>;
export type DrillFile = z.infer<typeof drillFile>;
export type DrillDocument = DocumentOf<'drill'>;

said.add(drillInFile, {
  id: 'drill',
  description: 'Names of spots, acts, pucks, gear and games are free and hold within one drill.',
});
said.add(act, {
  id: 'act',
  description: 'What a spot does: acts follow each other by rank; a cue says what starts one.',
});
said.add(icePoint, { id: 'icePoint', description: 'Metres from the middle of the sheet.' });
said.add(smallGame, { id: 'smallGame' });

/** The published schema of the file, JSON Schema 2020-12: written from the schema that reads it. */
export const drillFileSchema = (): Record<string, unknown> => ({
  ...z.toJSONSchema(drillFile, { target: 'draft-2020-12', reused: 'ref', metadata: said }),
  $id: drillSchemaId,
  title: 'Icewright drill file',
  description:
    'Drills as they are handed from staff to staff. Lengths are metres, times seconds, angles radians, speeds metres a second; a ratio is 0 to 1. The middle of the sheet is x 0, y 0; x runs along the sheet towards the end plusX, y across it, a quarter turn anticlockwise from x.',
});
