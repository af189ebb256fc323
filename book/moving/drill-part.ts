import { draftPlaceSaid, type SpotId } from '@icewright/engine';
import * as z from 'zod/mini';
import { act, drill } from '../documents/drill.ts';
import { idOf, listOf, shortWords } from '../documents/fields.ts';
import { type FileIssue, reasonOf, refusalSaid, shownPath } from './file-issue.ts';

/**
 * A part of a drill as plain JSON, to be copied from one drill into another, in this window or in any other. Places are ice
 * metres, as in the drill; ids are those of the drill it was taken from.
 */
const drillPart = z.object({
  icewright: z.literal('part of a drill'),
  schema: z.literal(1),
  spots: drill.shape.spots,
  pucks: drill.shape.pucks,
  gear: drill.shape.gear,
  games: drill.shape.games,
  /** Acts that were copied without their spots, in their order. */
  acts: z.array(act).check(z.maxLength(40)),
  /** Roles of spots that are named in the part but not in it, so that can be said who is missing. */
  outside: listOf(idOf<'spot'>(), shortWords),
});

export type DrillPart = z.infer<typeof drillPart>;

export type ReadPart =
  | { readonly kind: 'part'; readonly part: DrillPart }
  /** One sentence for the coach. */
  | { readonly kind: 'refused'; readonly said: string };

export const drillPartText = (part: Omit<DrillPart, 'icewright' | 'schema'>): string =>
  JSON.stringify({ icewright: 'part of a drill', schema: 1, ...part });

const MOST_LETTERS = 1_000_000;

/** Reads what somebody pastes: any text, from anywhere. */
export const readDrillPart = (text: string): ReadPart => {
  if (text.length > MOST_LETTERS) return refused('What was copied is too long to be a part of a drill.');
  const value = parsed(text);
  if (typeof value !== 'object' || value === null || !('icewright' in value))
    return refused('What was copied is not a part of a drill.');
  const read = drillPart.safeParse(value);
  if (!read.success) {
    const issue = read.error.issues[0] as unknown as FileIssue;
    const where = draftPlaceSaid(issue.path, value);
    const wrong = refusalSaid(where, reasonOf(issue, value), shownPath(issue.path));
    return refused(`What was copied is a part of a drill that cannot be read: ${wrong}.`);
  }
  const nobody = Object.values(read.data.pucks).find(
    puck => puck.ownerSpot !== undefined && !hasOwn(read.data.spots, puck.ownerSpot),
  );
  if (nobody !== undefined)
    return refused('What was copied has a puck on the stick of somebody who is not in it.');
  return { kind: 'part', part: read.data };
};

const hasOwn = (spots: object, spot: SpotId): boolean => Object.hasOwn(spots, spot);

const parsed = (text: string): unknown => {
  try {
    return JSON.parse(text);
  } catch {
    return null;
  }
};

const refused = (said: string): ReadPart => ({ kind: 'refused', said });
