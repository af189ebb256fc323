import type { Boards } from '../rink/boards.ts';
import type { IcePoint } from '../units/points.ts';
import { cutBy, rimOf } from './ice-polygon.ts';
import type { PinFit } from './pins.ts';

/**
 * The part of the ice that the picture shows, as a polygon, anticlockwise, metres; empty when it shows none. Every
 * edge of the picture is a straight line on the ice too, so the rim is cut by four lines, and by the camera's plane; the bend
 * that a lens gives to an edge is left out.
 * Source: polygon cut by half planes, Sutherland & Hodgman 1974 (from memory).
 */
export const pictureOnIce = (
  fit: PinFit,
  picture: { readonly widthPx: number; readonly heightPx: number },
  boards: Boards,
): IcePoint[] => {
  const [a, b, c, d, e, f, g, h, i] = fit.filmFromIce;
  const { widthPx, heightPx } = picture;
  const halves = [
    [g, h, i],
    [a, b, c],
    [widthPx * g - a, widthPx * h - b, widthPx * i - c],
    [d, e, f],
    [heightPx * g - d, heightPx * h - e, heightPx * i - f],
  ] as const;
  let polygon = rimOf(boards);
  for (const half of halves) polygon = cutBy(polygon, half);
  return polygon;
};
