import type { OpenFilm } from './open-film.ts';
import type { FilmPicture } from './own-picture.ts';

/** Puts a coded picture on a canvas as it is to be seen: turned, mirrored, square pixels. The canvas takes the shown size. */
export const drawFrame = (canvas: HTMLCanvasElement, picture: FilmPicture, film: OpenFilm): void => {
  const { widthPx, heightPx, rotationDeg } = film;
  if (canvas.width !== widthPx || canvas.height !== heightPx) {
    canvas.width = widthPx;
    canvas.height = heightPx;
  }
  const pen = canvas.getContext('2d', { alpha: false, willReadFrequently: false });
  if (!pen) return;
  const sideways = rotationDeg === 90 || rotationDeg === 270;
  const across = sideways ? heightPx : widthPx;
  const down = sideways ? widthPx : heightPx;
  pen.setTransform(1, 0, 0, 1, widthPx / 2, heightPx / 2);
  if (film.flipped) pen.scale(-1, 1);
  pen.rotate((rotationDeg * Math.PI) / 180);
  pen.drawImage(picture, -across / 2, -down / 2, across, down);
  pen.setTransform(1, 0, 0, 1, 0, 0);
};
