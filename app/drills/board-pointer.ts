import type { IcePoint } from '@icewright/engine';

/** Where a pointer is on the ice, whatever way the sheet is turned and scaled. Null before the board is on screen. */
export function icePointUnder(
  sheet: SVGGraphicsElement | null,
  event: { readonly clientX: number; readonly clientY: number },
): IcePoint | null {
  const toScreen = sheet?.getScreenCTM();
  if (toScreen === null || toScreen === undefined) return null;
  const at = new DOMPoint(event.clientX, event.clientY).matrixTransform(toScreen.inverse());
  return { xM: rounded(at.x), yM: rounded(-at.y) };
}

/** Centimetres are finer than a hand on a screen. */
const rounded = (lengthM: number): number => Math.round(lengthM * 100) / 100;

/** What arrow keys do to a point as it is seen: 0.1 m, with Shift 1 m; on an upright sheet up is +x. */
export function arrowStep(
  event: { readonly key: string; readonly shiftKey: boolean },
  isUpright: boolean,
): IcePoint | null {
  const stepM = event.shiftKey ? 1 : 0.1;
  const seen = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, 1], ArrowDown: [0, -1] }[event.key];
  if (seen === undefined) return null;
  const [right = 0, up = 0] = seen;
  return isUpright ? { xM: up * stepM, yM: -right * stepM } : { xM: right * stepM, yM: up * stepM };
}

export const plus = (a: IcePoint, b: IcePoint): IcePoint => ({
  xM: rounded(a.xM + b.xM),
  yM: rounded(a.yM + b.yM),
});

/** How many pixels of the screen a metre of ice is now. */
export function pxPerM(sheet: SVGGraphicsElement | null): number {
  const toScreen = sheet?.getScreenCTM();
  return toScreen === null || toScreen === undefined ? 1 : Math.hypot(toScreen.a, toScreen.b);
}
