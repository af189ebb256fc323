import type { Freeze } from '@icewright/book';
import type { FrozenScene, Rink } from '@icewright/engine';
import { fitOfFreeze, sceneOfFreeze } from '../film/fit-of-freeze.ts';

const known = new WeakMap<Freeze, { rink: Rink; scene: FrozenScene | undefined }>();

/** The freeze on the ice, metres, or undefined when its pins cannot tie it. A freeze that did not change is not worked out again. */
export function findSceneOf(freeze: Freeze, rink: Rink): FrozenScene | undefined {
  const before = known.get(freeze);
  if (before?.rink === rink) return before.scene;
  const result = fitOfFreeze(freeze, rink);
  const scene = result.kind === 'fit' ? sceneOfFreeze(freeze, result.fit, rink).scene : undefined;
  known.set(freeze, { rink, scene });
  return scene;
}
