import type { EncodedPacketSink, Input, InputVideoTrack } from 'mediabunny';
import { browserDecodes, type CanDecode, decodableOf } from './decodable.ts';
import { codecNameOf, codecRefusal, type Refusal, refusalOf, soundNameOf } from './film-refusal.ts';
import { findFourcc } from './fourcc-of.ts';
import type { FrameIndex } from './frame-index.ts';
import { GrowingIndex } from './grow-index.ts';
import { refusalFromBytes, refusalFromContainer } from './sniff-file.ts';

/** Where the bytes are: in the browser's hand, or behind an address that answers ranges. */
export type FilmSource = { readonly file: File | Blob } | { readonly url: string };

/** A film that has been looked through: every picture has a number, and its bytes can be asked for. */
export interface OpenFilm {
  readonly kind: 'film';
  readonly source: FilmSource;
  /** The frames that are known: all of them once the film is looked through, which takes a while for long ones. */
  readonly index: FrameIndex;
  /** The film's length as its header says, or as far as it is known. */
  readonly durationS: number;
  isWhole(): boolean;
  readonly whole: Promise<void>;
  /** Calls when more frames are known, until the function it gives is called. */
  onGrown(listener: () => void): () => void;
  readonly config: VideoDecoderConfig;
  readonly packets: EncodedPacketSink;
  /** Clockwise quarter turns of the coded picture, degrees, and mirror after it. */
  readonly rotationDeg: 0 | 90 | 180 | 270;
  readonly flipped: boolean;
  /** The shown picture: rotated, square pixels. */
  readonly widthPx: number;
  readonly heightPx: number;
  /** The name of its sound, where this browser does not play it; the film then plays without. */
  readonly unheard: string | undefined;
  isClosed(): boolean;
  close(): void;
}

/**
 * Looks through a film without copying it: container, picture track, and the time stamp of every frame, those of a long film
 * in the background. `known` spares that.
 * Answers a refusal in words when it is no film that can be shown here.
 */
export const openFilm = async (
  source: FilmSource,
  canDecode: CanDecode = browserDecodes,
  known?: FrameIndex,
): Promise<OpenFilm | Refusal> => {
  if ('file' in source) {
    const refusal = await refusalFromBytes(source.file);
    if (refusal) return refusal;
  }
  const { ALL_FORMATS, BlobSource, EncodedPacketSink, Input, UrlSource } = await import('mediabunny');
  const input = new Input({
    formats: ALL_FORMATS,
    // Whole pieces come sooner after a jump than a stream that is begun anew there.
    source:
      'file' in source ? new BlobSource(source.file, { useStreamReader: false }) : new UrlSource(source.url),
  });
  let kept = false;
  try {
    if (!(await input.canRead())) return refusalFromContainer(await headOf(source)) ?? refusalOf('notFilm');
    const track = await input.getPrimaryVideoTrack();
    if (!track) {
      const sound = await input.getPrimaryAudioTrack();
      return refusalOf(sound ? 'soundOnly' : 'notFilm');
    }
    const described = await track.getDecoderConfig();
    const config = described && (await decodableOf(described, canDecode));
    if (!config) return codecRefusal(await codecOf(track, source));
    const packets = new EncodedPacketSink(track);
    const reading = known ? indexKnown(known) : readIndex(packets, await track.getTimeResolution());
    await reading.begun;
    if (reading.growing.now.frameCount === 0) return refusalOf('noFrames');
    const saidS = reading.isWhole() ? 0 : ((await track.getDurationFromMetadata()) ?? 0);
    kept = true;
    let isClosed = false;
    return {
      kind: 'film',
      source,
      get index() {
        return reading.growing.now;
      },
      get durationS() {
        return reading.isWhole() ? reading.growing.now.endS : Math.max(saidS, reading.growing.now.endS);
      },
      isWhole: reading.isWhole,
      whole: reading.whole,
      onGrown: reading.listen,
      config,
      packets,
      rotationDeg: await track.getRotation(),
      flipped: await track.getFlip(),
      widthPx: await track.getDisplayWidth(),
      heightPx: await track.getDisplayHeight(),
      unheard: await unheardOf(input),
      isClosed: () => isClosed,
      close: () => {
        isClosed = true;
        reading.end();
        input.dispose();
      },
    };
  } finally {
    if (!kept) input.dispose();
  }
};

