import { type Drawing, PAPERS, type Paper, svgMarkup } from '@icewright/picture';
import { type ReactNode, useMemo, useState } from 'react';
import { useKeys } from '../shell/keys.ts';
import { RunningHead } from '../shell/running-head.tsx';
import { Act } from './act.tsx';
import './card-paper.css';
import { PAPER_CHOICES } from './paper-choices.ts';
import { saveFile } from './save-file.ts';

const saidOf = (paper: Paper): string => PAPER_CHOICES.find(({ value }) => value === paper)!.said;

/** Pages as they will be printed, and the two ways to paper. */
export function PaperPage(props: {
  readonly back: { readonly to: string; readonly said: string };
  readonly title: string;
  readonly titleWords: string;
  readonly day: string;
  readonly pages: readonly { readonly title: string; readonly draw: Drawing }[];
  readonly fileName: string;
  /** What the pages are drawn for; A4 when left out. */
  readonly paper?: Paper;
  /** What can be chosen of what is printed. */
  readonly acts?: ReactNode;
  /** Why it is not yet as it will be printed. */
  readonly notYet?: string | undefined;
}) {
  const { pages, notYet, paper = 'a4' } = props;
  const { width, height } = PAPERS[paper];
  const [state, setState] = useState<'rest' | 'working' | 'failed'>('rest');
  const markups = useMemo(
    () =>
      pages.map(({ title, draw }, index) =>
        svgMarkup(draw, {
          viewBox: [0, 0, width, height],
          label: `${title}, as it is printed`,
          digits: 2,
          idPrefix: `card-${index}`,
        }),
      ),
    [pages, width, height],
  );
  const download = async () => {
    if (notYet !== undefined) return;
    setState('working');
    try {
      // Loaded only when somebody prints.
      const { paperPdf } = await import('./paper-pdf.ts');
      const title = pages[0]?.title ?? props.title;
      saveFile(await paperPdf({ title, paper, pages: () => pages.map(({ draw }) => draw) }), props.fileName);
      setState('rest');
    } catch {
      setState('failed');
    }
  };
  useKeys([
    { keys: 'd', says: 'download the PDF', act: () => void download() },
    { keys: 'p', says: 'print', act: () => notYet === undefined && window.print() },
  ]);
  return (
    <>
      <RunningHead
        back={props.back}
        title={props.title}
        titleWords={props.titleWords}
        meta={`${props.day}, ${pages.length === 1 ? 'one page' : `${pages.length} pages`} ${saidOf(paper)}, black only`}
        acts={
          <>
            {props.acts}
            <Act notNow={notYet} onPress={() => window.print()}>
              Print
            </Act>
            <Act lead notNow={notYet} working={state === 'working'} onPress={() => void download()}>
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
        {markups.map((markup, index) => (
          <div
            // biome-ignore lint/suspicious/noArrayIndexKey: pages are nothing but their place
            key={index}
            className={paper === 'letter' ? 'card-paper is-letter' : 'card-paper'}
            // biome-ignore lint/security/noDangerouslySetInnerHtml: markup of our own pen, with all words escaped there
            dangerouslySetInnerHTML={{ __html: markup }}
          />
        ))}
      </main>
    </>
  );
}
