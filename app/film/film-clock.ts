/**
 * 4:05.30 or 1:02:03.40, rounded to so many decimals: an event at 5 s never stands at 4.99. Whole seconds are those that have
 * passed, as on any clock that runs.
 */
export const clockText = (timeS: number, decimals = 2): string => {
  const factor = 10 ** decimals;
  const slack = decimals === 0 ? 1e-6 : 0.5 + 1e-6;
  const whole = Math.floor(Math.max(0, timeS) * factor + slack);
  const fraction = whole % factor;
  const seconds = Math.floor(whole / factor);
  const hours = Math.floor(seconds / 3600);
  const minutes = Math.floor(seconds / 60) % 60;
  const two = (n: number) => String(n).padStart(2, '0');
  const head = hours > 0 ? `${hours}:${two(minutes)}` : `${minutes}`;
  const tail = decimals > 0 ? `.${String(fraction).padStart(decimals, '0')}` : '';
  return `${head}:${two(seconds % 60)}${tail}`;
};

/**
 * What a person typed into the jump field: a clock (12:34.5, 1:02:03), or a frame number (a whole number, or "frame 250").
 * Undefined when it is neither.
 */
export const jumpTarget = (typed: string): JumpTarget | undefined => {
  const text = typed.trim().toLowerCase();
  const frame = /^(?:frame|f)?\s*(\d{1,9})$/.exec(text);
  if (frame) return { frameIndex: Number(frame[1]) };
  const clock = /^(?:(\d{1,2}):)?(\d{1,4}):(\d{1,2}(?:[.,]\d+)?)$/.exec(text);
  const plain = /^(\d+(?:[.,]\d+))(?:\s*s)?$|^(\d+)\s*s$/.exec(text);
  if (clock) {
    const seconds = Number((clock[3] ?? '0').replace(',', '.'));
    return { timeS: Number(clock[1] ?? 0) * 3600 + Number(clock[2]) * 60 + seconds };
  }
  if (plain) return { timeS: Number((plain[1] ?? plain[2] ?? '0').replace(',', '.')) };
  return undefined;
};

/** Whether a film ends before what was asked for, so that its last frame is shown instead. */
export const isPastEnd = (
  target: JumpTarget,
  film: { readonly endS: number; readonly frameCount: number },
): boolean => ('timeS' in target ? target.timeS > film.endS : target.frameIndex >= film.frameCount);

export type JumpTarget = { readonly frameIndex: number } | { readonly timeS: number };
