import type { ManyTally } from '@icewright/engine';
import { drawMany, manyMarksOf, svgParts } from '@icewright/picture';
import { useMemo } from 'react';

/** The places of many reps, faint, to lie between the sheet and the drill. */
export function ManyMarks({ tally }: { readonly tally: ManyTally | null }) {
  const markup = useMemo(
    () => (tally === null ? '' : svgParts(pen => drawMany(pen, manyMarksOf(tally, 0)), { idPrefix: 'many' })),
    [tally],
  );
  // biome-ignore lint/security/noDangerouslySetInnerHtml: markup of our own pen, with all words escaped there
  return <g className="many-drawing" dangerouslySetInnerHTML={{ __html: markup }} />;
}
