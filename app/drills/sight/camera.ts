import { type PerspectiveCamera, Vector3 } from 'three';
import type { Eye } from './seat.ts';

/** Height of the picture as an angle, radians: a wide lens, since eyes take in more than a picture can. Our choice. */
export const PICTURE_HEIGHT_RAD = (55 * Math.PI) / 180;

/** Half the width of a picture of this aspect (width / height) as an angle, radians. */
export const halfWidthRad = (aspect: number): number => Math.atan(aspect * Math.tan(PICTURE_HEIGHT_RAD / 2));

/** Ice (x, y, up) lies in the drawn space as (x, up, −y). */
export const inSpace = (xM: number, yM: number, zM: number): Vector3 => new Vector3(xM, zM, -yM);

const NEAR_M = 0.12;
const FAR_M = 160;

/** Puts the camera into an eye. */
export function aimCamera(camera: PerspectiveCamera, eye: Eye, aspect: number): void {
  camera.fov = (PICTURE_HEIGHT_RAD * 180) / Math.PI;
  camera.aspect = aspect;
  camera.near = NEAR_M;
  camera.far = FAR_M;
  camera.position.copy(inSpace(eye.atM.xM, eye.atM.yM, eye.zM));
  const level = Math.cos(eye.downRad);
  camera.lookAt(
    inSpace(
      eye.atM.xM + level * Math.cos(eye.turnRad),
      eye.atM.yM + level * Math.sin(eye.turnRad),
      eye.zM - Math.sin(eye.downRad),
    ),
  );
  camera.updateProjectionMatrix();
  camera.updateMatrixWorld(true);
}
