import type { Drill, Practice } from '@icewright/book';

type Block = Practice['blocks'][keyof Practice['blocks']];
type Words = Pick<Block, 'title' | 'says' | 'keyPoints'>;

const KEYS = ['title', 'says', 'keyPoints'] as const;

/** What a block says of its drill as it is put in; without a drill it is a talk. */
export const wordsOfDrill = (drill: Words | undefined): Words => ({
  title: drill?.title ?? 'Talk',
  says: drill?.says ?? '',
  keyPoints: drill?.keyPoints ?? '',
});

/**
 * The words of a block that change with its drill: those that are still the old drill's, or empty. What the coach
 * wrote himself stays.
 */
export function wordsThatFollow(
  block: Words,
  from: Pick<Drill, keyof Words> | undefined,
  to: Pick<Drill, keyof Words> | undefined,
): Partial<Words> {
  const [before, after] = [wordsOfDrill(from), wordsOfDrill(to)];
  const follows = KEYS.filter(key => block[key] === '' || block[key] === before[key]);
  return Object.fromEntries(follows.filter(key => block[key] !== after[key]).map(key => [key, after[key]]));
}
