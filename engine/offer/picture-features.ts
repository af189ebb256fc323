import type { ColourPicture } from '../film/colour-picture.ts';
import type { Rink } from '../rink/rink.ts';
import { LINE_PAINT } from './feature-rows.ts';
import { type FoundCircle, findCircles } from './find-circles.ts';
import { findIce, type IceInPicture } from './find-ice.ts';
import { type FoundLine, findLines } from './find-lines.ts';
import { type FoundSpot, findSpots } from './find-spots.ts';
import { type PaintMaps, paintMapsOf } from './paint-maps.ts';
import { paintedPixels } from './painted-pixels.ts';

/** What was found in a picture. */
export interface PictureFeatures {
  readonly ice: IceInPicture;
  readonly paint: PaintMaps;
  readonly spots: readonly FoundSpot[];
  readonly circles: readonly FoundCircle[];
  readonly blueLines: readonly FoundLine[];
  readonly redLines: readonly FoundLine[];
}

/** The ice, its paint, spots, circles and straight lines of a picture; null where there is no ice. Source: our own rules. */
export const featuresOf = (picture: ColourPicture, { layout }: Rink): PictureFeatures | null => {
  const ice = findIce(picture);
  if (ice === null) return null;
  const { widthPx, heightPx } = picture;
  const paint = paintMapsOf(picture, ice);
  const spots = findSpots(paint).slice(0, MOST_SPOTS);
  const ratio = (2 * layout.circleRadiusM) / layout.spotDiameterM;
  const linesOf = (map: Float32Array, most: number) =>
    findLines(paintedPixels(map, widthPx, LINE_PAINT.value), widthPx, heightPx, most);
  return {
    ice,
    paint,
    spots,
    circles: findCircles(paint, spots.slice(0, MOST_CIRCLES), ratio, SEED),
    blueLines: linesOf(paint.blue, MOST_BLUE),
    redLines: linesOf(paint.red, MOST_RED),
  };
};

const MOST_SPOTS = 12;
const MOST_CIRCLES = 8;
const MOST_BLUE = 3;
const MOST_RED = 5;
const SEED = 1;
