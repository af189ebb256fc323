import { createReadStream } from 'node:fs';
import type { IncomingMessage, ServerResponse } from 'node:http';
import { extname } from 'node:path';
import { byteRangeOf } from '../http/byte-range.ts';

const types: Readonly<Record<string, string>> = {
  '.mkv': 'video/x-matroska',
  '.mov': 'video/quicktime',
  '.ts': 'video/mp2t',
  '.webm': 'video/webm',
};

/** Sends a film or the asked part of it, straight from disc, never more of it in memory than a few chunks. */
export function sendFilm(
  film: { readonly path: string; readonly byteCount: number },
  hash: string,
  request: IncomingMessage,
  response: ServerResponse,
): void {
  const tag = `"${hash}"`;
  const ifRange = request.headers['if-range'];
  const isStale = ifRange !== undefined && ifRange !== tag;
  const range = byteRangeOf(isStale ? undefined : request.headers.range, film.byteCount);
  response.setHeader('Accept-Ranges', 'bytes');
  response.setHeader('ETag', tag);
  // A film is not copied into the browser's cache: it lies on disc already, and it may show minors.
  response.setHeader('Cache-Control', 'no-store');
  response.setHeader('Content-Type', types[extname(film.path).toLowerCase()] ?? 'video/mp4');
  if (range.kind === 'outside') {
    response.removeHeader('Content-Type');
    response.writeHead(416, { 'Content-Range': `bytes */${film.byteCount}`, 'Content-Length': 0 }).end();
    return;
  }
  const first = range.kind === 'part' ? range.first : 0;
  const last = range.kind === 'part' ? range.last : film.byteCount - 1;
  response.setHeader('Content-Length', last - first + 1);
  if (range.kind === 'part') {
    response.writeHead(206, { 'Content-Range': `bytes ${first}-${last}/${film.byteCount}` });
  } else {
    response.writeHead(200);
  }
  if (request.method === 'HEAD' || film.byteCount === 0) {
    response.end();
    return;
  }
  const stream = createReadStream(film.path, { start: first, end: last, highWaterMark: 2 ** 20 });
  stream.on('error', () => response.destroy());
  response.on('close', () => stream.destroy());
  stream.pipe(response);
}
