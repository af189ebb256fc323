import type { EncodedPacket } from 'mediabunny';
import { nearestFrame, timeOfFrame } from './frame-index.ts';
import type { OpenFilm } from './open-film.ts';
import { PictureCache, pictureCountFor } from './picture-cache.ts';
import { isSkippable, lengthSizeOf } from './skippable.ts';

/** The exact picture of one frame as coded (not yet turned), or why there is none. */
export type FrameAnswer =
  | { readonly kind: 'picture'; readonly frameIndex: number; readonly picture: ImageBitmap }
  | { readonly kind: 'none'; readonly frameIndex: number; readonly reason: 'damaged' | 'missing' }
  | { readonly kind: 'superseded' };

/**
 * Reads exact frames. One request is worked on at a time; a newer one makes the older answer `superseded`.
 * Pictures that come by on the way to a frame are kept while they are near it, so that steps cost nothing.
 */
export class FrameReader {
  private readonly cache: PictureCache;
  private readonly window: number;
  private readonly lengthSize: number | undefined;
  private readonly gone = new Map<number, 'damaged' | 'missing'>();
  private decoder: VideoDecoder | undefined;
  private broken = false;
  private next: AsyncGenerator<EncodedPacket, void, unknown> | undefined;
  /** The last frame that came out of the running decoder; −1 before the first. */
  private lastOut = -1;
  private lastFed = -1;
  private wanted = -1;
  private ticket = 0;
  private asked = -1;
  /** How many frames before the wanted one are kept: none on a jump, which must be quick; many when stepping back. */
  private keepBack = 0;
  private begun = false;
  /** Told of the key picture on the way to a frame that is not near it, so that something can be seen at once. */
  onNear: ((frameIndex: number, picture: ImageBitmap) => void) | undefined;
  private turn: Promise<unknown> = Promise.resolve();
  private pending: Promise<void>[] = [];

  constructor(private readonly film: OpenFilm) {
    const count = pictureCountFor(film.config.codedWidth ?? 1920, film.config.codedHeight ?? 1080);
    this.cache = new PictureCache(count);
    this.window = Math.floor(count * 0.7);
    this.lengthSize = lengthSizeOf(film.config);
  }

  /** The picture at once when it is at hand. */
  atHand(frameIndex: number): ImageBitmap | undefined {
    return this.cache.get(frameIndex);
  }

  read(frameIndex: number): Promise<FrameAnswer> {
    const ticket = ++this.ticket;
    this.asked = frameIndex;
    const answer = this.turn.then(() => this.readNow(frameIndex, ticket));
    this.turn = answer.catch(() => undefined);
    return answer;
  }

  close(): void {
    this.ticket++;
    this.stopDecoder();
    this.cache.clear();
  }

  private async readNow(frameIndex: number, ticket: number): Promise<FrameAnswer> {
    if (ticket !== this.ticket) return { kind: 'superseded' };
    const back = this.wanted - frameIndex;
    this.keepBack = back > 0 && back <= NEAR_FRAMES ? this.window : 0;
    this.wanted = frameIndex;
    const gone = this.gone.get(frameIndex);
    if (gone) return { kind: 'none', frameIndex, reason: gone };
    if (!this.cache.has(frameIndex)) {
      const trouble = await this.decodeTo(frameIndex, ticket);
      if (ticket !== this.ticket) return { kind: 'superseded' };
      if (trouble && !this.cache.has(frameIndex)) {
        await this.markGone(frameIndex, trouble);
        return { kind: 'none', frameIndex, reason: trouble };
      }
    }
    const picture = this.cache.get(frameIndex);
    if (picture && this.keepBack === 0) this.fillSoon(ticket);
    return picture
      ? { kind: 'picture', frameIndex, picture }
      : { kind: 'none', frameIndex, reason: 'damaged' };
  }

  /** Decodes what lies before the frame once the page is quiet, so that steps back are at hand too. */
  private fillSoon(ticket: number): void {
    setTimeout(() => {
      if (ticket !== this.ticket) return;
      this.turn = this.turn.then(() => this.fill(ticket)).catch(() => undefined);
    }, QUIET_MS);
  }

  private async fill(ticket: number): Promise<void> {
    const frameIndex = this.wanted;
    if (ticket !== this.ticket || frameIndex === 0 || this.cache.has(frameIndex - 1)) return;
    const isOfUse = () =>
      ticket === this.ticket || (this.asked < frameIndex && this.asked >= frameIndex - this.window);
    this.keepBack = this.window;
    await this.startAt(frameIndex);
    this.begun = true;
    while (isOfUse() && !this.broken && this.lastFed < frameIndex) {
      const step = await this.next!.next();
      if (step.done) return;
      await this.feed(step.value, frameIndex);
    }
    if (isOfUse()) await this.settle();
  }

  /** Feeds packets until the wanted frame has come out. Answers what is wrong when it never does. */
  private async decodeTo(frameIndex: number, ticket: number): Promise<'damaged' | 'missing' | undefined> {
    try {
      if (!(await this.canGoOn(frameIndex))) await this.startAt(frameIndex);
      while (!this.cache.has(frameIndex) && ticket === this.ticket) {
        if (this.broken) return 'damaged';
        const step = await this.next!.next();
        if (step.done) {
          await this.drain();
          return this.cache.has(frameIndex) ? undefined : this.lastFed < frameIndex ? 'missing' : 'damaged';
        }
        await this.feed(step.value, frameIndex);
      }
      if (ticket === this.ticket && !this.cache.has(frameIndex)) await this.settle();
      return this.cache.has(frameIndex) || ticket !== this.ticket ? undefined : 'damaged';
    } catch {
      const decodeFailed = this.broken;
      this.stopDecoder();
      return decodeFailed ? 'damaged' : 'missing';
    }
  }

