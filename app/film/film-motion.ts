import { type FilmLoop, turnOf } from './film-loop.ts';
import { clampFrame, middleOfFrame, nearestFrame, timeOfFrame } from './frame-index.ts';
import type { FrameAnswer } from './frame-reader.ts';
import type { OpenFilm } from './open-film.ts';
import { PictureClock } from './picture-clock.ts';
import { isHeardAt } from './play-rates.ts';

/** Where the film is and how it is to go on. */
interface Going {
  readonly frameIndex: number;
  readonly loop: FilmLoop | undefined;
  readonly muted: boolean;
}

/** Who shows what the motion comes to. */
export interface Moved {
  now(): Going;
  /** A frame is reached: on the video element already, or about to be read. */
  reach(frameIndex: number, isOnVideo: boolean): void;
  read(frameIndex: number): Promise<FrameAnswer>;
  show(answer: FrameAnswer): void;
  end(): void;
  stick(): void;
}

/** Moves a film on: by the video element, or frame by frame where the element does not take the film, and backwards. */
export class FilmMotion {
  private readonly clock: PictureClock;
  private video: HTMLVideoElement | null = null;
  private turnCount = 0;

  constructor(
    private readonly film: OpenFilm,
    private readonly player: Moved,
  ) {
    this.clock = new PictureClock(film);
  }

  /** Changes whenever something else is asked of the film: an answer that was asked for in another turn comes too late. */
  get turn(): number {
    return this.turnCount;
  }

  attach(video: HTMLVideoElement, isPlayingIt: () => boolean): void {
    this.video = video;
    video.preservesPitch = true;
    video.addEventListener('ended', () => this.player.end());
    video.addEventListener('error', () => isPlayingIt() && this.player.stick());
  }

  mute(muted: boolean, rate: number): void {
    this.clock.muted = muted;
    if (this.video) this.video.muted = muted || !isHeardAt(rate);
  }

  /** From where the film is, at `rate` times real speed; negative plays backwards. */
  start(rate: number): void {
    const turn = ++this.turnCount;
    if (rate > 0 && this.video && !isRefused(this.video)) void this.playVideo(this.video, rate, turn);
    else void this.playFrames(rate, turn);
  }

  stop(): void {
    this.turnCount++;
    this.video?.pause();
    this.clock.stop();
  }

  close(): void {
    this.stop();
    this.clock.close();
  }

  private async playVideo(video: HTMLVideoElement, rate: number, turn: number): Promise<void> {
    const { index } = this.film;
    const onFrame = (_: number, { mediaTime }: VideoFrameCallbackMetadata) => {
      if (turn !== this.turnCount) return;
      const frameIndex = nearestFrame(this.film.index, mediaTime);
      this.player.reach(frameIndex, true);
      if (turn !== this.turnCount) return;
      const back = turnOf(this.player.now().loop, frameIndex, 1);
      if (back !== undefined) video.currentTime = middleOfFrame(this.film.index, back);
      video.requestVideoFrameCallback(onFrame);
    };
    try {
      // After damage the element plays nothing until it has loaded anew.
      if (video.error) video.load();
      const { frameIndex, muted } = this.player.now();
      const startS = middleOfFrame(index, frameIndex);
      if (Math.abs(video.currentTime - startS) > 1e-3) video.currentTime = startS;
      video.playbackRate = rate;
      video.muted = muted || !isHeardAt(rate);
      video.requestVideoFrameCallback(onFrame);
      await video.play();
    } catch {
      if (turn !== this.turnCount) return;
      if (isRefused(video)) void this.playFrames(rate, turn);
      else this.player.stick();
    }
  }

  /** Backwards, and where the video element does not take the film: frames are read one by one, as many as the clock allows. */
  private async playFrames(rate: number, turn: number): Promise<void> {
    const { index } = this.film;
    const last = index.frameCount - 1;
    await this.clock.start(timeOfFrame(index, this.player.now().frameIndex), rate);
    while (turn === this.turnCount) {
      await new Promise(resolve => requestAnimationFrame(resolve));
      const frameIndex = clampFrame(index, nearestFrame(index, Math.max(0, this.clock.timeS())));
      if (turn !== this.turnCount) return;
      if (frameIndex === this.player.now().frameIndex) {
        if (frameIndex === (rate < 0 ? 0 : last)) return this.player.end();
        continue;
      }
      const answer = await this.player.read(frameIndex);
      if (turn !== this.turnCount) return;
      this.player.reach(frameIndex, false);
      this.player.show(answer);
      if (turn !== this.turnCount) return;
      const back = turnOf(this.player.now().loop, frameIndex, rate);
      if (back !== undefined) await this.clock.start(timeOfFrame(index, back), rate);
    }
  }
}

/** The element does not take this kind of file at all, unlike one that it took and found damaged. */
const isRefused = (video: HTMLVideoElement): boolean =>
  video.error?.code === MediaError.MEDIA_ERR_SRC_NOT_SUPPORTED && video.readyState === 0;
