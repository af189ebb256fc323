import { existsSync } from 'node:fs';
import { chromiumFrames } from './chromium-frames.ts';
import { ffmpegFrames, hasFfmpeg } from './ffmpeg-frames.ts';
import type { Asked, OnFrame } from './on-frame.ts';

export type Decoder = 'chromium' | 'ffmpeg';

/** What of this machine can decode a film: a Chromium first, because that is what the workbench uses; else an ffmpeg. */
export const decoderHere = (wanted: string | undefined): Decoder | undefined => {
  if (wanted !== 'ffmpeg' && findChromium() !== undefined) return 'chromium';
  return wanted !== 'chromium' && hasFfmpeg() ? 'ffmpeg' : undefined;
};

/** Decodes a film picture by picture and hands on those asked for; answers how many there were up to the last of them. Memory stays that of a few pictures. */
export const filmFrames = (
  decoder: Decoder,
  film: string,
  size: { readonly width: number; readonly height: number },
  asked: Asked,
  onFrame: OnFrame,
): Promise<number> =>
  decoder === 'chromium'
    ? chromiumFrames(findChromium()!, film, asked, onFrame)
    : ffmpegFrames(film, size, asked, onFrame);

const findChromium = (): string | undefined =>
  [
    process.env.ICEWRIGHT_BROWSER,
    '/usr/bin/chromium',
    '/usr/bin/chromium-browser',
    '/usr/bin/google-chrome',
    '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  ].find(path => path !== undefined && existsSync(path));