  /** Whether the running decoder will come to this frame soon without starting over. */
  private async canGoOn(frameIndex: number): Promise<boolean> {
    if (!this.decoder || this.broken || !this.next || this.decoder.state !== 'configured') return false;
    const ahead = frameIndex - this.lastOut;
    if (ahead <= 0) return false;
    if (ahead < NEAR_FRAMES) return true;
    const key = await this.keyBefore(frameIndex);
    return key !== null && nearestFrame(this.film.index, key.timestamp) <= this.lastOut;
  }

  private keyBefore(frameIndex: number): Promise<EncodedPacket | null> {
    const timeS = timeOfFrame(this.film.index, frameIndex) + EPSILON_S;
    return this.film.packets.getKeyPacket(timeS, { metadataOnly: true });
  }

  /** What stops one frame stops all that follow it up to the next key picture; none of them is tried again. */
  private async markGone(frameIndex: number, trouble: 'damaged' | 'missing'): Promise<void> {
    const here = await this.keyBefore(frameIndex);
    const next = here && (await this.film.packets.getNextKeyPacket(here, { metadataOnly: true }));
    const { index } = this.film;
    const until = next ? nearestFrame(index, next.timestamp) : index.frameCount;
    for (let at = frameIndex; at < until; at++) if (!this.cache.has(at)) this.gone.set(at, trouble);
  }

  private async startAt(frameIndex: number): Promise<void> {
    this.stopDecoder();
    this.begun = false;
    const place =
      (await this.keyBefore(frameIndex)) ?? (await this.film.packets.getFirstPacket({ metadataOnly: true }));
    const key = place && (await this.film.packets.getPacket(place.timestamp));
    if (!key || key.timestamp !== place.timestamp)
      throw new Error('the bytes of the key picture are missing');
    this.next = this.film.packets.packets(key);
    const decoder = new VideoDecoder({
      output: frame => this.take(frame),
      error: () => {
        if (decoder === this.decoder) this.broken = true;
      },
    });
    decoder.configure(this.film.config);
    this.decoder = decoder;
    // Nothing before its key picture will come out of it, even while nothing has come out yet.
    this.lastOut = nearestFrame(this.film.index, key.timestamp) - 1;
  }

  private async feed(packet: EncodedPacket, target: number): Promise<void> {
    const at = nearestFrame(this.film.index, packet.timestamp);
    const skip =
      at < target - this.keepBack &&
      packet.type !== 'key' &&
      this.lengthSize !== undefined &&
      isSkippable(packet.data, this.lengthSize);
    if (skip) return;
    if (packet.byteLength > 0 && packet.data.byteLength < packet.byteLength)
      throw new Error('bytes are missing');
    this.lastFed = Math.max(this.lastFed, at);
    this.decoder!.decode(packet.toEncodedVideoChunk());
    while (this.decoder && !this.broken && this.decoder.decodeQueueSize > QUEUE_MOST)
      await breath(this.decoder);
    if (at >= target) await this.settle();
  }

  private take(frame: VideoFrame): void {
    const at = nearestFrame(this.film.index, frame.timestamp / 1e6);
    this.lastOut = Math.max(this.lastOut, at);
    const isFirst = !this.begun;
    this.begun = true;
    if (isFirst && at < this.wanted - FAR_FRAMES) this.tellNear(at, frame);
    else if (at < this.wanted - this.keepBack || at > this.wanted + this.window || this.cache.has(at))
      frame.close();
    else this.keep(at, frame);
  }

  private tellNear(at: number, frame: VideoFrame): void {
    const { wanted } = this;
    void createImageBitmap(frame)
      .then(picture => {
        if (this.wanted === wanted && !this.cache.has(wanted)) this.onNear?.(at, picture);
        picture.close();
      })
      .catch(() => undefined)
      .finally(() => frame.close());
  }

  private keep(at: number, frame: VideoFrame): void {
    const kept = createImageBitmap(frame)
      .then(picture => this.cache.put(at, picture, this.wanted))
      .catch(() => undefined)
      .finally(() => frame.close());
    this.pending.push(kept);
  }

  /** Waits until what was fed has been looked at and what came out is kept. */
  private async settle(): Promise<void> {
    while (this.decoder && !this.broken && this.decoder.decodeQueueSize > 0) await breath(this.decoder);
    const pending = this.pending;
    this.pending = [];
    await Promise.all(pending);
  }

  private async drain(): Promise<void> {
    await this.decoder?.flush();
    await this.settle();
    this.next = undefined;
  }

  private stopDecoder(): void {
    if (this.decoder && this.decoder.state !== 'closed') this.decoder.close();
    void this.next?.return();
    this.decoder = undefined;
    this.next = undefined;
    this.broken = false;
    this.lastOut = -1;
    this.lastFed = -1;
  }
}

/** Rather decode this many frames on than start again at a key picture. */
const NEAR_FRAMES = 12;
const QUEUE_MOST = 6;
const QUIET_MS = 250;
/** Only when so many frames must be decoded first is the key picture worth showing meanwhile. */
const FAR_FRAMES = 40;
const EPSILON_S = 1e-6;

const breath = (decoder: VideoDecoder): Promise<void> =>
  new Promise(resolve => {
    const done = () => {
      clearTimeout(timer);
      decoder.removeEventListener('dequeue', done);
      resolve();
    };
    const timer = setTimeout(done, 20);
    decoder.addEventListener('dequeue', done);
  });
