import type { Drill, Team } from '@icewright/book';
import { type Drawing, drillPages, PAPERS, recordingOf, svgMarkup } from '@icewright/picture';
import { useEffect, useRef, useState } from 'react';
import { flushSync } from 'react-dom';
import { named } from '../../parts/named.ts';
import '../../parts/card-paper.css';
import './studio-paper.css';
import { coverOf, sheetOf } from './sheet-of.ts';

/** What the browser prints of an open drill, asked by its own keys or menu: the drill's page, not the workbench round it. */
export function StudioPaper(props: { readonly drill: Drill; readonly team: Team }) {
  const [markups, setMarkups] = useState<readonly string[]>([]);
  const latest = useRef(props);
  latest.current = props;
  useEffect(() => {
    // The browser takes the page as it stands when this returns.
    const make = () => flushSync(() => setMarkups(pagesOf(latest.current)));
    const clear = () => setMarkups([]);
    window.addEventListener('beforeprint', make);
    window.addEventListener('afterprint', clear);
    return () => {
      window.removeEventListener('beforeprint', make);
      window.removeEventListener('afterprint', clear);
    };
  }, []);
  return (
    <div className="studio-paper card-pages">
      {markups.map((markup, index) => (
        <div
          // biome-ignore lint/suspicious/noArrayIndexKey: pages are nothing but their place
          key={index}
          className="card-paper"
          // biome-ignore lint/security/noDangerouslySetInnerHtml: markup of our own pen, with all words escaped there
          dangerouslySetInnerHTML={{ __html: markup }}
        />
      ))}
    </div>
  );
}

function pagesOf({ drill, team }: { readonly drill: Drill; readonly team: Team }): readonly string[] {
  const sheet = sheetOf(drill, team, coverOf(team));
  let pages: readonly Drawing[] = [];
  recordingOf(pen => {
    pages = drillPages(pen, [sheet]);
  });
  const { width, height } = PAPERS.a4;
  return pages.map((draw, index) =>
    svgMarkup(draw, {
      viewBox: [0, 0, width, height],
      label: `${named(drill.title, 'drill')}, as it is printed`,
      digits: 2,
      idPrefix: `paper-${index}`,
    }),
  );
}
