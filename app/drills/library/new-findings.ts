import type { Drill } from '@icewright/book';
import { type Finding, findingSentence, levelOf, playableOf, rinkOf, runDrill } from '@icewright/engine';

/** What there is to look at in one rep of a drill; null when it cannot be played. */
export function lookFindingsOf(drill: Drill): readonly Finding[] | null {
  const playable = playableOf(drill, rinkOf(drill.rink), levelOf(drill.level));
  if (playable.kind !== 'playable') return null;
  return runDrill(playable).findings.filter(finding => finding.weight === 'look');
}

/** The first thing to look at in a drill that its former state did not have, as a sentence; null when there is none. */
export function firstNewFinding(before: Drill, after: Drill): string | null {
  const known = new Set((lookFindingsOf(before) ?? []).map(keyOf));
  const fresh = lookFindingsOf(after)?.find(finding => !known.has(keyOf(finding)));
  return fresh === undefined ? null : findingSentence(fresh, after).replace(/\.$/, '');
}

const keyOf = (finding: Finding): string => `${finding.kind} ${[...finding.spots].sort().join(' ')}`;
