import type { Drill } from '@icewright/book';
import { levelOf, playableOf, type Run, rinkOf, runDrill } from '@icewright/engine';

const runs = new WeakMap<Drill, Run | null>();

/**
 * The run of a drill as it stands, computed once for each state of it: a changed drill is another object. None for a
 * drill that cannot be played; it is drawn as it is written.
 */
export function findRun(drill: Drill): Run | undefined {
  let run = runs.get(drill);
  if (run === undefined) {
    const playable = playableOf(drill, rinkOf(drill.rink), levelOf(drill.level));
    run = playable.kind === 'playable' ? runDrill(playable) : null;
    runs.set(drill, run);
  }
  return run ?? undefined;
}
