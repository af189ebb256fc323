import type { FrozenScene } from '../film/frozen-scene.ts';
import { rinkOf } from '../rink/rink-of.ts';
import type { End, Side } from '../units/ends.ts';

/** Somebody in a test scene: role letter, place in metres. */
export interface Drawn {
  readonly id: string;
  readonly role: string;
  readonly xM: number;
  readonly yM: number;
}

const RINK = rinkOf({ preset: '200x85ft' });

/**
 * A scene with independent places of one sd (metres), for tests. Those with role G are goalies; `puck` may name its
 * carrier.
 */
export const sceneOf = (parts: {
  readonly us: readonly Drawn[];
  readonly them?: readonly Drawn[];
  readonly puck?: { readonly xM: number; readonly yM: number; readonly carrierId?: string };
  readonly sdM?: number;
  readonly attacks?: End;
  readonly isEveryonePlaced?: boolean;
  readonly allOfUsPlacedInM?: FrozenScene['allOfUsPlacedInM'];
}): FrozenScene => {
  const { us, them = [], puck, sdM = 0.1, attacks = 'plusX' } = parts;
  const covM2 = { xxM2: sdM ** 2, xyM2: 0, yyM2: sdM ** 2 };
  const drawn =
    (side: Side) =>
    ({ id, role, xM, yM }: Drawn) => ({
      id,
      side,
      role,
      kind: role === 'G' ? ('goalie' as const) : ('skater' as const),
      atM: { xM, yM },
      covM2,
    });
  const skaters = [...us.map(drawn('us')), ...them.map(drawn('them'))];
  const size = 2 * (skaters.length + (puck === undefined ? 0 : 1));
  const jointM2 = Array.from({ length: size * size }, (_, i) => (i % (size + 1) === 0 ? sdM ** 2 : 0));
  return {
    rink: RINK,
    attacks,
    skaters,
    ...(puck === undefined
      ? {}
      : {
          puck: {
            atM: { xM: puck.xM, yM: puck.yM },
            covM2,
            ...(puck.carrierId === undefined ? {} : { carrierId: puck.carrierId }),
          },
        }),
    jointM2,
    ...(parts.isEveryonePlaced === undefined ? {} : { isEveryonePlaced: parts.isEveryonePlaced }),
    ...(parts.allOfUsPlacedInM === undefined ? {} : { allOfUsPlacedInM: parts.allOfUsPlacedInM }),
  };
};

/** The same picture seen with the ends changed: a half turn. */
export const halfTurned = (scene: FrozenScene): FrozenScene => ({
  ...scene,
  attacks: scene.attacks === 'plusX' ? 'minusX' : 'plusX',
  skaters: scene.skaters.map(skater => ({
    ...skater,
    atM: { xM: -skater.atM.xM, yM: -skater.atM.yM },
  })),
  ...(scene.puck === undefined
    ? {}
    : { puck: { ...scene.puck, atM: { xM: -scene.puck.atM.xM, yM: -scene.puck.atM.yM } } }),
});
