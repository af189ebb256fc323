import type { Drill, Practice, Team } from '@icewright/book';
import { cardPagesOf, drawIceCard, svgMarkup } from '@icewright/picture';
import { useMemo, useState } from 'react';
import { Act } from '../parts/act.tsx';
import { daySaid } from '../parts/figures.ts';
import { named } from '../parts/named.ts';
import { saveFile } from '../parts/save-file.ts';
import { addressOfPractice } from '../shell/addresses.ts';
import { useKeys } from '../shell/keys.ts';
import { RunningHead } from '../shell/running-head.tsx';
import { entriesOf } from '../shell/season.ts';
import { cardOf } from './card-of.ts';

/** A4 in points, as the card is drawn. */
const A4_PT = [0, 0, 595.28, 841.89] as const;

/** The ice card as it will be printed, and the two ways to paper. */
export function CardPage(props: {
  readonly team: Team;
  readonly practice: Practice;
  readonly practiceId: string;
  readonly drills: ReadonlyMap<string, Drill>;
}) {
  const { team, practice, drills } = props;
  const [state, setState] = useState<'rest' | 'working' | 'failed'>('rest');
  const card = useMemo(
    () => cardOf(team, practice, drills, nextGameOf(team, practice)),
    [team, practice, drills],
  );
  const pages = useMemo(
    () =>
      cardPagesOf(card).map((page, index) =>
        svgMarkup(pen => drawIceCard(pen, page), {
          viewBox: A4_PT,
          label: `${page.title}, as it is printed`,
          digits: 2,
          idPrefix: `card-${index}`,
        }),
      ),
    [card],
  );
  const download = async () => {
    setState('working');
    try {
      const { cardPdf } = await import('./card-pdf.ts');
      saveFile(await cardPdf(card), `${card.title === '' ? 'Practice' : card.title} ${practice.day}.pdf`);
      setState('rest');
    } catch {
      setState('failed');
    }
  };
  useKeys([
    { keys: 'd', says: 'download the PDF', act: () => void download() },
    { keys: 'p', says: 'print', act: () => window.print() },
  ]);
  return (
    <>
      <RunningHead
        back={{
          to: addressOfPractice(props.practiceId),
          said: named(practice.title, 'practice'),
        }}
        title="Ice card"
        titleWords={`Ice card, ${named(practice.title, 'practice')}`}
        meta={`${daySaid(practice.day)}, ${pages.length === 1 ? 'one page A4' : `${pages.length} pages A4`}, black only`}
        acts={
          <>
            <Act onPress={() => window.print()}>Print</Act>
            <Act lead working={state === 'working'} onPress={() => void download()}>
              Download the PDF
            </Act>
          </>
        }
      />
      <main className="place card-pages">
        {state === 'failed' && (
          <p className="warm" role="alert">
            The PDF could not be made. Nothing is lost; Print makes one too.
          </p>
        )}
        {pages.map((markup, index) => (
          <div
            // biome-ignore lint/suspicious/noArrayIndexKey: pages are nothing but their place
            key={index}
            className="card-paper"
            // biome-ignore lint/security/noDangerouslySetInnerHtml: markup of our own pen, with all words escaped there
            dangerouslySetInnerHTML={{ __html: markup }}
          />
        ))}
      </main>
    </>
  );
}

/** The first game on or after the day of the practice. */
function nextGameOf(team: Team, practice: Practice) {
  return entriesOf(team, 'game')
    .map(([, entry]) => entry)
    .filter(entry => entry.day >= practice.day)
    .at(-1);
}
