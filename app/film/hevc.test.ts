import { readFileSync } from 'node:fs';
import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { DecodeRun } from './decode-run.ts';
import { openFilm } from './open-film.ts';

/** Stands where a browser's decoder is, and takes HEVC under one of its two names. */
class TakesHevc {
  static name = 'hvc1';
  static asked: VideoDecoderConfig[] = [];
  static configured: VideoDecoderConfig[] = [];
  static fed: { type: string; data: Uint8Array }[] = [];
  static isConfigSupported = async (config: VideoDecoderConfig) => {
    TakesHevc.asked.push(config);
    return { supported: config.codec.startsWith(TakesHevc.name), config };
  };
  state = 'unconfigured';
  readonly decodeQueueSize = 0;
  configure(config: VideoDecoderConfig): void {
    this.state = 'configured';
    TakesHevc.configured.push(config);
  }
  decode(chunk: { type: string; data: Uint8Array }): void {
    TakesHevc.fed.push(chunk);
  }
  close(): void {
    this.state = 'closed';
  }
}

beforeEach(() => {
  TakesHevc.asked = [];
  TakesHevc.configured = [];
  TakesHevc.fed = [];
});
afterEach(() => vi.unstubAllGlobals());

/**
 * The codec string is that of ISO/IEC 14496-15 E.3: sample entry, profile (1, Main), compatibility flags from the last bit on
 * (Main and Main 10: 6), tier and level. ffprobe reads hvc1, Main, level 60 from this file.
 */
it.each(['hvc1', 'hev1'])(
  'HEVC goes to a browser that decodes it as %s, with its parameter sets',
  async name => {
    TakesHevc.name = name;
    vi.stubGlobal('VideoDecoder', TakesHevc);
    vi.stubGlobal(
      'EncodedVideoChunk',
      class {
        constructor(of: object) {
          Object.assign(this, of);
        }
      },
    );
    const bytes = readFileSync(new URL('../../fixtures/film-kinds/hevc.mp4', import.meta.url));
    const film = await openFilm({ file: new Blob([bytes]) });
    if (film.kind === 'refused') throw new Error(film.says);
    expect(film.index.frameCount).toBe(60);
    const run = new DecodeRun(film, () => undefined);
    await run.startAt(20);
    for (let packet = 0; packet < 5; packet++) await run.feed(20);
    for (const config of [...TakesHevc.asked, ...TakesHevc.configured]) {
      expect(config.codec).toMatch(/^(hvc1|hev1)\.1\.6\.L60(\.|$)/);
      // The configuration record holds parameter sets; its first byte is its version (ISO/IEC 14496-15 8.3.3.1).
      expect(new Uint8Array(config.description as ArrayBuffer)[0]).toBe(1);
    }
    expect(TakesHevc.configured.map(one => one.codec.slice(0, 4))).toEqual([name]);
    // No packet is passed over: which ones nothing is built on is read from H.264 only.
    expect(TakesHevc.fed.map(one => one.type)).toEqual(['key', 'delta', 'delta', 'delta', 'delta']);
    run.stop();
    film.close();
  },
);
