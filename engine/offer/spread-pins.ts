import type { OfferedPin } from './offered-pin.ts';

/**
 * Up to `most` of the pins, far apart in the picture: first the best measured, then always the one farthest from those taken, a badly measured one
 * counting as nearer. Source: farthest-point choice, Gonzalez 1985, Theoretical
 * Computer Science 38, 293.
 */
export const spreadPins = (pins: readonly OfferedPin[], most: number): OfferedPin[] => {
  const rest = [...pins].sort((a, b) => a.sdPx - b.sdPx);
  const taken = rest.splice(0, 1);
  while (taken.length < most && rest.length > 0) {
    const worth = ({ filmPx, sdPx }: OfferedPin): number =>
      Math.min(...taken.map(one => Math.hypot(one.filmPx.xPx - filmPx.xPx, one.filmPx.yPx - filmPx.yPx))) /
      (1 + sdPx);
    let best = 0;
    for (let i = 1; i < rest.length; i++) if (worth(rest[i]!) > worth(rest[best]!)) best = i;
    taken.push(...rest.splice(best, 1));
  }
  return taken;
};
