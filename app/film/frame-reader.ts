import { nearestFrame } from './frame-index.ts';
import { keyBefore } from './key-before.ts';
import { NearPace } from './near-pace.ts';
import type { OpenFilm } from './open-film.ts';
import { type FilmPicture, ownPictureOf } from './own-picture.ts';
import { PictureCache, pictureCountFor } from './picture-cache.ts';
import { TwoRuns } from './two-runs.ts';

/** The exact picture of one frame as coded (not yet turned), or why there is none. */
export type FrameAnswer =
  | { readonly kind: 'picture'; readonly frameIndex: number; readonly picture: FilmPicture }
  | { readonly kind: 'none'; readonly frameIndex: number; readonly reason: 'damaged' | 'missing' }
  | { readonly kind: 'superseded' };

/**
 * Reads exact frames. One request is worked on at a time; a newer one makes the older answer `superseded`.
 * Pictures that come by on the way to a frame are kept while they are near it, so that steps cost nothing. Once the page is
 * quiet, what lies before the frame and a little of what comes after it is decoded too.
 */
export class FrameReader {
  private readonly cache: PictureCache;
  private readonly window: number;
  private readonly runs: TwoRuns;
  private readonly gone = new Map<number, 'damaged' | 'missing'>();
  private wanted = -1;
  private ticket = 0;
  private asked = -1;
  /** The wanted frame lies far from the one before: what comes after it is not decoded before it is seen. */
  private isJump = false;
  /** How many frames before the wanted one are kept: none on a jump, which must be quick; many when stepping back. */
  private keepBack = 0;
  private readonly pace = new NearPace();
  private isFilling = false;
  private isFillDue = false;
  /** Told of the key picture on the way to a frame that is not near it, so that something can be seen at once. */
  onNear: ((frameIndex: number, picture: FilmPicture) => void) | undefined;
  private turn: Promise<unknown> = Promise.resolve();

  constructor(private readonly film: OpenFilm) {
    const count = pictureCountFor(film.config.codedWidth ?? 1920, film.config.codedHeight ?? 1080);
    this.cache = new PictureCache(count);
    this.window = Math.floor(count * 0.7);
    this.runs = new TwoRuns(film, (at, frame, isFirst) => this.take(at, frame, isFirst));
  }

  /** The picture at once when it is at hand. */
  atHand(frameIndex: number): FilmPicture | undefined {
    return this.cache.get(frameIndex);
  }

  read(frameIndex: number): Promise<FrameAnswer> {
    const ticket = ++this.ticket;
    this.asked = frameIndex;
    const atHand = this.cache.get(frameIndex);
    if (atHand) {
      // What is at hand does not wait for what is being filled in behind it.
      const back = this.wanted - frameIndex;
      this.wanted = frameIndex;
      this.fillSoon(ticket, back > 0);
      return Promise.resolve({ kind: 'picture', frameIndex, picture: atHand });
    }
    const answer = this.turn
      .then(() => this.readNow(frameIndex, ticket))
      .catch((error): FrameAnswer => {
        // The film was closed while it was being read: nobody waits for this frame any more.
        if (this.film.isClosed() || ticket !== this.ticket) return { kind: 'superseded' };
        throw error;
      });
    this.turn = answer.catch(() => undefined);
    return answer;
  }

  /** Ends what is being worked on, without asking for another frame. */
  callOff(): void {
    this.ticket++;
    this.asked = -1;
    this.runs.stop();
  }

  close(): void {
    this.ticket++;
    this.runs.stop();
    this.cache.clear();
  }

  private async readNow(frameIndex: number, ticket: number): Promise<FrameAnswer> {
    if (ticket !== this.ticket) return { kind: 'superseded' };
    const back = this.wanted - frameIndex;
    this.pace.givenUp();
    this.isJump = Math.abs(back) > NEAR_FRAMES;
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
    if (picture) this.fillSoon(ticket, back > 0);
    return picture
      ? { kind: 'picture', frameIndex, picture }
      : { kind: 'none', frameIndex, reason: 'damaged' };
  }

  /** Decodes what lies before the frame once the page is quiet; without waiting for that while the coach steps back. */
  private fillSoon(ticket: number, goesBack: boolean): void {
    if (this.hasAround(goesBack) || (goesBack && this.isFillDue)) return;
    if (goesBack) this.isFillDue = true;
    setTimeout(
      () => {
        if (goesBack) this.isFillDue = false;
        else if (ticket !== this.ticket) return;
        this.turn = this.turn.then(() => this.fill(goesBack)).catch(() => undefined);
      },
      goesBack ? BETWEEN_STEPS_MS : QUIET_MS,
    );
  }

  private hasAround(goesBack: boolean): boolean {
    const enough = Math.min(this.wanted, goesBack ? Math.floor(this.window * BACK_SHARE) : 1);
    if (this.cache.countBefore(this.wanted) < enough) return false;
    return goesBack || this.cache.has(Math.min(this.wanted + AHEAD_FRAMES, this.film.index.frameCount - 1));
  }

