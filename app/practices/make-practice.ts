import { emptyPractice, type Team } from '@icewright/book';
import { today } from '../parts/figures.ts';
import { createDocument } from '../shell/book.ts';
import { entriesOf } from '../shell/season.ts';
import { nextPracticeTitle } from './next-practice-title.ts';

/** A practice of today on the team's usual ice; gives its id. */
export function makePractice(team: Team) {
  const title = nextPracticeTitle(entriesOf(team, 'practice').map(([, entry]) => entry.title));
  const value = emptyPractice({ title, day: today(), starts: team.usualStart });
  return createDocument('practice', { ...value, place: team.homeIce });
}
