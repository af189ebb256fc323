import type { FilmPoint } from '@icewright/engine';

const SIDE_PX = 144;
const TIMES = 4;

/** Draws what lies under a point of the picture, four times as large as on the screen, with a crosshair. */
export const drawLoupe = (
  loupe: HTMLCanvasElement,
  picture: HTMLCanvasElement,
  at: FilmPoint,
  screenPerFilm: number,
): void => {
  const sharp = Math.min(2, window.devicePixelRatio || 1);
  const side = SIDE_PX * sharp;
  if (loupe.width !== side) {
    loupe.width = side;
    loupe.height = side;
  }
  const pen = loupe.getContext('2d');
  if (!pen) return;
  const seen = SIDE_PX / (TIMES * Math.max(screenPerFilm, 0.05));
  pen.imageSmoothingEnabled = false;
  pen.fillStyle = '#0a1118';
  pen.fillRect(0, 0, side, side);
  pen.drawImage(picture, at.xPx - seen / 2, at.yPx - seen / 2, seen, seen, 0, 0, side, side);
  for (const [colour, width] of [
    ['#f1f6f8', 3],
    ['#0b2238', 1],
  ] as const) {
    pen.strokeStyle = colour;
    pen.lineWidth = width * sharp;
    pen.beginPath();
    for (const [from, to] of [
      [0, 0.44],
      [0.56, 1],
    ] as const) {
      pen.moveTo(side * from, side / 2);
      pen.lineTo(side * to, side / 2);
      pen.moveTo(side / 2, side * from);
      pen.lineTo(side / 2, side * to);
    }
    pen.stroke();
  }
};

/** Beside the point so that neither pointer nor finger covers it; a finger gets it above. */
export const loupePlace = (
  x: number,
  y: number,
  width: number,
  byTouch: boolean,
): { readonly left: number; readonly top: number } => {
  const left = byTouch ? x - SIDE_PX / 2 : x + 28 + SIDE_PX > width ? x - 28 - SIDE_PX : x + 28;
  const top = byTouch ? y - SIDE_PX - 44 : y - SIDE_PX - 20;
  return { left: Math.max(0, Math.min(width - SIDE_PX, left)), top: byTouch ? top : Math.max(0, top) };
};
