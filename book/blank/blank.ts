import type { DocumentKind } from '../documents/kinds.ts';
import type { Plain } from '../ydoc/build.ts';
import { emptyDrill, emptyGame, emptyMeeting, emptyPractice, emptyTeam } from './empty.ts';

const madeAt = '1970-01-01T00:00:00Z';
const day = '1970-01-01';
const rink = { preset: '60x30m' } as const;

const blanks: Record<DocumentKind, unknown> = {
  team: emptyTeam({ name: '', level: 'u18', rink, madeAt }),
  game: emptyGame({ opponent: '', day }),
  drill: emptyDrill({ title: '', level: 'u18', rink, madeAt }),
  practice: emptyPractice({ title: '', day }),
  meeting: emptyMeeting({ title: '', day, budgetMinutes: 10 }),
};

/** What stands in for a field of a document that no longer fits, always together with an issue. */
export const blankOf = (kind: DocumentKind): Plain => blanks[kind] as Plain;
