import type { FilmSource } from './open-film.ts';

/** A film's sound played from its own packets, for films that the video element does not take. */
export class FilmSound {
  private readonly context = new AudioContext();
  private turn = 0;
  private startedS = 0;
  private fromS = 0;

  constructor(private readonly buffers: SoundBuffers) {}

  /** Begins at this time of the film; what plays already ends. */
  async play(fromS: number): Promise<void> {
    this.stop();
    const turn = ++this.turn;
    await this.context.resume();
    this.fromS = fromS;
    this.startedS = this.context.currentTime + LEAD_S;
    void this.schedule(turn).catch(() => undefined);
  }

  /** Where in the film the sound is: the clock that pictures follow. */
  get filmTimeS(): number {
    return this.fromS + Math.max(0, this.context.currentTime - this.startedS);
  }

  stop(): void {
    this.turn++;
    void this.context.suspend();
    for (const one of this.sources) one.stop();
    this.sources.clear();
  }

  close(): void {
    this.stop();
    void this.context.close();
  }

  private readonly sources = new Set<AudioBufferSourceNode>();

  private async schedule(turn: number): Promise<void> {
    for await (const { buffer, timestamp } of this.buffers(this.fromS)) {
      if (turn !== this.turn) return;
      const source = this.context.createBufferSource();
      source.buffer = buffer;
      source.connect(this.context.destination);
      const atS = this.startedS + timestamp - this.fromS;
      const lateS = Math.max(0, this.context.currentTime - atS);
      if (lateS < buffer.duration) source.start(Math.max(0, atS), lateS);
      this.sources.add(source);
      source.addEventListener('ended', () => this.sources.delete(source));
      while (turn === this.turn && atS > this.context.currentTime + AHEAD_S)
        await new Promise(resolve => setTimeout(resolve, 100));
    }
  }
}

type SoundBuffers = (
  fromS: number,
) => AsyncIterable<{ readonly buffer: AudioBuffer; readonly timestamp: number }>;

/** Undefined when the film has no sound that this browser decodes. */
export const findSound = async (source: FilmSource): Promise<FilmSound | undefined> => {
  const { ALL_FORMATS, AudioBufferSink, BlobSource, Input, UrlSource } = await import('mediabunny');
  const input = new Input({
    formats: ALL_FORMATS,
    source: 'file' in source ? new BlobSource(source.file) : new UrlSource(source.url),
  });
  const track = await input.getPrimaryAudioTrack();
  if (!track || !(await track.canDecode())) {
    input.dispose();
    return undefined;
  }
  const sink = new AudioBufferSink(track);
  return new FilmSound(fromS => sink.buffers(Math.max(0, fromS)));
};

/** Time for the first buffers to be decoded. */
const LEAD_S = 0.1;
const AHEAD_S = 1;
