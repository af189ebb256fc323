import { spawn, spawnSync } from 'node:child_process';
import type { Asked, OnFrame } from './on-frame.ts';

export const hasFfmpeg = (): boolean => spawnSync('ffmpeg', ['-version']).status === 0;

/** The pictures asked for, in the order of showing, by the machine's ffmpeg, which also turns it. */
export const ffmpegFrames = async (
  film: string,
  { width, height }: { readonly width: number; readonly height: number },
  { step, lastIndex, inColour = false, only }: Asked,
  onFrame: OnFrame,
): Promise<number> => {
  const asked = [
    '-v',
    'error',
    '-i',
    film,
    ...(Number.isFinite(lastIndex) ? ['-frames:v', `${lastIndex + 1}`] : []),
    '-fps_mode',
    'passthrough',
    '-f',
    'rawvideo',
    '-pix_fmt',
    inColour ? 'rgba' : 'gray',
    '-',
  ];
  const ffmpeg = spawn('ffmpeg', asked, { stdio: ['ignore', 'pipe', 'pipe'] });
  let said = '';
  ffmpeg.stderr.on('data', chunk => {
    said += String(chunk);
  });
  const ended = new Promise<number | null>(resolve => ffmpeg.on('close', resolve));
  const picture = new Uint8Array(width * height * (inColour ? 4 : 1));
  let filled = 0;
  let count = 0;
  for await (const chunk of ffmpeg.stdout as AsyncIterable<Buffer>) {
    for (let at = 0; at < chunk.length; ) {
      const part = chunk.subarray(at, at + picture.length - filled);
      picture.set(part, filled);
      filled += part.length;
      at += part.length;
      if (filled < picture.length) continue;
      if (count % step === 0 && (only?.includes(count) ?? true)) onFrame(count, picture, width, height);
      count++;
      filled = 0;
    }
  }
  if ((await ended) !== 0) throw new Error(`ffmpeg could not read ${film}: ${said.trim()}`);
  return count;
};
