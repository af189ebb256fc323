import { Empty } from '../parts/empty.tsx';
import { RunningHead } from '../shell/running-head.tsx';

export function DrillsPlace(_: { readonly drillId?: string }) {
  return (
    <>
      <RunningHead title="Drills" titleWords="Drills" />
      <Empty says="A drill starts best from something you saw: freeze a picture, and make one from it." />
    </>
  );
}
