import type { BenchRow } from '../../../cli/bench-row.ts';
import { manyInWorkers } from '../../bench/many-in-workers.ts';
import { withApp, withPage } from '../../bench/open-app.ts';

/** A thousand reps of the demo's drill in the workers. */
const bench = (): Promise<BenchRow[]> =>
  withApp(app =>
    withPage(app, async page => {
      await page.goto(`${app.url}/drills/drill-middle-first`);
      return manyInWorkers(page, 'F3', 'six spots, eight seconds');
    }),
  );

export default bench;
