import { getFirstEncodableVideoCodec } from 'mediabunny';

export type ReelKind = 'mp4' | 'webm';

/** H.264 alone in an MP4: with another codec in it, most players show nothing. */
const CODECS = { mp4: ['avc'], webm: ['vp9', 'vp8'] } as const;

/** How this browser codes pictures for a kind of file, of this size; null when it cannot. */
export const reelCodec = (kind: ReelKind, widthPx: number, heightPx: number) =>
  getFirstEncodableVideoCodec([...CODECS[kind]], { width: even(widthPx), height: even(heightPx) });

/** Encoders take colours by twos. */
export const even = (px: number): number => 2 * Math.ceil(px / 2);

/** Which files this browser can write. */
export const findReelKinds = async (widthPx: number, heightPx: number): Promise<readonly ReelKind[]> => {
  if (typeof VideoEncoder === 'undefined') return [];
  const kinds: ReelKind[] = [];
  for (const kind of ['mp4', 'webm'] as const)
    if ((await reelCodec(kind, widthPx, heightPx)) !== null) kinds.push(kind);
  return kinds;
};
