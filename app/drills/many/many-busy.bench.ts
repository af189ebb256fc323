import { drillPartText } from '@icewright/book';
import type { BenchRow } from '../../../cli/bench-row.ts';
import { twentySecondsBusy } from '../../../engine/many/many-run.bench.ts';
import { manyInWorkers } from '../../bench/many-in-workers.ts';
import { withApp, withPage } from '../../bench/open-app.ts';
import { pasteOnIce } from '../../bench/paste-on-ice.ts';

/** A thousand reps of the drill in which everybody is busy, in the workers. */
const bench = (): Promise<BenchRow[]> =>
  withApp(app =>
    withPage(app, async page => {
      const { spots, pucks } = twentySecondsBusy();
      const part = { spots, pucks, gear: {}, games: {}, acts: [], outside: {} };
      await pasteOnIce(page, app, drillPartText(part as unknown as Parameters<typeof drillPartText>[0]));
      return manyInWorkers(page, 'F3', 'twelve busy skaters, twenty seconds');
    }),
  );

export default bench;
