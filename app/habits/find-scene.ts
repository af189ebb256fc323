import type { Freeze } from '@icewright/book';
import { type FrozenScene, fitPins, landmarksOf, type Rink, sceneFromFreeze } from '@icewright/engine';

const known = new WeakMap<Freeze, { rink: Rink; scene: FrozenScene | undefined }>();

/** The freeze on the ice, metres, or undefined when its pins cannot tie it. A freeze that did not change is not worked out again. */
export function findSceneOf(freeze: Freeze, rink: Rink): FrozenScene | undefined {
  const before = known.get(freeze);
  if (before?.rink === rink) return before.scene;
  const scene = sceneOf(freeze, rink);
  known.set(freeze, { rink, scene });
  return scene;
}

function sceneOf(freeze: Freeze, rink: Rink): FrozenScene | undefined {
  const places = landmarksOf(rink);
  const pins = Object.entries(freeze.pins).flatMap(([id, pin]) => {
    const landmark = places.find(one => one.id === pin.landmark);
    return pin.leftOut || landmark === undefined ? [] : [{ id, iceM: landmark.atM, filmPx: pin.at }];
  });
  const result = fitPins(pins, freeze.clickSdPx);
  if (result.kind !== 'fit') return undefined;
  const { puck } = freeze;
  return sceneFromFreeze({
    fit: result.fit,
    rink,
    attacks: freeze.attacks,
    skaters: Object.entries(freeze.skaters).map(([id, { side, kind, role, feet }]) => ({
      id,
      side,
      kind,
      role,
      feetPx: feet,
    })),
    ...(puck === undefined
      ? {}
      : { puck: { atPx: puck.at, ...(puck.carrier === undefined ? {} : { carrierId: puck.carrier }) } }),
  }).scene;
}
