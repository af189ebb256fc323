import type { Drill } from '@icewright/book';
import { levelOf, type Playable, playableOf, type Run, rinkOf, runDrill } from '@icewright/engine';
import { demoValues } from '../demo-values.ts';

const film = { hash: 'sampled-sha256:0', byteCount: 1 };
const values = demoValues({ hunt: film, join: film }, { today: '2026-11-25', at: '2026-11-25T12:00:00Z' });

const first = values[0]!.value;
if (first.kind !== 'team') throw new Error('the team comes first');
export const team = first;

/** Every drill of the demo by its id. */
export const drills: ReadonlyMap<string, Drill> = new Map(
  values.flatMap(({ id, value }) => (value.kind === 'drill' ? [[id, value] as const] : [])),
);

export const playableFrom = (drill: Drill): Playable => {
  const playable = playableOf(drill, rinkOf(drill.rink), levelOf(drill.level));
  if (playable.kind !== 'playable') throw new Error(`${drill.title}: ${JSON.stringify(playable.issues)}`);
  return playable;
};

/** The middle run of every drill: everybody as the level says, no luck. */
export const runs: ReadonlyMap<string, Run> = new Map(
  [...drills].map(([id, drill]) => [id, runDrill(playableFrom(drill))]),
);
