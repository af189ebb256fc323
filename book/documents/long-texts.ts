import type { DocumentKind } from './kinds.ts';

/** The fields two people may write in at once: kept as text and merged letter by letter. `*` is any item of a list. */
export const longTexts: Readonly<Record<DocumentKind, readonly string[]>> = {
  team: ['habits.*.reason'],
  game: ['note', 'moments.*.note'],
  drill: ['keyPoints'],
  practice: ['today', 'note', 'blocks.*.keyPoints'],
  meeting: ['items.*.notes'],
};
