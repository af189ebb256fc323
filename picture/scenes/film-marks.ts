import { fitPinsOn, landmarksOf, rinkOf } from '@icewright/engine';
import { drawFilmMarks } from '../film/draw-film-marks.ts';
import type { FilmMark, FilmView } from '../film/film-mark.ts';
import { lineOnFilm } from '../film/on-film.ts';
import type { Scene } from './scene.ts';

const rink = rinkOf({ preset: '200x85ft' });
const [WIDTH_PX, HEIGHT_PX] = [1280, 720];
const at = (xM: number, yM: number) => ({ xM, yM });

/** A camera 12 m above the ice and 34 m from its middle, looking at it: by the pinhole's own rule. */
const shotFrom = ({ xM, yM }: { xM: number; yM: number }) => {
  const [up, back, focalPx] = [12, 34, 1450];
  const [cos, sin] = [back / Math.hypot(up, back), up / Math.hypot(up, back)];
  const away = cos * (yM + back) + sin * up;
  const below = cos * up - sin * (yM + back);
  return { xPx: WIDTH_PX / 2 + (focalPx * xM) / away, yPx: HEIGHT_PX / 2 + (focalPx * below) / away };
};

const fitted = fitPinsOn(
  rink,
  landmarksOf(rink)
    .filter(({ atM }) => Math.abs(atM.xM) < 16)
    .slice(0, 24)
    .map(({ id, atM }) => ({ id, landmark: id, filmPx: shotFrom(atM) })),
  0.5,
);
if (fitted.kind !== 'fit') throw new Error(`the pins of the scene were refused: ${fitted.reason}`);
const view: FilmView = { fit: fitted.fit, widthPx: WIDTH_PX, heightPx: HEIGHT_PX, unitPx: 1 };

const MARKS: readonly FilmMark[] = [
  { kind: 'zone', placesM: [at(3, 4), at(10.5, 4), at(12.5, -1), at(5, -1.5)], words: 'nobody here' },
  { kind: 'lane', placesM: [at(-8, 7), at(-1.5, -2)], words: '' },
  { kind: 'ring', placesM: [at(-8, 7)], words: '19' },
  { kind: 'ring', placesM: [at(-1.5, -2)], words: '' },
  { kind: 'link', placesM: [at(-8, 7), at(-1, 8)], words: '', figure: '7.1 ± 0.3 m' },
  { kind: 'arrow', placesM: [at(-11, -5), at(-4, -7.5)], words: '' },
  { kind: 'ghost', placesM: [at(-1, 8), at(-6, 1)], who: 'F1 21', words: 'here' },
  { kind: 'text', placesM: [at(3, -7)], words: 'stick on the ice' },
];

export default {
  title: 'Marks over a film: they lie on the ice, stand on it, and read without colour',
  viewBox: [0, 0, WIDTH_PX, HEIGHT_PX],
  digits: 1,
  draw: pen => {
    pen.path('ice', sink => sink.rect(0, 0, WIDTH_PX, HEIGHT_PX));
    for (const { centreXM, halfSpanM } of Object.values(rink.lines)) {
      const [piece = []] = lineOnFilm(view, [at(centreXM, -halfSpanM), at(centreXM, halfSpanM)]);
      pen.path('hair', sink => {
        sink.moveTo(piece[0]!.xPx, piece[0]!.yPx);
        for (const { xPx, yPx } of piece) sink.lineTo(xPx, yPx);
      });
    }
    drawFilmMarks(pen, MARKS, view);
  },
} satisfies Scene;
