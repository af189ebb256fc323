import { newId, rankAtEnd, type Team } from '@icewright/book';
import type { Id, Standard } from '@icewright/engine';
import { edit, endStep } from '../shell/book.ts';

/**
 * A habit begun from its title, with the commonest standard to begin writing at. Named anywhere but on its own page, where that sentence is read,
 * it is judged by eye until somebody writes what it means. One step of undo.
 */
export function makeHabit(
  team: Team,
  teamId: string,
  title: string,
  { byEye = false }: { readonly byEye?: boolean } = {},
): Id<'habit'> {
  const id = newId<'habit'>();
  const standard: Standard = {
    kind: 'levelWith',
    who: 'firstForwardBack',
    whom: 'puck',
    withinM: 1,
    when: { at: 'puckCrosses', line: 'blueLineMinusX' },
  };
  endStep(teamId);
  edit(teamId).set(['habits', id], {
    rank: rankAtEnd(team.habits),
    title,
    says: '',
    reason: '',
    standard,
    wantedRatio: 0.7,
    costGoals: 0,
    kept: true,
    ...(byEye ? { byEye } : {}),
  });
  return id;
}
