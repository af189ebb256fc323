/**
 * How long this machine takes from a key picture to a frame built on it, learned from the jumps so far, and so when the key picture
 * is worth showing meanwhile: at once when the wanted frame is far off, late when it should be there sooner than an eye minds.
 * Times in milliseconds.
 */
export class NearPace {
  private msAFrame = FIRST_GUESS_MS;
  private fromMs = 0;
  private framesToGo = 0;

  /** A key picture came out, so many frames before the wanted one. Answers how long to wait before it is shown. */
  keyCameOut(framesToGo: number, nowMs: number): number {
    this.fromMs = nowMs;
    this.framesToGo = framesToGo;
    return this.msAFrame * framesToGo > SOON_MS ? 0 : LATE_MS;
  }

  /** The wanted frame came out. */
  wantedCameOut(nowMs: number): void {
    if (this.framesToGo === 0) return;
    this.msAFrame += LEARN_SHARE * ((nowMs - this.fromMs) / this.framesToGo - this.msAFrame);
    this.framesToGo = 0;
  }

  /** What was under way has been given up: nothing is learned of it. */
  givenUp(): void {
    this.framesToGo = 0;
  }
}

/** A machine of two cores at 1080p; common practice, no source. */
const FIRST_GUESS_MS = 4;
/** What answers within a tenth of a second is felt to answer at once (R. B. Miller, AFIPS 1968, from memory); a little of it is spent by then. */
const SOON_MS = 80;
/** An exact frame later than it should be. */
const LATE_MS = 110;
const LEARN_SHARE = 0.3;
