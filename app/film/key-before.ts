import type { EncodedPacket } from 'mediabunny';
import { timeOfFrame } from './frame-index.ts';
import type { OpenFilm } from './open-film.ts';

/** Place and time, without bytes, of the key picture on which a frame is built; null for a film that has none before it. */
export const keyBefore = ({ index, packets }: OpenFilm, frameIndex: number): Promise<EncodedPacket | null> =>
  packets.getKeyPacket(timeOfFrame(index, frameIndex) + EPSILON_S, { metadataOnly: true });

const EPSILON_S = 1e-6;
