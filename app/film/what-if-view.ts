import type { Id } from '@icewright/engine';
import type { FreezeView } from './freeze-view.ts';

/**
 * The freeze with everybody who has a wanted place standing there, and who that is. Who has the puck stays: it would come along, and another
 * picture would be spoken of. Undefined when nobody moves.
 */
export const movedView = (
  view: FreezeView,
): { readonly view: FreezeView; readonly ids: readonly string[] } | undefined => {
  const { ice, freeze } = view;
  if (!ice) return undefined;
  const ids: string[] = [];
  const skaters = ice.scene.skaters.map(one => {
    const ghostM = freeze.skaters[one.id as Id<'placed'>]?.ghostM;
    if (!ghostM || one.id === ice.scene.puck?.carrierId) return one;
    ids.push(one.id);
    return { ...one, atM: ghostM };
  });
  if (ids.length === 0) return undefined;
  return { view: { ...view, ice: { ...ice, scene: { ...ice.scene, skaters } } }, ids };
};
