import type { EncodedPacket } from 'mediabunny';
import { frameBeginningAt } from './frame-index.ts';
import { keyBefore } from './key-before.ts';
import type { OpenFilm } from './open-film.ts';
import { isSkippable, lengthSizeOf } from './skippable.ts';

/**
 * One decoder running on from a key picture. Frames come out in the order they are shown, some packets after they went in;
 * whoever asks for a frame feeds until it has come out.
 */
export class DecodeRun {
  /** The last frame that came out, −1 for those that are cut away before the film's first; before anything did, the one before its key picture: nothing earlier will come. */
  lastOut = -1;
  /** The latest frame that was fed. */
  lastFed = -1;
  /** How many packets went in since the key picture. */
  fedCount = 0;
  /** Something in it could not be decoded; it gives nothing any more. */
  broken = false;
  private keyFrame = -1;
  private decoder: VideoDecoder | undefined;
  /** The decoder gave out all it was fed: nothing of the last run can come out in the next one, so it may serve that too. */
  private isEmptied = false;
  private next: AsyncGenerator<EncodedPacket, void, unknown> | undefined;
  private readonly lengthSize: number | undefined;
  private wake: () => void = () => undefined;

  constructor(
    private readonly film: OpenFilm,
    /** Takes a frame that came out and closes it; `isFirst` for the key picture that the run began with. */
    private readonly take: (frameIndex: number, frame: VideoFrame, isFirst: boolean) => void,
  ) {
    this.lengthSize = lengthSizeOf(film.config);
  }

  get isRunning(): boolean {
    return this.decoder?.state === 'configured' && this.next !== undefined && !this.broken;
  }

  /** Begins at the key picture on which this frame is built. Throws when its bytes are not there. */
  async startAt(frameIndex: number): Promise<void> {
    this.end(this.isEmptied && !this.broken && this.decoder?.state === 'configured');
    const { packets, index } = this.film;
    const place =
      (await keyBefore(this.film, frameIndex)) ?? (await packets.getFirstPacket({ metadataOnly: true }));
    const key = place && (await packets.getPacket(place.timestamp));
    if (!key || key.timestamp !== place.timestamp)
      throw new Error('the bytes of the key picture are missing');
    this.next = packets.packets(key);
    this.decoder ??= this.newDecoder();
    this.keyFrame = frameBeginningAt(index, key.timestamp);
    this.lastOut = this.keyFrame - 1;
  }

  /** Whether the frame comes sooner by going on than by starting over. */
  async canReach(frameIndex: number): Promise<boolean> {
    const ahead = frameIndex - this.lastOut;
    if (!this.isRunning || ahead <= 0) return false;
    if (ahead < NEAR_FRAMES) return true;
    const key = await keyBefore(this.film, frameIndex);
    return key !== null && frameBeginningAt(this.film.index, key.timestamp) <= this.lastOut;
  }

  /**
   * Feeds one packet, or passes over it when no frame from `keepFrom` on needs it, and waits until no more than `queueMost`
   * of them lie before the decoder. Gives its frame; undefined at the end of the film.
   */
  async feed(keepFrom: number, queueMost = QUEUE_MOST): Promise<number | undefined> {
    const step = await this.next!.next();
    if (step.done) return undefined;
    const packet = step.value;
    const at = frameBeginningAt(this.film.index, packet.timestamp);
    const isNeeded =
      at >= keepFrom ||
      packet.type === 'key' ||
      this.lengthSize === undefined ||
      !isSkippable(packet.data, this.lengthSize);
    if (!isNeeded) return at;
    if (packet.byteLength > 0 && packet.data.byteLength < packet.byteLength)
      throw new Error('bytes are missing');
    this.lastFed = Math.max(this.lastFed, at);
    this.decoder!.decode(packet.toEncodedVideoChunk());
    this.isEmptied = false;
    this.fedCount++;
    while (this.decoder && !this.broken && this.decoder.decodeQueueSize > queueMost) await this.breath();
    return at;
  }

  /** Brings out what was fed without waiting for packets to come; the run is over then. */
  async drain(): Promise<void> {
    const ended = this.next;
    this.next = undefined;
    void ended?.return();
    const { decoder } = this;
    await decoder?.flush();
    this.isEmptied = decoder !== undefined && decoder === this.decoder;
  }

  stop(): void {
    this.end(false);
  }

  private end(keepsDecoder: boolean): void {
    if (!keepsDecoder) {
      if (this.decoder && this.decoder.state !== 'closed') this.decoder.close();
      this.decoder = undefined;
      this.isEmptied = false;
    }
    void this.next?.return();
    this.next = undefined;
    this.broken = false;
    this.lastOut = -1;
    this.lastFed = -1;
    this.fedCount = 0;
    this.wake();
  }

  private newDecoder(): VideoDecoder {
    const decoder = new VideoDecoder({
      output: frame => {
        if (decoder === this.decoder) this.cameOut(frame);
        else frame.close();
      },
      error: () => {
        if (decoder !== this.decoder) return;
        this.broken = true;
        this.wake();
      },
    });
    decoder.configure(this.film.config);
    return decoder;
  }

  private cameOut(frame: VideoFrame): void {
    const at = frameBeginningAt(this.film.index, frame.timestamp / 1e6);
    const isFirst = this.lastOut < this.keyFrame;
    this.lastOut = Math.max(this.lastOut, at);
    this.take(at, frame, isFirst);
    this.wake();
  }

  /** Until the decoder has taken something in or given something out. */
  private breath(): Promise<void> {
    const { decoder } = this;
    return new Promise(resolve => {
      const done = () => {
        clearTimeout(timer);
        decoder?.removeEventListener('dequeue', done);
        resolve();
      };
      const timer = setTimeout(done, BREATH_MS);
      decoder?.addEventListener('dequeue', done);
      this.wake = done;
    });
  }
}

/** Rather decode this many frames on than start again at a key picture. */
const NEAR_FRAMES = 12;
/** Compressed packets wait in the decoder, where they cost next to nothing; each wait for it costs a turn of the page. */
const QUEUE_MOST = 40;
const BREATH_MS = 20;
