import type { Freeze } from '@icewright/book';
import type { FreezeScene, Id, SceneOfFreeze } from '@icewright/engine';

/** What a drill takes of a freeze: who stood where, where they should have been, and the puck. Ice metres. */
export const drillSceneOf = (freeze: Freeze, { scene: { skaters, puck } }: SceneOfFreeze): FreezeScene => ({
  skaters: skaters.map(({ id, side, kind, role, atM }) => {
    const ghostM = freeze.skaters[id as Id<'placed'>]?.ghostM;
    return { id, side, kind, role, atM, ...(ghostM ? { ghostM } : {}) };
  }),
  ...(puck
    ? { puck: { atM: puck.atM, ...(puck.carrierId === undefined ? {} : { carrier: puck.carrierId }) } }
    : {}),
});
