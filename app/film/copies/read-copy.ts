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
    let key = at;
    while (key > 0 && !window.chunks[key]?.isKey) key--;
    const places = window.chunks.slice(key, at + 1);
    const from = places[0]!.offset;
    const last = places[places.length - 1]!;
    const data = await bytes.slice(from, last.offset + last.length).arrayBuffer();
    const decoder = this.openFor(window.config);
    this.found = undefined;
    this.wanted = frameIndex;
    places.forEach((place, i) => {
      decoder.decode(
        new EncodedVideoChunk({
          type: place.isKey ? 'key' : 'delta',
          timestamp: (window.fromFrame + key + i) * TICK_US,
          data: new Uint8Array(data, place.offset - from, place.length),
        }),
      );
    });
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
