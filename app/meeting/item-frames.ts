import { type FrameTimes, frameAtTime } from '../film/frame-index.ts';
import type { ShownFilm, ShownItem } from './shown-item.ts';

/** The stretch of an item by its frames: the first, the last, and where it stands, if anywhere inside. */
export interface ItemFrames {
  readonly first: number;
  readonly last: number;
  readonly stop?: number;
}

export function itemFramesOf(
  { item, fromS, toS }: ShownFilm & Pick<ShownItem, 'item'>,
  index: FrameTimes,
): ItemFrames {
  const first = frameAtTime(index, fromS);
  const last = Math.max(first, frameAtTime(index, toS));
  const stop = item.stop?.frameIndex;
  return { first, last, ...(stop !== undefined && stop >= first && stop <= last ? { stop } : {}) };
}