  private async fill(goesBack: boolean): Promise<void> {
    if (this.hasAround(goesBack)) return;
    const { ticket, wanted: from } = this;
    // Stepping through what is being filled is no reason to stop; anything else is.
    const isOfUse = () =>
      ticket === this.ticket || (this.asked >= from - this.window && this.asked <= from + AHEAD_FRAMES);
    if (!isOfUse()) return;
    const firstMissing = from - this.cache.countBefore(from) - 1;
    const target = firstMissing >= 0 && firstMissing > from - this.window ? firstMissing : from;
    const until =
      goesBack && target < from ? target : Math.min(from + AHEAD_FRAMES, this.film.index.frameCount - 1);
    this.keepBack = this.window;
    this.isFilling = true;
    const run = this.runs.goingOn;
    try {
      if (target < from || !(await run.canReach(until))) await run.startAt(Math.max(0, target));
      let isFed = false;
      while (isOfUse() && !run.broken && !this.cache.has(until)) {
        const fed = await run.feed(from - this.keepBack, isFed ? 0 : undefined);
        isFed ||= fed === until;
        if (fed !== undefined) continue;
        await run.drain();
        break;
      }
    } finally {
      this.isFilling = false;
    }
    // Where a key picture lies between, what is before it is a run of its own.
    if (goesBack && isOfUse()) this.fillSoon(this.ticket, true);
  }

  /**
   * Feeds packets until the wanted frame has come out. Answers what is wrong when it never does: where something broke
   * the decoder, the frames before it get a second try that feeds nothing after them.
   */
  private async decodeTo(frameIndex: number, ticket: number): Promise<'damaged' | 'missing' | undefined> {
    const trouble = await this.tryTo(frameIndex, ticket, false);
    return trouble === 'damaged' ? this.tryTo(frameIndex, ticket, true) : trouble;
  }

  private async tryTo(
    frameIndex: number,
    ticket: number,
    isSecond: boolean,
  ): Promise<'damaged' | 'missing' | undefined> {
    const run = await this.runs.runTo(frameIndex, this.isJump);
    const isDone = () => this.cache.has(frameIndex) || ticket !== this.ticket;
    try {
      const isAnew = isSecond || !(await run.canReach(frameIndex));
      if (isAnew) await run.startAt(frameIndex);
      let isFed = !isAnew && run.lastFed >= frameIndex;
      while (!isDone() && !run.broken && run.lastOut <= frameIndex + LATEST_FRAMES) {
        const fed = await run.feed(frameIndex - this.keepBack, isFed ? 0 : FAR_QUEUE);
        isFed ||= fed === frameIndex;
        const isEnough = isSecond || (this.isJump && run.fedCount <= SHORT_RUN);
        if (fed !== undefined && !(isEnough && fed === frameIndex)) continue;
        const { lastFed } = run;
        await run.drain();
        return isDone() ? undefined : lastFed < frameIndex ? 'missing' : 'damaged';
      }
      this.runs.settle(run);
      return isDone() ? undefined : 'damaged';
    } catch {
      const decodeFailed = run.broken;
      run.stop();
      return decodeFailed ? 'damaged' : 'missing';
    }
  }

  /** Drawing the key picture would hold up the wanted one when that comes soon. */
  private nearSoon(at: number, frame: VideoFrame): void {
    const { wanted, ticket } = this;
    const waitMs = this.pace.keyCameOut(wanted - at, performance.now());
    setTimeout(() => {
      if (ticket === this.ticket && !this.cache.has(wanted)) this.onNear?.(at, frame);
      frame.close();
    }, waitMs);
  }

  /** What stops one frame stops all that follow it up to the next key picture; none of them is tried again. */
  private async markGone(frameIndex: number, trouble: 'damaged' | 'missing'): Promise<void> {
    const here = await keyBefore(this.film, frameIndex);
    const next = here && (await this.film.packets.getNextKeyPacket(here, { metadataOnly: true }));
    const { index } = this.film;
    const until = next ? nearestFrame(index, next.timestamp) : index.frameCount;
    for (let at = frameIndex; at < until; at++) if (!this.cache.has(at)) this.gone.set(at, trouble);
  }

  private take(at: number, frame: VideoFrame, isFirst: boolean): void {
    const { wanted } = this;
    if (at >= 0 && isFirst && !this.isFilling && at < wanted - FAR_FRAMES && !this.cache.has(wanted))
      this.nearSoon(at, frame.clone());
    if (at < 0 || at < wanted - this.keepBack || at > wanted + this.window || this.cache.has(at)) {
      frame.close();
      return;
    }
    if (at === wanted) this.pace.wantedCameOut(performance.now());
    this.cache.put(at, frame, wanted);
    if (!this.cache.has(at)) return;
    if (this.isFilling) this.copy(at, frame);
    // To make the copy takes as long as to draw the picture, which is waited for.
    else setTimeout(() => this.cache.get(at) === frame && this.copy(at, frame), COPY_AFTER_MS);
  }

  private copy(at: number, frame: VideoFrame): void {
    // The frame may be drawn while its copy is made; whoever draws does so at once.
    void ownPictureOf(frame.clone()).then(
      copy => {
        this.cache.replace(at, frame, copy);
        frame.close();
      },
      () => undefined,
    );
  }
}

/** A step back is one of no more than so many frames. */
const NEAR_FRAMES = 12;
const QUIET_MS = 250;
const BETWEEN_STEPS_MS = 20;
/** While the coach steps back, more is fetched once less than this share of what is kept before a frame is at hand. */
const BACK_SHARE = 0.7;
/** So many frames after the one looked at are decoded ahead. */
const AHEAD_FRAMES = 8;
/** So many packets to one frame are decoded anew sooner than the frames after it are decoded with it to go on from there. */
const SHORT_RUN = 60;
/** On the way to a frame nothing is kept: all packets may lie before the decoder at once. */
const FAR_QUEUE = 300;
const COPY_AFTER_MS = 60;
/** Only when so many frames must be decoded first is the key picture worth showing meanwhile. */
const FAR_FRAMES = 8;
/** A frame that has not come out when so much later ones have will not come. */
const LATEST_FRAMES = 2;
