import type { Drill, Practice, Team } from '@icewright/book';
import { cardPagesOf, drawIceCard, type Paper, type Pen } from '@icewright/picture';
import { useMemo, useState } from 'react';
import { ChoiceField } from '../parts/field.tsx';
import { daySaid } from '../parts/figures.ts';
import { named } from '../parts/named.ts';
import { PAPER_CHOICES } from '../parts/paper-choices.ts';
import { PaperPage } from '../parts/paper-page.tsx';
import { addressOfPractice } from '../shell/addresses.ts';
import { entriesOf } from '../shell/season.ts';
import { cardOf } from './card-of.ts';

/** The ice card as it will be printed, and the two ways to paper. */
export function CardPage(props: {
  readonly team: Team;
  readonly practice: Practice;
  readonly practiceId: string;
  readonly drills: ReadonlyMap<string, Drill>;
}) {
  const { team, practice, drills } = props;
  const card = useMemo(
    () => cardOf(team, practice, drills, nextGameOf(team, practice)),
    [team, practice, drills],
  );
  const [paper, setPaper] = useState<Paper>('a4');
  const pages = useMemo(
    () =>
      cardPagesOf(card, paper).map(page => ({
        title: page.title,
        draw: (pen: Pen) => drawIceCard(pen, page, paper),
      })),
    [card, paper],
  );
  return (
    <PaperPage
      back={{ to: addressOfPractice(props.practiceId), said: named(practice.title, 'practice') }}
      title="Ice card"
      titleWords={`Ice card, ${named(practice.title, 'practice')}`}
      day={daySaid(practice.day)}
      pages={pages}
      paper={paper}
      acts={
        <ChoiceField label="paper" labelHidden value={paper} choices={PAPER_CHOICES} onChange={setPaper} />
      }
      fileName={`${card.title === '' ? 'Practice' : card.title} ${practice.day}.pdf`}
    />
  );
}

/** The first game on or after the day of the practice. */
function nextGameOf(team: Team, practice: Practice) {
  return entriesOf(team, 'game')
    .map(([, entry]) => entry)
    .filter(entry => entry.day >= practice.day)
    .at(-1);
}
