import { drawFrame } from './draw-frame.ts';
import { type FilmLoop, nextLoop, turnOf } from './film-loop.ts';
import { FilmMotion } from './film-motion.ts';
import { clampFrame, type FrameIndex, frameAtTime, timeOfFrame } from './frame-index.ts';
import { type FrameAnswer, FrameReader } from './frame-reader.ts';
import { type FilmHolds, holdOnTheWay } from './holds/film-holds.ts';
import type { OpenFilm } from './open-film.ts';
import type { FilmPicture } from './own-picture.ts';
import { picturePixels } from './picture-pixels.ts';
import { fasterRate, slowerRate } from './play-rates.ts';

/** What the room shows of the player. `shownFrame` is the picture on the canvas, −1 for none; `frameIndex` is where the film is. */
export interface PlayerState {
  readonly frameIndex: number;
  readonly shownFrame: number;
  readonly playing: boolean;
  /** Times real speed; negative plays backwards. */
  readonly rate: number;
  readonly looking: boolean;
  /** The moving video is what is seen, not the canvas. */
  readonly onVideo: boolean;
  readonly muted: boolean;
  readonly loop: FilmLoop | undefined;
  /** How far a long film is looked through; undefined when all of it is. */
  readonly knownToS: number | undefined;
  /** What is on the canvas comes from a copy of the film; the film's own picture is on its way. */
  readonly isCopy?: boolean;
  /** Why the asked frame has no picture. */
  readonly gone?: 'damaged' | 'missing';
  /** The film would not play on from here; its frames can still be stepped. */
  readonly stuck?: boolean;
  /** Playback stands at a freeze, until this time of the page, and goes on at this speed. */
  readonly holding?: { readonly untilMs: number; readonly rate: number } | undefined;
}

/**
 * Plays through a video element, or frame by frame where the element does not take the film, and stops on exact frames, which
 * are drawn on a canvas from the film's own packets. Not a React thing: a picture every 16 ms must not draw the page again.
 */
export class Player {
  private state: PlayerState = {
    frameIndex: 0,
    shownFrame: -1,
    playing: false,
    rate: 1,
    looking: false,
    onVideo: false,
    muted: false,
    loop: undefined,
    knownToS: undefined,
  };
  private readonly listeners = new Set<() => void>();
  private readonly reader: FrameReader;
  private readonly motion: FilmMotion;
  /** Copies of the stretches round the moments, from which a frame comes sooner. */
  copies: PictureCopies | undefined;
  /** Frames at which playback stands a while. */
  holds: FilmHolds = new Map();
  private canvas: HTMLCanvasElement | null = null;
  private readonly stopListening: () => void;
  private toldMs = 0;

  constructor(readonly film: OpenFilm) {
    this.reader = new FrameReader(film);
    this.motion = new FilmMotion(film, {
      now: this.now,
      reach: (frameIndex, isOnVideo) => this.reach(frameIndex, isOnVideo),
      read: frameIndex => this.reader.read(frameIndex),
      show: answer => this.show(answer),
      end: () => this.atEnd(),
      stick: () => void this.jump(this.state.frameIndex).then(() => this.set({ stuck: true })),
    });
    if (!film.isWhole()) this.state = { ...this.state, knownToS: film.index.endS };
    this.stopListening = film.onGrown(() => this.tellGrown());
    this.reader.onNear = (frameIndex, picture) => {
      if (this.state.looking) this.draw(picture, { shownFrame: frameIndex, looking: true });
    };
  }

  readonly subscribe = (listener: () => void): (() => void) => {
    this.listeners.add(listener);
    return () => this.listeners.delete(listener);
  };

  readonly now = (): PlayerState => this.state;

  /** The picture's canvas and the video above it, once they stand in the page. */
  attach(canvas: HTMLCanvasElement, video: HTMLVideoElement): void {
    this.canvas = canvas;
    this.motion.attach(video, () => this.state.playing && this.state.onVideo);
    void this.jump(this.state.frameIndex);
  }

  /** The canvas of the shown picture, of its own size; undefined while it is not that of the frame the film is at. */
  shownCanvas(): HTMLCanvasElement | undefined {
    const { shownFrame, frameIndex, onVideo } = this.state;
    return onVideo || shownFrame !== frameIndex ? undefined : (this.canvas ?? undefined);
  }

  /** The pixels of the shown picture, as `shownCanvas`. */
  shownPicture(): ImageData | undefined {
    const shown = this.shownCanvas();
    return shown && picturePixels(shown);
  }

  get timeS(): number {
    return timeOfFrame(this.film.index, this.state.frameIndex);
  }

  /** To the frame on screen at a time; waits for it while a long film is still being looked through. */
  async jumpToTime(timeS: number): Promise<void> {
    this.motion.stop();
    if (!(await this.known(index => index.endS > timeS))) return;
    await this.jump(frameAtTime(this.film.index, timeS));
  }

