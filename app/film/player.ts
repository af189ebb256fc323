import { drawFrame } from './draw-frame.ts';
import { clampFrame, middleOfFrame, nearestFrame, timeOfFrame } from './frame-index.ts';
import { type FrameAnswer, FrameReader } from './frame-reader.ts';
import type { OpenFilm } from './open-film.ts';

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
  /** Why the asked frame has no picture. */
  readonly gone?: 'damaged' | 'missing';
  /** The film would not play on from here; its frames can still be stepped. */
  readonly stuck?: boolean;
}

const RATES = [1, 2, 4] as const;

/**
 * Plays through a video element and stops on exact frames, which are drawn on a canvas from the film's own packets.
 * Not a React thing: a picture every 16 ms must not draw the page again.
 */
export class Player {
  private state: PlayerState = {
    frameIndex: 0,
    shownFrame: -1,
    playing: false,
    rate: 1,
    looking: false,
    onVideo: false,
  };
  private readonly listeners = new Set<() => void>();
  private readonly reader: FrameReader;
  private canvas: HTMLCanvasElement | null = null;
  private video: HTMLVideoElement | null = null;
  private playing = 0;

  constructor(readonly film: OpenFilm) {
    this.reader = new FrameReader(film);
    this.reader.onNear = (frameIndex, picture) => {
      if (!this.state.looking || !this.canvas) return;
      drawFrame(this.canvas, picture, this.film);
      this.set({ shownFrame: frameIndex, onVideo: false, looking: true });
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
    this.video = video;
    video.addEventListener('ended', () => this.pause());
    video.addEventListener('error', () => this.state.playing && this.standStuck());
    void this.jump(this.state.frameIndex);
  }

  get timeS(): number {
    return timeOfFrame(this.film.index, this.state.frameIndex);
  }

  async jump(frameIndex: number): Promise<void> {
    this.stopMotion();
    const at = clampFrame(this.film.index, frameIndex);
    this.set({ frameIndex: at, playing: false, looking: !this.reader.atHand(at) });
    this.show(await this.reader.read(at));
  }

  step(frames: number): void {
    void this.jump(this.state.frameIndex + frames);
  }

  toggle(): void {
    if (this.state.playing) this.pause();
    else this.play(1);
  }

  pause(): void {
    if (this.state.playing) void this.jump(this.state.frameIndex);
  }

  /** The same direction again is faster; the other way begins at real speed. */
  faster(direction: 1 | -1): void {
    const { playing, rate } = this.state;
    const same = playing && Math.sign(rate) === direction;
    const next = same ? (RATES.find(one => one > Math.abs(rate)) ?? RATES[RATES.length - 1]!) : RATES[0];
    this.play(direction * next);
  }

  play(rate: number): void {
    this.stopMotion();
    const turn = ++this.playing;
    this.set({ playing: true, rate, looking: false });
    if (rate > 0) void this.playVideo(rate, turn);
    else void this.playBack(rate, turn);
  }

  close(): void {
    this.stopMotion();
    this.reader.close();
    this.listeners.clear();
  }

  private async playVideo(rate: number, turn: number): Promise<void> {
    const video = this.video;
    if (!video) return;
    const onFrame = (_: number, { mediaTime }: VideoFrameCallbackMetadata) => {
      if (turn !== this.playing) return;
      const frameIndex = nearestFrame(this.film.index, mediaTime);
      this.set({ frameIndex, onVideo: true });
      video.requestVideoFrameCallback(onFrame);
    };
    try {
      // After damage the element plays nothing until it has loaded anew.
      if (video.error) video.load();
      const startS = middleOfFrame(this.film.index, this.state.frameIndex);
      if (Math.abs(video.currentTime - startS) > 1e-3) video.currentTime = startS;
      video.playbackRate = rate;
      video.requestVideoFrameCallback(onFrame);
      await video.play();
    } catch {
      if (turn === this.playing) this.standStuck();
    }
  }

  /** Video elements do not run backwards: frames are read one by one, as many as the clock allows. */
  private async playBack(rate: number, turn: number): Promise<void> {
    const { index } = this.film;
    let atS = timeOfFrame(index, this.state.frameIndex);
    let beforeMs = performance.now();
    while (turn === this.playing) {
      await new Promise(resolve => requestAnimationFrame(resolve));
      const nowMs = performance.now();
      // A long read must not be caught up with a leap: the eye wants each picture.
      atS += (rate * Math.min(100, nowMs - beforeMs)) / 1000;
      beforeMs = nowMs;
      const frameIndex = clampFrame(index, nearestFrame(index, Math.max(0, atS)));
      if (turn !== this.playing) return;
      if (frameIndex === this.state.frameIndex) {
        if (frameIndex === 0) return this.pause();
        continue;
      }
      const answer = await this.reader.read(frameIndex);
      if (turn !== this.playing) return;
      this.set({ frameIndex });
      this.show(answer);
    }
  }

  private standStuck(): void {
    void this.jump(this.state.frameIndex).then(() => this.set({ stuck: true }));
  }

  private stopMotion(): void {
    this.playing++;
    this.video?.pause();
  }

  private show(answer: FrameAnswer): void {
    if (answer.kind === 'superseded') return;
    if (answer.frameIndex !== this.state.frameIndex) return;
    if (answer.kind === 'none') {
      this.set({ looking: false, onVideo: false, shownFrame: -1, gone: answer.reason });
      return;
    }
    if (this.canvas) drawFrame(this.canvas, answer.picture, this.film);
    this.set({ looking: false, onVideo: false, shownFrame: answer.frameIndex });
  }

  private set(change: Partial<PlayerState>): void {
    const { gone: _, stuck: __, ...rest } = this.state;
    this.state = { ...rest, ...change };
    for (const listener of this.listeners) listener();
  }
}
