import { lengthSaid } from '../parts/figures.ts';
import type { FreezeView } from './freeze-view.ts';

/** How well pins hold the picture: what of it, along, across, and at the worst place in view. Upright for pins that stand, sloping for such as are offered. */
export function HeldWords({
  held,
  lengths,
  isOffered = false,
}: {
  readonly held: NonNullable<FreezeView['held']>;
  readonly lengths: FreezeView['lengths'];
  readonly isOffered?: boolean;
}) {
  const figure = (halfM: number) => {
    const said = `± ${lengthSaid(halfM, lengths, 2)}`;
    return isOffered ? <i className="est held-figure">{said}</i> : <b className="b q2 held-figure">{said}</b>;
  };
  return (
    <>
      the {held.where === 'puck' ? 'puck' : "picture's middle"} to {figure(held.alongM)} lengthways,{' '}
      {figure(held.acrossM)} across, the worst place in view to {figure(held.worstM)}
    </>
  );
}
