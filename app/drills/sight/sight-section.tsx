import type { Drill } from '@icewright/book';
import type { Lengths, Rink, Run, SpotId } from '@icewright/engine';
import { lazy, Suspense, useState } from 'react';
import { Act } from '../../parts/act.tsx';
import './sight.css';

/** What draws in three dimensions is fetched only when somebody asks to look. */
const SightView = lazy(() => import('./sight-view.tsx'));

/** The same moment from the ice: through a skater's eyes, from the bench, from the stand. */
export function SightSection(props: {
  readonly drill: Drill;
  readonly run: Run;
  readonly rink: Rink;
  readonly timeS: number;
  readonly chosen: SpotId | null;
  readonly lengths: Lengths;
}) {
  const [isOpen, setOpen] = useState(false);
  return (
    <section className="sec sight">
      <h2>
        <span>
          From the ice{' '}
          <span className="q3">this moment through their eyes, from the bench, from the stand</span>
        </span>
        <Act opens={isOpen} onPress={() => setOpen(!isOpen)}>
          {isOpen ? 'Close' : 'Look'}
        </Act>
      </h2>
      {isOpen && (
        <Suspense fallback={<p className="q2">Bringing the view …</p>}>
          <SightView {...props} />
        </Suspense>
      )}
    </section>
  );
}
