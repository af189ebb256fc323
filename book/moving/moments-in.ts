import * as z from 'zod/mini';
import { idOf, listOf } from '../documents/fields.ts';
import { follow, type Game, type Moment, moment, opinion } from '../documents/game.ts';
import { isPlain } from '../ydoc/plain.ts';
import { documentPlaceSaid } from './document-place-said.ts';
import { asSentence, type FileIssue, reasonOf, refusalSaid, shownPath } from './file-issue.ts';
import { momentsFormat } from './moments-out.ts';
import type { MomentsTaken } from './moments-taken.ts';

export type MomentsRead =
  | { readonly kind: 'ok'; readonly taken: MomentsTaken }
  | { readonly kind: 'refused'; readonly sentence: string };

const momentsFile = z.object({
  format: z.literal(momentsFormat),
  version: z.literal(1),
  films: z.record(z.string(), z.object({ hash: z.string(), fileName: z.exactOptional(z.string()) })),
  moments: listOf(idOf<'moment'>(), moment),
  follows: listOf(idOf<'follow'>(), follow),
  opinions: listOf(idOf<'opinion'>(), opinion),
});

const fileLimit = 20 * 2 ** 20;

/**
 * Moments from a file that this program wrote, for a game that holds the same film: films are known by their content,
 * whatever they are called there. All of it or nothing; refused with the place in the file and the reason.
 */
export function readMomentsJson(
  text: string,
  game: Game,
  habits: Readonly<Record<string, unknown>>,
): MomentsRead {
  if (text.length > fileLimit) return refused('The file is over 20 million characters long.');
  let file: unknown;
  try {
    file = JSON.parse(text);
  } catch {
    return refused('This file is not JSON, or it is cut off.');
  }
  if (!isPlain(file) || file.format !== momentsFormat) return refused('This is not a file of moments.');
  if (typeof file.version === 'number' && file.version > 1)
    return refused(`It was made by a newer Icewright (version ${file.version}, this one reads 1).`);
  const parsed = momentsFile.safeParse(file);
  if (!parsed.success) {
    const issue = parsed.error.issues[0] as unknown as FileIssue;
    const where = documentPlaceSaid('game', issue.path, file);
    return refused(asSentence(refusalSaid(where, reasonOf(issue, file), shownPath(issue.path))));
  }
  const { films, moments, follows, opinions } = parsed.data;
  const here = new Map(Object.entries(game.films).map(([id, { hash }]) => [hash, id]));
  const fresh: Record<string, Moment> = {};
  let alreadyCount = 0;
  for (const [id, one] of Object.entries(moments)) {
    // What the game has stays as it is: then it is all one where its film has gone, as a live clock goes.
    if (game.moments[id as keyof Game['moments']] !== undefined) {
      alreadyCount += 1;
      continue;
    }
    const film = here.get(films[one.film]?.hash ?? '');
    if (film === undefined) return refused(strangeFilm(films[one.film]?.fileName));
    if (habits[one.habit] === undefined)
      return refused(
        `The moment at ${one.filmTimeS.toFixed(1)} s has a habit that is not on this team. Take the team's habits in first.`,
      );
    fresh[id] = { ...one, film: film as Moment['film'] };
  }
  const known = new Set([...Object.keys(moments), ...Object.keys(game.moments)]);
  const newOf = <One extends { readonly moment: string }>(
    list: Readonly<Record<string, One>>,
    have: Readonly<Record<string, unknown>>,
  ): Record<string, One> =>
    Object.fromEntries(
      Object.entries(list).filter(([id, one]) => have[id] === undefined && known.has(one.moment)),
    );
  return {
    kind: 'ok',
    taken: {
      moments: fresh,
      follows: newOf(follows, game.follows),
      opinions: newOf(opinions, game.opinions),
      alreadyCount,
      outsideCount: 0,
      unknown: [],
    },
  };
}

const strangeFilm = (fileName = ''): string =>
  fileName === ''
    ? 'These moments were marked live, on a clock that this game does not have. Tie them to their film where they were marked, then take them out again.'
    : `These moments are of the film “${fileName}”, which this game does not have. Open that film in this game first, then take the moments.`;

const refused = (sentence: string): MomentsRead => ({ kind: 'refused', sentence });
