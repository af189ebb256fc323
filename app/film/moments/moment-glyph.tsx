import { type Moment, SEEN } from '@icewright/book';

/** The mark of a moment: up is done, down is missed, a ring could not be seen. */
export function MomentGlyph({ verdict }: { readonly verdict: Moment['verdict'] }) {
  return (
    <svg className="gl" viewBox="0 0 10 16" aria-hidden="true">
      <path d="M0 8H10" className="gb" />
      {verdict === 'done' && <path d="M5 8V1" className="gd" />}
      {verdict === 'missed' && <path d="M5 8V15" className="gm" />}
      {verdict === 'cannotSee' && <circle cx="5" cy="8" r="3" className="gn" />}
    </svg>
  );
}

export const verdictSaid = (verdict: Moment['verdict']): string => SEEN[verdict];
