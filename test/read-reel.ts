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

const HEARD_HZ = 48_000;

/** Its whole sound, mixed to one, 48,000 a second. */
export const soundOf = (path: string): Float32Array => {
  const { stdout } = spawnSync(
    'ffmpeg',
    ['-v', 'error', '-i', path, '-vn', '-ac', '1', '-ar', `${HEARD_HZ}`, '-f', 'f32le', '-'],
    { maxBuffer: 64 * 1024 * 1024 },
  );
  return new Float32Array(stdout.buffer.slice(stdout.byteOffset, stdout.byteOffset + stdout.byteLength));
};

/** The stretches that are heard, seconds: from the first loud sample to the last before a tenth of a second of silence. */
export const heardIn = (sound: Float32Array): { fromS: number; toS: number }[] => {
  const heard: { fromS: number; toS: number }[] = [];
  sound.forEach((value, i) => {
    if (Math.abs(value) < 0.02) return;
    const last = heard.at(-1);
    if (last && i / HEARD_HZ - last.toS < 0.1) last.toS = i / HEARD_HZ;
    else heard.push({ fromS: i / HEARD_HZ, toS: i / HEARD_HZ });
  });
  return heard;
};

/** How much of a stretch is no pure tone of this pitch, dB: the least-squares fit of one sine, and what is left of it. */
export const besideToneDb = (sound: Float32Array, fromS: number, toS: number, hz: number): number => {
  const part = sound.subarray(Math.ceil(fromS * HEARD_HZ), Math.floor(toS * HEARD_HZ));
  const phase = (i: number) => (2 * Math.PI * hz * i) / HEARD_HZ;
  let [sine, cosine, all] = [0, 0, 0];
  part.forEach((value, i) => {
    sine += (2 * value * Math.sin(phase(i))) / part.length;
    cosine += (2 * value * Math.cos(phase(i))) / part.length;
    all += value * value;
  });
  let left = 0;
  part.forEach((value, i) => {
    left += (value - sine * Math.sin(phase(i)) - cosine * Math.cos(phase(i))) ** 2;
  });
  return 10 * Math.log10(left / all);
};
