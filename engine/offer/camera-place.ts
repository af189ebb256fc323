import type { Matrix3 } from '../film/pins.ts';
import type { IcePoint } from '../units/points.ts';
import { cameraOf } from './camera-of.ts';
import { normalisedMap } from './normalised-map.ts';

/**
 * Where the camera of a fit stood, metres along the ice, by the map from the ice (metres) to a picture of so many pixels. Null where
 * no camera in a stand gives such a map. Source: `cameraOf`.
 */
export const cameraPlaceOf = (
  filmFromIce: Matrix3,
  picture: { readonly widthPx: number; readonly heightPx: number },
): IcePoint | null => {
  const camera = cameraOf(normalisedMap(filmFromIce, picture));
  return camera === null ? null : { xM: camera.xM, yM: camera.yM };
};
