import { execFile } from 'node:child_process';

/** A converter that somebody installed on this machine; Icewright brings none along. */
export interface Ffmpeg {
  readonly command: string;
  /** The H.264 encoder that this build has. */
  readonly encoder: string;
  /** What keeps every picture with its own time, as this version calls it. */
  readonly eachPicture: readonly string[];
}

/** Looks on the PATH. Null when there is none, or none that makes H.264. */
export async function findFfmpeg(command = 'ffmpeg'): Promise<Ffmpeg | null> {
  const about = await said(command, ['-hide_banner', '-encoders']);
  const encoder = ENCODERS.find(name => about?.includes(` ${name} `));
  if (encoder === undefined) return null;
  const version = /^ffmpeg version n?(\d+)\.(\d+)/.exec((await said(command, ['-version'])) ?? '');
  const isOld = version !== null && Number(version[1]) * 100 + Number(version[2]) < 501;
  return { command, encoder, eachPicture: [isOld ? '-vsync' : '-fps_mode', 'passthrough'] };
}

/** The best first; the others ask the machine's own hardware or are simpler. */
const ENCODERS = ['libx264', 'h264_videotoolbox', 'h264_mf', 'libopenh264'];

const said = (command: string, args: readonly string[]): Promise<string | null> =>
  new Promise(resolve => {
    execFile(command, args, { timeout: 10_000, windowsHide: true }, (error, out) =>
      resolve(error === null ? out : null),
    );
  });
