import { findFilmKinds } from '../../drills/out/film-file.ts';
import { middleOfFrame } from '../../film/frame-index.ts';
import type { OpenFilm } from '../../film/open-film.ts';
import { itemFramesOf } from '../item-frames.ts';
import type { HisItem } from './his-items.ts';

/** No wider than a phone shows: the page carries its film with it. */
const WIDTH_PX = 960;

/**
 * The stretch of one item as a film of its own, from its first to its last picture, without sound: what was shouted on the
 * bench is nobody's handout. Undefined when it was stopped; throws when the browser cannot.
 */
export async function cutStretch(
  film: OpenFilm,
  item: HisItem,
  of: { readonly signal: AbortSignal; readonly onShare: (doneRatio: number) => void },
): Promise<Blob | undefined> {
  // MP4 where it can be: every phone plays it.
  const kinds = await findFilmKinds();
  const kind = kinds.includes('mp4') ? 'mp4' : kinds[0];
  if (kind === undefined) throw new Error('this browser writes no film');
  const bunny = await import('mediabunny');
  const { source } = film;
  const input = new bunny.Input({
    formats: bunny.ALL_FORMATS,
    source: 'file' in source ? new bunny.BlobSource(source.file) : new bunny.UrlSource(source.url),
  });
  const target = new bunny.BufferTarget();
  const output = new bunny.Output({
    format:
      kind === 'mp4' ? new bunny.Mp4OutputFormat({ fastStart: 'in-memory' }) : new bunny.WebMOutputFormat(),
    target,
  });
  try {
    const { first, last } = itemFramesOf(item, film.index);
    const conversion = await bunny.Conversion.init({
      input,
      output,
      tracks: 'primary',
      // In the middle of either picture: its very edge may be counted to its neighbour.
      trim: { start: middleOfFrame(film.index, first), end: middleOfFrame(film.index, last) },
      copy: false,
      video: {
        ...(film.widthPx > WIDTH_PX ? { width: WIDTH_PX } : {}),
        quality: bunny.QUALITY_MEDIUM,
        allowTransformationMetadata: false,
      },
      audio: { discard: true },
    });
    if (!conversion.isValid) throw new Error('this browser cannot cut this film');
    conversion.onProgress = share => of.onShare(share);
    const stop = () => void conversion.cancel();
    of.signal.addEventListener('abort', stop);
    await conversion.execute().finally(() => of.signal.removeEventListener('abort', stop));
    if (of.signal.aborted || target.buffer === null) return undefined;
    return new Blob([target.buffer], { type: kind === 'mp4' ? 'video/mp4' : 'video/webm' });
  } catch (error) {
    if (of.signal.aborted) return undefined;
    throw error;
  } finally {
    input.dispose();
  }
}
