import type { Pair } from './freeze-desk.ts';
import type { FreezeView } from './freeze-view.ts';

/** The two nearest opponents of whoever has the puck: their gaps are what a coach looks at first. */
export const gapPairs = (view: FreezeView): Pair[] => {
  const carrier = view.freeze.puck?.carrier;
  const scene = view.ice?.scene;
  const from = scene?.skaters.find(one => one.id === carrier);
  if (!scene || !from) return [];
  return scene.skaters
    .filter(one => one.side !== from.side && one.kind !== 'goalie')
    .map(one => ({ id: one.id, m: Math.hypot(one.atM.xM - from.atM.xM, one.atM.yM - from.atM.yM) }))
    .sort((a, b) => a.m - b.m)
    .slice(0, 2)
    .map(one => [one.id, from.id] as const);
};
