import { spawnSync } from 'node:child_process';

/** Reels are read with programs that know nothing of this one. Only tests import this. */

export const hasReelTools = ['ffprobe', 'ffmpeg'].every(tool => spawnSync(tool, ['-version']).status === 0);

interface Stream {
  readonly codec_type: string;
  readonly codec_name: string;
  readonly width?: number;
  readonly height?: number;
  readonly duration: string;
}

/** What ffprobe says of its pictures and its sound. */
export const probe = (path: string) => {
  const { stdout } = spawnSync('ffprobe', ['-v', 'error', '-show_streams', '-of', 'json', path]);
  const { streams } = JSON.parse(stdout.toString()) as { streams: Stream[] };
  return {
    video: streams.find(one => one.codec_type === 'video'),
    audio: streams.find(one => one.codec_type === 'audio'),
  };
};

/** The counter burned into each picture (16 blocks of 8 × 8 px, least bit first, white = 1), and its time in the reel. */
export const burnedIn = (path: string): { readonly frame: number; readonly atS: number }[] => {
  const times = spawnSync('ffprobe', [
    ...['-v', 'error', '-select_streams', 'v', '-show_entries', 'frame=pts_time', '-of', 'csv=p=0', path],
  ]);
  const raw = spawnSync(
    'ffmpeg',
    [
      ...['-v', 'error', '-i', path, '-vf', 'crop=128:16:0:0', '-fps_mode', 'passthrough'],
      ...['-f', 'rawvideo', '-pix_fmt', 'gray', '-'],
    ],
    { maxBuffer: 64 * 1024 * 1024 },
  ).stdout;
  return times.stdout
    .toString()
    .trim()
    .split(/\s+/)
    .map((time, i) => {
      let frame = 0;
      for (let bit = 0; bit < 16; bit++)
        if (raw[i * 128 * 16 + 4 * 128 + 8 * bit + 4]! > 128) frame += 2 ** bit;
      return { frame, atS: Number.parseFloat(time) };
    });
};

/** One picture in grey, line by line, at this size. */
export const greyAt = (path: string, picture: number, size: { width: number; height: number }): Buffer =>
  spawnSync('ffmpeg', [
    ...['-v', 'error', '-i', path, '-vf', `select=eq(n\\,${picture}),scale=${size.width}:${size.height}`],
    ...['-frames:v', '1', '-f', 'rawvideo', '-pix_fmt', 'gray', '-'],
  ]).stdout;

/** The loudest of these seconds, dB below full; −91 and less is silence. */
export const loudestDb = (path: string, fromS: number, lengthS: number): number => {
  const { stderr } = spawnSync('ffmpeg', [
    ...['-hide_banner', '-ss', `${fromS}`, '-t', `${lengthS}`, '-i', path],
    ...['-vn', '-af', 'volumedetect', '-f', 'null', '-'],
  ]);
  const said = /max_volume: (-?[\d.]+|-inf) dB/.exec(stderr.toString())?.[1];
  return said === undefined ? Number.NaN : said === '-inf' ? Number.NEGATIVE_INFINITY : Number(said);
};
