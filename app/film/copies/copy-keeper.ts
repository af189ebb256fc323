import { nearestFrame } from '../frame-index.ts';
import type { OpenFilm } from '../open-film.ts';
import { findBytes, findWindows, forgetWindows, keepWindow, touchWindow } from './copy-store.ts';
import {
  type CopyWindow,
  idOf,
  missingOf,
  needlessOf,
  type Stretch,
  stretchesAround,
} from './copy-window.ts';
import { makeCopy } from './make-copy.ts';
import { CopyReader } from './read-copy.ts';
import { WholeFilm, type WholeState } from './whole-film.ts';

/**
 * Copies of one film: of the seconds round its moments, and of all of it where that was asked. Made when the page is quiet, used for
 * jumps until the film's own picture is decoded, forgotten when what they are for goes.
 */
export class CopyKeeper {
  private windows: CopyWindow[] = [];
  private around: readonly Stretch[] = [];
  private readonly whole: WholeFilm;
  private readonly failed = new Set<string>();
  private readonly held = new Map<string, Blob>();
  private readonly reader = new CopyReader();
  private isClosed = false;
  private isMaking = false;
  private readonly known: Promise<void>;

  constructor(
    private readonly film: OpenFilm,
    private readonly hash: string,
    /** Whether the coach has been still for so many milliseconds. */
    private readonly isQuiet: () => boolean,
    /** Told when what is kept has changed. */
    private readonly onChange: () => void,
  ) {
    this.whole = new WholeFilm(film, hash);
    this.known = findWindows(hash).then(
      windows => {
        this.windows = windows;
      },
      () => undefined,
    );
  }

  /** How many bytes the copies round moments of this film take. */
  get byteCount(): number {
    return this.windows.reduce((sum, one) => sum + (one.isSmall ? 0 : one.byteCount), 0);
  }

  /** How many stretches round moments are still to be made. */
  get waitingCount(): number {
    return this.makeable(this.around).length;
  }

  get wholeState(): WholeState {
    return this.whole.stateOf(this.windows, this.failed);
  }

  has(frameIndex: number): boolean {
    return this.windowOf(frameIndex) !== undefined;
  }

  async read(frameIndex: number): Promise<VideoFrame | undefined> {
    const window = this.windowOf(frameIndex);
    if (!window) return undefined;
    let bytes = this.held.get(window.id);
    if (!bytes) {
      bytes = await findBytes(window.id).catch(() => undefined);
      if (!bytes) return undefined;
      this.held.set(window.id, bytes);
      if (!window.isSmall) void touchWindow(window).catch(() => undefined);
    }
    return this.reader.read(window, bytes, frameIndex);
  }

  /** The frames of the moments there are now. */
  async follow(moments: readonly number[]): Promise<void> {
    const { index } = this.film;
    const perS = index.frameCount / Math.max(0.1, index.endS - (index.timesS[0] ?? 0));
    this.around = stretchesAround(moments, {
      before: Math.round(BEFORE_S * perS),
      after: Math.round(AFTER_S * perS),
      most: Math.round(PIECE_S * perS),
      last: index.frameCount - 1,
    });
    await this.known;
    await this.whole.known;
    await this.goOn();
  }

  /** All of the film is to be kept ready, or not any more. Gives why it cannot be, in words. */
  async askWhole(isAsked: boolean): Promise<string | undefined> {
    await this.known;
    const refusal = await this.whole.ask(isAsked);
    if (refusal === undefined) {
      for (const id of [...this.failed]) if (this.whole.isPiece(id)) this.failed.delete(id);
      await this.goOn();
    }
    return refusal;
  }

  close(): void {
    this.isClosed = true;
    this.reader.close();
  }

  private get wanted(): readonly Stretch[] {
    return [...this.around, ...this.whole.pieces];
  }

  private async goOn(): Promise<void> {
    this.onChange();
    const needless = needlessOf(this.windows, this.wanted);
    if (needless.length > 0) {
      this.dropped(needless.map(one => one.id));
      await forgetWindows(needless.map(one => one.id)).catch(() => undefined);
    }
    // The film may be closed under it: then there is nothing left to make.
    void this.makeAll().catch(() => undefined);
  }

  /** Those round moments come in the film's own size, and first. */
  private windowOf(frameIndex: number): CopyWindow | undefined {
    const holding = this.windows.filter(one => one.fromFrame <= frameIndex && frameIndex <= one.toFrame);
    return holding.find(one => !one.isSmall) ?? holding[0];
  }

  private makeable(wanted: readonly Stretch[]): Stretch[] {
    return missingOf(wanted, this.windows).filter(one => !this.failed.has(idOf(this.hash, one)));
  }

  private async makeAll(): Promise<void> {
    if (this.isMaking) return;
    this.isMaking = true;
    try {
      for (;;) {
        const next = this.makeable(this.wanted)[0];
        if (!next || !(await this.untilQuiet())) return;
        await this.make(next);
      }
    } finally {
      this.isMaking = false;
    }
  }

  private async make(stretch: Stretch): Promise<void> {
    const goesOn = async () => (await this.untilQuiet()) && this.isWanted(stretch);
    const made = (await this.isWorthIt(stretch))
      ? await this.whole.timed(stretch, goesOn, pause => makeCopy(this.film, this.hash, stretch, pause))
      : undefined;
    if (this.isClosed || !this.isWanted(stretch)) return;
    const went = made && (await keepWindow(made.window, made.bytes).catch(() => [made.window.id]));
    if (!made || went?.includes(made.window.id)) {
      // Tried once: what cannot be made or kept now is not tried over and over.
      this.failed.add(idOf(this.hash, stretch));
      this.onChange();
      return;
    }
    this.windows = [...this.windows.filter(one => one.id !== made.window.id), made.window];
    this.dropped(went ?? []);
  }

  private isWanted(stretch: Stretch): boolean {
    return missingOf([stretch], this.wanted).length === 0;
  }

  /** A film with a key picture every few frames needs no copy. */
  private async isWorthIt({ fromFrame, toFrame, isSmall }: Stretch): Promise<boolean> {
    if (isSmall) return true;
    const { index, packets } = this.film;
    let key = await packets.getKeyPacket((index.timesS[toFrame] ?? 0) + 1e-6, { metadataOnly: true });
    if (!key) return false;
    const at = nearestFrame(index, key.timestamp);
    if (toFrame - at > SHORT_GOP) return true;
    key = await packets.getKeyPacket(key.timestamp - 1e-6, { metadataOnly: true });
    return key !== null && at - nearestFrame(index, key.timestamp) > SHORT_GOP && at > fromFrame;
  }

  private dropped(ids: readonly string[]): void {
    this.windows = this.windows.filter(one => !ids.includes(one.id));
    for (const id of ids) this.held.delete(id);
    this.onChange();
  }

  private async untilQuiet(): Promise<boolean> {
    while (!this.isClosed && !this.isQuiet()) await new Promise(resolve => setTimeout(resolve, 250));
    return !this.isClosed;
  }
}

/** A key press keeps the seconds before it; what came of it follows. */
const BEFORE_S = 4;
const AFTER_S = 3;
const PIECE_S = 10;
const SHORT_GOP = 12;
