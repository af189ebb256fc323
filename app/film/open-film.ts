import type { EncodedPacketSink, InputVideoTrack } from 'mediabunny';
import { codecNameOf, codecRefusal, type Refusal, refusalOf } from './film-refusal.ts';
import { findFourcc } from './fourcc-of.ts';
import { type FrameIndex, frameIndexOf } from './frame-index.ts';
import { refusalFromBytes, refusalFromContainer } from './sniff-file.ts';

/** Where the bytes are: in the browser's hand, or behind an address that answers ranges. */
export type FilmSource = { readonly file: File | Blob } | { readonly url: string };

/** A film that has been looked through: every picture has a number, and its bytes can be asked for. */
export interface OpenFilm {
  readonly kind: 'film';
  readonly source: FilmSource;
  readonly index: FrameIndex;
  readonly config: VideoDecoderConfig;
  readonly packets: EncodedPacketSink;
  /** Clockwise quarter turns of the coded picture, degrees, and mirror after it. */
  readonly rotationDeg: 0 | 90 | 180 | 270;
  readonly flipped: boolean;
  /** The shown picture: rotated, square pixels. */
  readonly widthPx: number;
  readonly heightPx: number;
  close(): void;
}

/** Asks the browser whether it decodes a picture track; a test puts its own answer here. */
export type CanDecode = (config: VideoDecoderConfig) => Promise<boolean>;

/**
 * Looks through a film without reading it: container, picture track, and the time stamp of every frame. Nothing is copied.
 * Answers a refusal in words when it is no film that can be shown here.
 */
export const openFilm = async (
  source: FilmSource,
  canDecode: CanDecode = browserDecodes,
): Promise<OpenFilm | Refusal> => {
  if ('file' in source) {
    const refusal = await refusalFromBytes(source.file);
    if (refusal) return refusal;
  }
  const { ALL_FORMATS, BlobSource, EncodedPacketSink, Input, UrlSource } = await import('mediabunny');
  const input = new Input({
    formats: ALL_FORMATS,
    source: 'file' in source ? new BlobSource(source.file) : new UrlSource(source.url),
  });
  let kept = false;
  try {
    if (!(await input.canRead())) return refusalFromContainer(await headOf(source)) ?? refusalOf('notFilm');
    const track = await input.getPrimaryVideoTrack();
    if (!track) {
      const sound = await input.getPrimaryAudioTrack();
      return refusalOf(sound ? 'soundOnly' : 'notFilm');
    }
    const config = await track.getDecoderConfig();
    if (!config || !(await canDecode(config))) return codecRefusal(await codecOf(track, source));
    const packets = new EncodedPacketSink(track);
    const index = await readIndex(packets);
    if (index.frameCount === 0) return refusalOf('noFrames');
    kept = true;
    return {
      kind: 'film',
      source,
      index,
      config,
      packets,
      rotationDeg: await track.getRotation(),
      flipped: await track.getFlip(),
      widthPx: await track.getDisplayWidth(),
      heightPx: await track.getDisplayHeight(),
      close: () => input.dispose(),
    };
  } finally {
    if (!kept) input.dispose();
  }
};

const headOf = async (source: FilmSource): Promise<Uint8Array> => {
  const head =
    'file' in source
      ? source.file.slice(0, HEAD_BYTES)
      : await (await fetch(source.url, { headers: { Range: `bytes=0-${HEAD_BYTES - 1}` } })).blob();
  return new Uint8Array(await head.arrayBuffer());
};
const HEAD_BYTES = 4096;

const browserDecodes: CanDecode = async config => {
  if (typeof VideoDecoder === 'undefined') return false;
  try {
    return (await VideoDecoder.isConfigSupported(config)).supported === true;
  } catch {
    return false;
  }
};

const codecOf = async (track: InputVideoTrack, source: FilmSource): Promise<string> => {
  const id = await track.getInternalCodecId();
  const wrapped = id === 'V_MS/VFW/FOURCC' && 'file' in source ? await findFourcc(source.file) : undefined;
  return codecNameOf(await track.getCodec(), wrapped ?? (typeof id === 'string' ? id : null));
};

/** Reads every time stamp; pictures that begin before time 0 were cut away by an edit list and are not counted. */
const readIndex = async (packets: EncodedPacketSink): Promise<FrameIndex> => {
  const timesS: number[] = [];
  let lastDurationS = 0;
  let latestS = -1;
  for await (const packet of packets.packets(undefined, undefined, { metadataOnly: true })) {
    if (packet.timestamp < -ROUNDING_S) continue;
    timesS.push(packet.timestamp);
    if (packet.timestamp > latestS) {
      latestS = packet.timestamp;
      lastDurationS = packet.duration;
    }
    if (timesS.length % PACKETS_A_BREATH === 0) await new Promise(resolve => setTimeout(resolve, 0));
  }
  return frameIndexOf(timesS, lastDurationS);
};
/** A long film has hundreds of thousands of frames: let the page breathe while they are counted. */
const PACKETS_A_BREATH = 3000;
const ROUNDING_S = 1e-6;
