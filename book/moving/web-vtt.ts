/** A stretch of film with words, as WebVTT has it. Seconds of the film. */
export interface VttCue {
  /** The line before its times, which no player shows. */
  readonly name?: string;
  readonly fromS: number;
  readonly toS: number;
  /** May be of several lines. */
  readonly words: string;
}

/** WebVTT text (W3C, WebVTT: The Web Video Text Tracks Format) of stretches in order of time; any player shows it. */
export const vttOf = (cues: readonly VttCue[]): string =>
  `WEBVTT\n${cues.map(({ name, fromS, toS, words }) => `\n${nameLine(name)}${stamp(fromS)} --> ${stamp(Math.max(toS, fromS + 0.001))}\n${escaped(words)}\n`).join('')}`;

/**
 * The cues of a WebVTT text, in its order. Settings, regions, styles and notes are read over; tags in the words are taken
 * out. A file that is none, or a cue whose times are none, is refused in a sentence that names the line.
 */
export function cuesOfVtt(text: string): readonly VttCue[] | { readonly sentence: string } {
  const lines = text.replace(/^\uFEFF/, '').split(/\r\n|\n|\r/);
  if (!/^WEBVTT([ \t].*)?$/.test(lines[0] ?? ''))
    return { sentence: 'This is not a WebVTT file: its first line is not WEBVTT.' };
  const cues: VttCue[] = [];
  for (let at = 1; at < lines.length; at += 1) {
    if (!lines[at]!.includes('-->')) continue;
    const name = at === 1 ? '' : lines[at - 1]!.trim();
    const times = TIMES.exec(lines[at]!);
    const fromS = times && secondsOf(times[1]!);
    const toS = times && secondsOf(times[2]!);
    if (fromS === null || toS === null || toS <= fromS)
      return { sentence: `Line ${at + 1}: these are not the times of a cue: "${lines[at]!.slice(0, 40)}".` };
    const words: string[] = [];
    while (at + 1 < lines.length && lines[at + 1]!.trim() !== '') {
      at += 1;
      words.push(lines[at]!);
    }
    cues.push({ ...(name === '' ? {} : { name }), fromS, toS, words: plainWords(words.join('\n')) });
  }
  return cues;
}

const TIMES = /^\s*([\d:.]+)[ \t]+-->[ \t]+([\d:.]+)(?:[ \t].*)?$/;

function secondsOf(stamped: string): number | null {
  const parts = /^(?:(\d{2,}):)?([0-5]\d):([0-5]\d\.\d{3})$/.exec(stamped);
  return parts && Number(parts[1] ?? 0) * 3600 + Number(parts[2]) * 60 + Number(parts[3]);
}

/** To the thousandth, as the format wants it. */
const stamp = (timeS: number): string => {
  const ms = Math.round(timeS * 1000);
  const pad = (value: number, length = 2) => String(value).padStart(length, '0');
  return `${pad(Math.floor(ms / 3_600_000))}:${pad(Math.floor(ms / 60_000) % 60)}:${pad(Math.floor(ms / 1000) % 60)}.${pad(ms % 1000, 3)}`;
};

const nameLine = (name = ''): string => (name === '' || /-->|[\r\n]/.test(name) ? '' : `${name}\n`);

/** A line that is empty would end the cue. */
const escaped = (words: string): string =>
  words
    .split('\n')
    .map(line => line.replace(/\s+/g, ' ').trim())
    .filter(Boolean)
    .map(escapedLine)
    .join('\n');

const escapedLine = (words: string): string =>
  words.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');

const plainWords = (words: string): string =>
  words
    .replace(/<[^>]*>/g, '')
    .replaceAll('&lt;', '<')
    .replaceAll('&gt;', '>')
    .replaceAll('&nbsp;', ' ')
    .replaceAll('&amp;', '&')
    .split('\n')
    .map(line => line.trim())
    .filter(Boolean)
    .join('\n');
