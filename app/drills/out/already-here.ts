import { type Drill, exportDrills, type Team } from '@icewright/book';

/** What a drill that is taken in has of the team's own already. */
export type Already =
  | { readonly kind: 'new' }
  /** The very same drill is here: there is nothing to take. */
  | { readonly kind: 'same'; readonly id: string }
  /** One of the same title is here; in these parts they differ. */
  | { readonly kind: 'differs'; readonly id: string; readonly parts: readonly string[] };

const PART_SAID: Readonly<Record<string, string>> = {
  says: 'what the skaters hear',
  keyPoints: 'key points',
  habits: 'habits',
  level: 'level',
  rink: 'sheet',
  minutes: 'minutes',
  spots: 'spots and what they do',
  pucks: 'pucks',
  gear: 'gear',
  games: 'small games',
  flow: 'how reps follow each other',
  wanted: 'what is wanted of it',
};

/** Held against each other as a file would hold them: what a file does not carry makes no difference. */
export function alreadyHere(
  taken: Drill,
  here: readonly (readonly [id: string, drill: Drill])[],
  habits: Team['habits'],
): Already {
  const partsOf = (drill: Drill): Readonly<Record<string, unknown>> =>
    JSON.parse(exportDrills([{ id: 'one', drill }], habits)).drills[0];
  const incoming = partsOf(taken);
  const titled = here
    .filter(([, drill]) => drill.title.trim() === taken.title.trim())
    .map(([id, drill]) => ({ id, differing: differing(incoming, partsOf(drill)) }))
    .sort((one, other) => one.differing.length - other.differing.length)[0];
  if (titled === undefined) return { kind: 'new' };
  if (titled.differing.length === 0) return { kind: 'same', id: titled.id };
  return { kind: 'differs', id: titled.id, parts: titled.differing };
}

const differing = (
  one: Readonly<Record<string, unknown>>,
  other: Readonly<Record<string, unknown>>,
): readonly string[] =>
  Object.entries(PART_SAID).flatMap(([key, said]) =>
    JSON.stringify(one[key]) === JSON.stringify(other[key]) ? [] : [said],
  );
