import type { DraftIssue } from './draft-issues.ts';
import { draftPlaceSaid } from './draft-place-said.ts';
import type { Act, DrillPlan, Spot } from './drill.ts';

/** What keeps a drill from being run, as one plain sentence; any issue of that plan. By `draftIssuesOf`. */
export const draftIssueSentence = (issue: DraftIssue, plan: DrillPlan): string => {
  const { code, path, value, allowed } = issue;
  switch (code) {
    case 'noSuchSpot':
      return `${namesSomebody(path, plan)} somebody who is not in the drill.`;
    case 'noSuchGear':
      return 'A small game has a net that is not in the drill.';
    case 'aimsAtItself':
      return `${namesSomebody(path, plan)} herself: it must be somebody else.`;
    case 'noPoints':
      return `${capital(draftPlaceSaid(path.slice(0, -1), plan))} without a place to go to.`;
    case 'tooMany':
      return `${capital(draftPlaceSaid(path, plan))}: ${value} are too many, ${allowed}.`;
    case 'notANumber':
      return `${capital(draftPlaceSaid(path, plan))} is no number; it may be ${allowed}.`;
    case 'outOfRange':
      return `${capital(draftPlaceSaid(path, plan))} is ${value}; it may be ${allowed}.`;
  }
};

/** The beginning of a sentence that goes on with whom it names. */
const namesSomebody = (path: readonly string[], plan: DrillPlan): string => {
  const field = path.at(-1);
  if (path[0] === 'flow') return 'A line goes on to';
  if (field === 'ownerSpot') return 'A puck belongs to';
  const spot = (plan.spots as Readonly<Record<string, Spot>>)[path[1] ?? ''];
  const who = spot?.role ?? '?';
  if (path.includes('cue')) return `${who} waits for`;
  const act = (spot?.acts as Readonly<Record<string, Act>> | undefined)?.[path[3] ?? ''];
  return `${who} ${VERBS[act?.kind ?? 'hold'] ?? 'needs'}`;
};

const VERBS: Partial<Readonly<Record<Act['kind'], string>>> = {
  pass: 'passes to',
  chase: 'chases',
  gap: 'keeps a gap to',
  steal: 'goes for the puck of',
  screen: 'stands in a lane of',
  face: 'faces',
};

const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);
