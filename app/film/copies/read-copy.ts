import type { CopyWindow } from './copy-window.ts';
import { TICK_US } from './make-copy.ts';

/** Takes single pictures out of copies: at most eight are decoded for one. Its decoder stays open, which saves most of the time. */
export class CopyReader {
  private decoder: VideoDecoder | undefined;
  private configured = '';
  private wanted = -1;
  private found: VideoFrame | undefined;
  private turn: Promise<unknown> = Promise.resolve();

  /** Undefined when it fails. */
  read(window: CopyWindow, bytes: Blob, frameIndex: number): Promise<VideoFrame | undefined> {
    const answer = this.turn.then(() => this.readNow(window, bytes, frameIndex)).catch(() => undefined);
    this.turn = answer;
    return answer;
  }

  close(): void {
    if (this.decoder && this.decoder.state !== 'closed') this.decoder.close();
    this.decoder = undefined;
  }

  private async readNow(
    window: CopyWindow,
    bytes: Blob,
    frameIndex: number,
  ): Promise<VideoFrame | undefined> {
    const at = frameIndex - window.fromFrame;
    const key = at - (at % window.keyEvery);
    const { lengths } = window;
    const from = sumOf(lengths, 0, key);
    const data = await bytes.slice(from, from + sumOf(lengths, key, at + 1)).arrayBuffer();
    const decoder = this.openFor(window.config);
    this.found = undefined;
    this.wanted = frameIndex;
    let offset = 0;
    for (let i = key; i <= at; i++) {
      decoder.decode(
        new EncodedVideoChunk({
          type: i === key ? 'key' : 'delta',
          timestamp: (window.fromFrame + i) * TICK_US,
          data: new Uint8Array(data, offset, lengths[i]!),
        }),
      );
      offset += lengths[i]!;
    }
    await decoder.flush();
    return this.found;
  }

  private openFor(config: VideoDecoderConfig): VideoDecoder {
    const wish = `${config.codec} ${config.codedWidth} ${config.codedHeight}`;
    if (this.decoder?.state === 'configured' && this.configured === wish) return this.decoder;
    this.close();
    const decoder = new VideoDecoder({
      output: frame => {
        if (Math.round(frame.timestamp / TICK_US) === this.wanted && !this.found) this.found = frame;
        else frame.close();
      },
      // Its flush fails with it.
      error: () => undefined,
    });
    decoder.configure(config);
    this.decoder = decoder;
    this.configured = wish;
    return decoder;
  }
}

const sumOf = (lengths: Uint32Array, from: number, to: number): number => {
  let sum = 0;
  for (let i = from; i < to; i++) sum += lengths[i]!;
  return sum;
};
