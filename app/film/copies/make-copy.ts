import { DecodeRun } from '../decode-run.ts';
import type { OpenFilm } from '../open-film.ts';
import type { CopyWindow, Stretch } from './copy-window.ts';

/**
 * Codes a stretch of film anew, with a key picture every eighth frame. Undefined when the browser cannot, the film is
 * damaged there, or it was called off. `pause` is waited for before each picture: the coach goes first.
 */
export const makeCopy = async (
  film: OpenFilm,
  hash: string,
  { fromFrame, toFrame }: Stretch,
  pause: () => Promise<boolean>,
): Promise<{ readonly window: CopyWindow; readonly bytes: Uint8Array<ArrayBuffer> } | undefined> => {
  const config = await encoderConfigFor(film);
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
    return { ...packed(chunks, { hash, fromFrame, toFrame, config: decoderConfig }) };
  } catch {
    return undefined;
  } finally {
    run.stop();
    if (encoder.state !== 'closed') encoder.close();
  }
};

const packed = (
  chunks: readonly EncodedVideoChunk[],
  of: Pick<CopyWindow, 'hash' | 'fromFrame' | 'toFrame' | 'config'>,
): { window: CopyWindow; bytes: Uint8Array<ArrayBuffer> } => {
  const bytes = new Uint8Array(chunks.reduce((sum, one) => sum + one.byteLength, 0));
  let offset = 0;
  const places = chunks.map(chunk => {
    chunk.copyTo(bytes.subarray(offset));
    const place = { isKey: chunk.type === 'key', offset, length: chunk.byteLength };
    offset += chunk.byteLength;
    return place;
  });
  const id = `${of.hash}:${of.fromFrame}`;
  return {
    window: { ...of, id, chunks: places, byteCount: bytes.length, usedAt: Date.now() },
    bytes,
  };
};

const encoderConfigFor = async (film: OpenFilm): Promise<VideoEncoderConfig | undefined> => {
  if (typeof VideoEncoder === 'undefined') return undefined;
  const { codedWidth: width, codedHeight: height } = film.config;
  if (width === undefined || height === undefined) return undefined;
  const { index } = film;
  const framerate = index.frameCount / Math.max(1, index.endS - (index.timesS[0] ?? 0));
  const bitrate = Math.round(BITS_A_PIXEL * width * height * framerate);
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
/** Chunks are numbered by frame: their time stamp is the frame's number in thousandths of a second. */
export const TICK_US = 1000;
