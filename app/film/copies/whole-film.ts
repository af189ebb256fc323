import { megabytes } from '../megabytes.ts';
import type { OpenFilm } from '../open-film.ts';
import { findAsked, keepAsked, roomBytes } from './copy-store.ts';
import { type CopyWindow, idOf, missingOf, type Stretch } from './copy-window.ts';
import { smallBytesOf } from './make-copy.ts';
import { keyDistanceOf, wholePiecesOf } from './whole-pieces.ts';

/** How far the copy of a whole film is. */
export interface WholeState {
  readonly isAsked: boolean;
  /** Frames from one key picture to the next, typically; 0 until the film is looked through. */
  readonly keyDistance: number;
  /** About how much the copy will take, bytes. */
  readonly aboutBytes: number;
  /** What is there of it. */
  readonly byteCount: number;
  readonly readyFrames: number;
  readonly ofFrames: number;
  /** Quiet time it still takes, seconds; undefined until a piece was made. */
  readonly leftS: number | undefined;
  /** Pieces that could not be made or kept. */
  readonly failedCount: number;
}

/** A copy of a whole film in smaller pictures, where a coach asked for it. It stays asked until it is let go. */
export class WholeFilm {
  /** What is wanted: nothing while it is not asked. */
  pieces: readonly Stretch[] = [];
  /** Whether it was asked before, and how the film is made. */
  readonly known: Promise<void>;
  private keyDistance = 0;
  private madeFrames = 0;
  private madeMs = 0;

  constructor(
    private readonly film: OpenFilm,
    private readonly hash: string,
  ) {
    this.known = this.look().catch(() => undefined);
  }

  /** Gives why it cannot be, in words; then nothing has changed. */
  async ask(isAsked: boolean): Promise<string | undefined> {
    await this.known;
    const room = isAsked ? await roomBytes().catch(() => undefined) : undefined;
    const about = smallBytesOf(this.film);
    if (room !== undefined && room < about) return noRoomSaid(about, room);
    try {
      await keepAsked(this.hash, isAsked);
    } catch {
      return 'This browser keeps nothing for this page, so no copy was made.';
    }
    this.pieces = isAsked ? await this.allPieces() : [];
    return undefined;
  }

  isPiece(id: string): boolean {
    return this.pieces.some(one => idOf(this.hash, one) === id);
  }

  stateOf(windows: readonly CopyWindow[], failed: ReadonlySet<string>): WholeState {
    const missing = missingOf(this.pieces, windows);
    const failing = missing.filter(one => failed.has(idOf(this.hash, one)));
    const toMake = framesOf(missing) - framesOf(failing);
    return {
      isAsked: this.pieces.length > 0,
      keyDistance: this.keyDistance,
      aboutBytes: smallBytesOf(this.film),
      byteCount: windows.reduce((sum, one) => sum + (one.isSmall ? one.byteCount : 0), 0),
      readyFrames: framesOf(this.pieces) - framesOf(missing),
      ofFrames: framesOf(this.pieces),
      leftS: this.madeFrames === 0 ? undefined : (toMake * this.madeMs) / this.madeFrames / 1000,
      failedCount: failing.length,
    };
  }

  /** Makes a piece; how long it took without the waits for the coach says how long the others will take. */
  async timed<Made>(
    stretch: Stretch,
    pause: () => Promise<boolean>,
    make: (pause: () => Promise<boolean>) => Promise<Made>,
  ): Promise<Made> {
    const fromMs = performance.now();
    let waitedMs = 0;
    const made = await make(async () => {
      const beganMs = performance.now();
      const goesOn = await pause();
      waitedMs += performance.now() - beganMs;
      return goesOn;
    });
    if (stretch.isSmall && made !== undefined) {
      this.madeMs += performance.now() - fromMs - waitedMs;
      this.madeFrames += framesOf([stretch]);
    }
    return made;
  }

  private async look(): Promise<void> {
    await this.film.whole;
    this.keyDistance = await keyDistanceOf(this.film);
    if (await findAsked(this.hash)) this.pieces = await this.allPieces();
  }

  private allPieces(): Promise<Stretch[]> {
    const { index } = this.film;
    const perS = index.frameCount / Math.max(0.1, index.endS - (index.timesS[0] ?? 0));
    return wholePiecesOf(this.film, Math.round(PIECE_S * perS));
  }
}

const noRoomSaid = (about: number, room: number): string =>
  `The copy would take about ${megabytes(about)}, and this browser has ${megabytes(room)} to spare for it: nothing was begun.`;

const framesOf = (stretches: readonly Stretch[]): number =>
  stretches.reduce((sum, { fromFrame, toFrame }) => sum + toFrame - fromFrame + 1, 0);

/** So much work is lost at most when the film is closed. */
const PIECE_S = 20;
