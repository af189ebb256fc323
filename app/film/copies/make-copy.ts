import { DecodeRun } from '../decode-run.ts';
import type { OpenFilm } from '../open-film.ts';
import { type CopyWindow, idOf, type Stretch } from './copy-window.ts';

/**
 * Codes a stretch of film anew, with a key picture every eighth frame: in the film's own size, or smaller. Undefined when the browser cannot, the film is
 * damaged there, or it was called off. `pause` is waited for before each picture: the coach goes first.
 */
export const makeCopy = async (
  film: OpenFilm,
  hash: string,
  stretch: Stretch,
  pause: () => Promise<boolean>,
): Promise<{ readonly window: CopyWindow; readonly bytes: Uint8Array<ArrayBuffer> } | undefined> => {
  const { fromFrame, toFrame } = stretch;
  const config = await encoderConfigFor(film, stretch.isSmall ?? false);
  if (!config) return undefined;
  const chunks: EncodedVideoChunk[] = [];
  let decoderConfig: VideoDecoderConfig | undefined;
  let failed = false;
  const encoder = new VideoEncoder({
    output: (chunk, about) => {
      chunks.push(chunk);
      decoderConfig ??= about?.decoderConfig;
    },
    error: () => {
      failed = true;
    },
  });
  encoder.configure(config);
  let coded = fromFrame;
  const run = new DecodeRun(film, (at, frame) => {
    if (at === coded && at <= toFrame && !failed) {
      const numbered = new VideoFrame(frame, { timestamp: at * TICK_US });
      encoder.encode(numbered, { keyFrame: (at - fromFrame) % KEY_EVERY === 0 });
      numbered.close();
      coded++;
    }
    frame.close();
  });
  try {
    await run.startAt(fromFrame);
    while (coded <= toFrame && !failed && !run.broken && run.lastOut < toFrame) {
      if (!(await pause())) return undefined;
      if ((await run.feed(fromFrame)) === undefined) {
        await run.drain();
        break;
      }
      while (encoder.encodeQueueSize > 3 && !failed) await new Promise(resolve => setTimeout(resolve, 10));
    }
    if (coded <= toFrame || failed) return undefined;
    await encoder.flush();
    if (!decoderConfig || chunks.length !== toFrame - fromFrame + 1) return undefined;
    return packed(chunks, { ...stretch, hash, config: decoderConfig });
  } catch {
    return undefined;
  } finally {
    run.stop();
    if (encoder.state !== 'closed') encoder.close();
  }
};

const packed = (
  chunks: readonly EncodedVideoChunk[],
  of: Stretch & Pick<CopyWindow, 'hash' | 'config'>,
): { window: CopyWindow; bytes: Uint8Array<ArrayBuffer> } => {
  const lengths = Uint32Array.from(chunks, one => one.byteLength);
  const bytes = new Uint8Array(lengths.reduce((sum, one) => sum + one, 0));
  let offset = 0;
  for (const chunk of chunks) {
    chunk.copyTo(bytes.subarray(offset));
    offset += chunk.byteLength;
  }
  const about = { id: idOf(of.hash, of), keyEvery: KEY_EVERY, lengths, byteCount: bytes.length };
  return { window: { ...of, ...about, usedAt: Date.now() }, bytes };
};

/** Bytes that copies in smaller pictures of the whole film may take: as they are asked of the encoder. */
export const smallBytesOf = (film: OpenFilm): number => {
  const size = sizeOf(film, true);
  return size ? (BITS_A_PIXEL_SMALL * size.width * size.height * film.index.frameCount) / 8 : 0;
};

const sizeOf = (
  { config: { codedWidth, codedHeight } }: OpenFilm,
  isSmall: boolean,
): { width: number; height: number } | undefined => {
  if (codedWidth === undefined || codedHeight === undefined) return undefined;
  const share = isSmall ? Math.min(1, SMALL_PX / Math.min(codedWidth, codedHeight)) : 1;
  // Colours are kept for two by two pixels.
  const even = (px: number) => (share === 1 ? px : 2 * Math.round((px * share) / 2));
  return { width: even(codedWidth), height: even(codedHeight) };
};

const encoderConfigFor = async (
  film: OpenFilm,
  isSmall: boolean,
): Promise<VideoEncoderConfig | undefined> => {
  const size = sizeOf(film, isSmall);
  if (typeof VideoEncoder === 'undefined' || !size) return undefined;
  const { width, height } = size;
  const { index } = film;
  const framerate = index.frameCount / Math.max(1, index.endS - (index.timesS[0] ?? 0));
  const bitrate = Math.round((isSmall ? BITS_A_PIXEL_SMALL : BITS_A_PIXEL) * width * height * framerate);
  for (const codec of ['avc1.42e034', 'avc1.42e02a', 'vp09.00.51.08', 'vp8']) {
    const config: VideoEncoderConfig = {
      codec,
      width,
      height,
      bitrate,
      framerate,
      latencyMode: 'realtime',
      ...(codec.startsWith('avc1') ? { avc: { format: 'annexb' } } : {}),
    };
    const answer = await VideoEncoder.isConfigSupported(config).catch(() => undefined);
    if (answer?.supported) return config;
  }
  return undefined;
};

const KEY_EVERY = 8;
/** Enough that the eye does not tell it from the film for the moment until the film's own picture is there. */
const BITS_A_PIXEL = 0.16;
/** A game of two hours at 30 pictures a second takes between one and two gigabytes; the picture is seen for a moment only. */
const BITS_A_PIXEL_SMALL = 0.1;
/** The shorter side of the smaller pictures. */
const SMALL_PX = 540;
/** Chunks are numbered by frame: their time stamp is the frame's number in thousandths of a second. */
export const TICK_US = 1000;
