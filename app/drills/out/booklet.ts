import type { Drill, Team } from '@icewright/book';
import { drillPages, type Paper } from '@icewright/picture';
import { paperPdf } from '../../parts/paper-pdf.ts';
import { sheetOf } from './sheet-of.ts';

/** A drill begins a page, in vectors. Loaded only when somebody prints. */
export const bookletPdf = (of: {
  readonly drills: readonly Drill[];
  readonly team: Pick<Team, 'lengths' | 'skaters'>;
  readonly cover: string;
  readonly paper: Paper;
  readonly title: string;
}): Promise<Blob> =>
  paperPdf({
    title: of.title,
    paper: of.paper,
    pages: pen =>
      drillPages(
        pen,
        of.drills.map(drill => sheetOf(drill, of.team, of.cover)),
        of.paper,
      ),
  });