const unheardOf = async (input: Input): Promise<string | undefined> => {
  const sound = await input.getPrimaryAudioTrack();
  // Outside a browser nobody can tell.
  if (!sound || typeof AudioDecoder === 'undefined' || (await sound.canDecode())) return undefined;
  const id = await sound.getInternalCodecId();
  return soundNameOf(await sound.getCodec(), typeof id === 'string' ? id : null);
};

const headOf = async (source: FilmSource): Promise<Uint8Array> => {
  const head =
    'file' in source
      ? source.file.slice(0, HEAD_BYTES)
      : await (await fetch(source.url, { headers: { Range: `bytes=0-${HEAD_BYTES - 1}` } })).blob();
  return new Uint8Array(await head.arrayBuffer());
};
const HEAD_BYTES = 4096;

const codecOf = async (track: InputVideoTrack, source: FilmSource): Promise<string> => {
  const id = await track.getInternalCodecId();
  const wrapped = id === 'V_MS/VFW/FOURCC' && 'file' in source ? await findFourcc(source.file) : undefined;
  return codecNameOf(await track.getCodec(), wrapped ?? (typeof id === 'string' ? id : null));
};

/** Looks through the film, packet by packet, in the background when it takes longer than a first picture may wait. */
const readIndex = (packets: EncodedPacketSink, ticksPerS: number): IndexReading => {
  const growing = new GrowingIndex(ticksPerS);
  const state = { isWhole: false, isOver: false };
  const listeners = new Set<() => void>();
  const tell = () => {
    for (const listener of listeners) listener();
  };
  let first: () => void = () => undefined;
  const begun = new Promise<void>(resolve => {
    first = resolve;
  });
  const read = async (): Promise<void> => {
    const fromMs = performance.now();
    let breathMs = fromMs;
    for await (const packet of packets.packets(undefined, undefined, { metadataOnly: true })) {
      if (state.isOver) return;
      // Pictures that begin before time 0 were cut away by an edit list and are not counted.
      if (packet.timestamp >= -ROUNDING_S) growing.add(packet.timestamp, packet.duration);
      const nowMs = performance.now();
      if (nowMs - breathMs < BREATH_MS) continue;
      if (nowMs - fromMs > FIRST_MS && growing.now.frameCount > 0) first();
      tell();
      await new Promise(resolve => setTimeout(resolve, 0));
      breathMs = performance.now();
    }
  };
  // A film that cannot be read to its end keeps the frames that were found.
  const whole = read()
    .catch(error => {
      if (growing.now.frameCount === 0) throw error;
    })
    .then(() => {
      growing.finish();
      state.isWhole = true;
      first();
      tell();
    });
  whole.catch(() => undefined);
  return {
    growing,
    begun: Promise.race([begun, whole]),
    whole,
    isWhole: () => state.isWhole,
    listen: listener => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    end: () => {
      state.isOver = true;
    },
  };
};

interface IndexReading {
  readonly growing: { readonly now: FrameIndex };
  /** Enough is known for a first picture. */
  readonly begun: Promise<void>;
  readonly whole: Promise<void>;
  isWhole(): boolean;
  listen(listener: () => void): () => void;
  end(): void;
}

/** What was found the last time the same film was looked through. */
const indexKnown = (index: FrameIndex): IndexReading => ({
  growing: { now: index },
  begun: Promise.resolve(),
  whole: Promise.resolve(),
  isWhole: () => true,
  listen: () => () => undefined,
  end: () => undefined,
});

const ROUNDING_S = 1e-6;
/** The page draws and answers between two stretches of so long. */
const BREATH_MS = 12;
/** Most films are looked through in this time; the picture of the others does not wait for their end. */
const FIRST_MS = 250;