  async jump(frameIndex: number): Promise<void> {
    this.motion.stop();
    if (this.state.holding) this.set({ holding: undefined });
    if (!(await this.known(index => index.frameCount > frameIndex))) return;
    const at = clampFrame(this.film.index, frameIndex);
    const { copies } = this;
    const fromCopy = !this.reader.atHand(at) && copies?.has(at) === true;
    this.set({ frameIndex: at, playing: false, looking: !this.reader.atHand(at) });
    const { turn } = this.motion;
    if (fromCopy) {
      this.reader.callOff();
      const picture = await copies.read(at);
      if (turn === this.motion.turn && picture)
        this.draw(picture, { shownFrame: at, looking: false, isCopy: true });
      picture?.close();
      if (turn !== this.motion.turn) return;
    }
    this.show(await this.reader.read(at));
  }

  step(frames: number): void {
    void this.jump(this.state.frameIndex + frames);
  }

  toggle(): void {
    if (this.state.playing) this.pause();
    else this.play(this.state.holding?.rate ?? 1);
  }

  pause(): void {
    if (this.state.playing || this.state.holding) void this.jump(this.state.frameIndex);
  }

  faster(direction: 1 | -1): void {
    this.play(fasterRate(this.rateNow(), direction));
  }

  slower(direction: 1 | -1): void {
    this.play(slowerRate(this.rateNow(), direction));
  }

  /** First the start of a loop, then its end, and it plays over and over; then it is let go. */
  setLoop(): void {
    const loop = nextLoop(this.state.loop, this.state.frameIndex);
    this.set({ loop });
    if (loop?.toFrame === undefined) return;
    const rate = this.rateNow() ?? 1;
    this.motion.stop();
    this.set({ frameIndex: rate > 0 ? loop.fromFrame : loop.toFrame });
    this.play(rate);
  }

  mute(muted: boolean): void {
    this.set({ muted });
    this.motion.mute(muted, this.state.rate);
  }

  play(rate: number): void {
    this.motion.stop();
    this.set({ playing: true, rate, looking: false, holding: undefined });
    this.motion.start(rate);
  }

  close(): void {
    this.motion.close();
    this.stopListening();
    this.reader.close();
    this.listeners.clear();
  }

  /** Waits until so much of the film is known, or all of it is. False when something else was asked for meanwhile. */
  private async known(isEnough: (index: FrameIndex) => boolean): Promise<boolean> {
    const { film } = this;
    const { turn } = this.motion;
    if (film.isWhole() || isEnough(film.index)) return true;
    this.set({ playing: false, looking: true });
    await new Promise<void>(resolve => {
      const stop = film.onGrown(() => {
        if (!film.isWhole() && !isEnough(film.index) && turn === this.motion.turn) return;
        stop();
        resolve();
      });
    });
    return turn === this.motion.turn;
  }

  /** Those who show how much is known hear of it, not more often than the eye reads. */
  private tellGrown(): void {
    const nowMs = performance.now();
    if (nowMs - this.toldMs < 500 && !this.film.isWhole()) return;
    this.toldMs = nowMs;
    this.set({ knownToS: this.film.isWhole() ? undefined : this.film.index.endS });
  }

  private rateNow(): number | undefined {
    return this.state.playing ? this.state.rate : undefined;
  }

  /** Playing, the film has come to a frame: it goes on, unless a frame on the way there is one to stand at. */
  private reach(frameIndex: number, isOnVideo: boolean): void {
    const { frameIndex: before, rate, loop } = this.state;
    const at = holdOnTheWay(this.holds, before, frameIndex, rate, loop);
    if (at === undefined) this.set(isOnVideo ? { frameIndex, onVideo: true } : { frameIndex });
    else this.stand(at, this.holds.get(at) ?? 0);
  }

  private stand(frameIndex: number, holdS: number): void {
    const { rate } = this.state;
    void this.jump(frameIndex);
    const { turn } = this.motion;
    const forMs = holdS * 1000;
    this.set({ frameIndex, playing: false, holding: { untilMs: performance.now() + forMs, rate } });
    setTimeout(() => turn === this.motion.turn && this.play(rate), forMs);
  }

  private atEnd(): void {
    const { loop, rate, frameIndex, playing } = this.state;
    const back = playing ? turnOf(loop, frameIndex, rate) : undefined;
    if (back === undefined) this.pause();
    else {
      this.set({ frameIndex: back });
      this.play(rate);
    }
  }

  private show(answer: FrameAnswer): void {
    if (answer.kind === 'superseded') return;
    if (answer.frameIndex !== this.state.frameIndex) return;
    if (answer.kind === 'none') {
      this.set({ looking: false, onVideo: false, shownFrame: -1, gone: answer.reason });
      return;
    }
    this.draw(answer.picture, { shownFrame: answer.frameIndex, looking: false });
  }

  private draw(picture: FilmPicture, change: Pick<PlayerState, 'shownFrame' | 'looking' | 'isCopy'>): void {
    if (this.canvas) drawFrame(this.canvas, picture, this.film);
    this.set({ ...change, onVideo: false });
  }

  private set(change: Partial<PlayerState>): void {
    const { gone: _, stuck: __, isCopy: ___, ...rest } = this.state;
    this.state = { ...rest, ...change };
    for (const listener of this.listeners) listener();
  }
}

interface PictureCopies {
  has(frameIndex: number): boolean;
  read(frameIndex: number): Promise<VideoFrame | undefined>;
}
