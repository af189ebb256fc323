import { DecodeRun } from './decode-run.ts';
import type { OpenFilm } from './open-film.ts';

/**
 * Two decoders of one film: one goes on from where the coach looks, the other stands ready for a jump. One that gave out all it
 * was fed serves again at once; to make a new one costs as much as some pictures do.
 */
export class TwoRuns {
  /** Goes on from picture to picture, and fills in round the one looked at. */
  goingOn: DecodeRun;
  private ready: DecodeRun;

  constructor(film: OpenFilm, take: (frameIndex: number, frame: VideoFrame, isFirst: boolean) => void) {
    this.goingOn = new DecodeRun(film, take);
    this.ready = new DecodeRun(film, take);
  }

  /** The run that gets to this frame soonest; what the other was about is broken off, so that it has the machine to itself. */
  async runTo(frameIndex: number, isJump: boolean): Promise<DecodeRun> {
    if (!isJump || (await this.goingOn.canReach(frameIndex))) return this.goingOn;
    this.goingOn.stop();
    return this.ready;
  }

  /** After a frame has come out: a run that was not emptied for it goes on from there. */
  settle(run: DecodeRun): void {
    if (run !== this.ready || !run.isRunning) return;
    this.ready = this.goingOn;
    this.goingOn = run;
  }

  stop(): void {
    this.goingOn.stop();
    this.ready.stop();
  }
}
