import { type Drawing, svgMarkup } from '@icewright/picture';
import { type ReactNode, useMemo, useState } from 'react';
import { useKeys } from '../shell/keys.ts';
import { RunningHead } from '../shell/running-head.tsx';
import { Act } from './act.tsx';
import './card-paper.css';
import { saveFile } from './save-file.ts';

/** A4 in points, as pages are drawn. */
const A4_PT = [0, 0, 595.28, 841.89] as const;

/** Pages as they will be printed, and the two ways to paper. */
export function PaperPage(props: {
  readonly back: { readonly to: string; readonly said: string };
  readonly title: string;
  readonly titleWords: string;
  readonly day: string;
  readonly pages: readonly { readonly title: string; readonly draw: Drawing }[];
  readonly fileName: string;
  /** What can be chosen of what is printed. */
  readonly acts?: ReactNode;
  /** Why it is not yet as it will be printed. */
  readonly notYet?: string | undefined;
}) {
  const { pages, notYet } = props;
  const [state, setState] = useState<'rest' | 'working' | 'failed'>('rest');
  const markups = useMemo(
    () =>
      pages.map(({ title, draw }, index) =>
        svgMarkup(draw, {
          viewBox: A4_PT,
          label: `${title}, as it is printed`,
          digits: 2,
          idPrefix: `card-${index}`,
        }),
      ),
    [pages],
  );
  const download = async () => {
    if (notYet !== undefined) return;
    setState('working');
    try {
      // Loaded only when somebody prints.
      const { paperPdf } = await import('./paper-pdf.ts');
      const title = pages[0]?.title ?? props.title;
      saveFile(
        await paperPdf({ title, paper: 'a4', pages: () => pages.map(({ draw }) => draw) }),
        props.fileName,
      );
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
        meta={`${props.day}, ${pages.length === 1 ? 'one page A4' : `${pages.length} pages A4`}, black only`}
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
            className="card-paper"
            // biome-ignore lint/security/noDangerouslySetInnerHtml: markup of our own pen, with all words escaped there
            dangerouslySetInnerHTML={{ __html: markup }}
          />
        ))}
      </main>
    </>
  );
}
