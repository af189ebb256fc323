import type { DocumentKind } from '../documents/kinds.ts';
import type { Plain } from '../ydoc/build.ts';

/** Brings a document of schema version n to n + 1; gets a copy, returns the new value without `schema`. */
export type Migration = (document: Plain) => Plain;

/** For each kind the steps from version 1 on: the first brings 1 to 2. Empty while its version 1 is the only one. */
export const migrations: Readonly<Record<DocumentKind, readonly Migration[]>> = {
  /** 2: keys of the coach's own for moments, and units. */
  team: [
    team => ({ ...team, momentKeys: {}, units: {} }),
    /** 3: its contents may list meetings, which an older program does not know. */
    team => team,
    /** 4: keys of the coach's own may say who, how many are on the ice and which unit, or no habit at all. */
    team => team,
    /** 5: a habit may have no standard of its own yet: an older program would judge by one that nobody wrote. */
    team => team,
  ],
  /** 2: the stretch, place, strength, score, period and unit of a moment, what came of it, and second opinions. */
  game: [
    game => ({ ...game, follows: {}, opinions: {} }),
    /** 3: skaters followed through the film, what is drawn over it, and how long a freeze holds the picture. */
    game => ({ ...game, tracks: {}, marks: {} }),
    /** 4: a live clock may have been stopped: an older program would mark at another time than all others. */
    game => game,
    /** 5: a freeze may say that all of us are placed, and a moment that it is of the others, or that what was said of it counts though its freeze measures otherwise: an older program would judge and count otherwise. */
    game => game,
  ],
  /** 2: small area games, flow, versions, and the acts and cues beyond skating, passing, shooting, chasing and gaps. */
  drill: [
    drill => ({ ...drill, games: {} }),
    /** 3: what is wanted of a rep and who plays it; nothing older has them, and an older program must not read past them. */
    drill => drill,
    /** 4: somebody may play towards the other end than usual: an older program would have gaps kept before the wrong net. */
    drill => drill,
  ],
  practice: [],
  meeting: [],
};

/** An older document brought to the newest version the table knows. The value given is not changed. */
export function migrated(kind: DocumentKind, document: Plain, table = migrations): Plain {
  const steps = table[kind];
  let value = structuredClone(document);
  for (let schema = document.schema as number; schema <= steps.length; schema += 1) {
    value = { ...steps[schema - 1]!(value), schema: schema + 1 };
  }
  return value;
}
