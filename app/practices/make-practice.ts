import { emptyPractice, type Team } from '@icewright/book';
import { today } from '../parts/figures.ts';
import { createDocument } from '../shell/book.ts';
import { entriesOf } from '../shell/season.ts';

/** A practice of today on the team's usual ice; gives its id. */
export function makePractice(team: Team) {
  const title = `Practice ${entriesOf(team, 'practice').length + 1}`;
  const value = emptyPractice({ title, day: today(), starts: team.usualStart });
  return createDocument('practice', { ...value, place: team.homeIce });
}
