import { type FilmSound, findSound } from './film-sound.ts';
import type { OpenFilm } from './open-film.ts';

/** Where the film should be when its frames are shown one by one: by its sound where that plays, else by the page's clock. */
export class PictureClock {
  muted = false;
  private sound: Promise<FilmSound | undefined> | undefined;
  private heard: FilmSound | undefined;
  private turn = 0;
  private atS = 0;
  private rate = 1;
  private beforeMs = 0;

  constructor(private readonly film: OpenFilm) {}

  async start(fromS: number, rate: number): Promise<void> {
    const turn = ++this.turn;
    [this.atS, this.rate] = [fromS, rate];
    this.heard?.stop();
    this.heard = undefined;
    // Sound from packets cannot keep its pitch at another speed: it is played at real speed only.
    if (rate === 1 && !this.muted) {
      this.sound ??= findSound(this.film.source).catch(() => undefined);
      const sound = await this.sound;
      if (sound && turn === this.turn) {
        await sound.play(fromS);
        if (turn === this.turn) this.heard = sound;
      }
    }
    this.beforeMs = performance.now();
  }

  timeS(): number {
    if (this.heard) return this.heard.filmTimeS;
    const nowMs = performance.now();
    // A long read must not be caught up with a leap: the eye wants each picture.
    this.atS += (this.rate * Math.min(100, nowMs - this.beforeMs)) / 1000;
    this.beforeMs = nowMs;
    return this.atS;
  }

  stop(): void {
    this.turn++;
    this.heard?.stop();
    this.heard = undefined;
  }

  close(): void {
    this.stop();
    void this.sound?.then(sound => sound?.close());
  }
}
