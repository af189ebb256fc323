import { createReadStream, statSync } from 'node:fs';
import type { IncomingMessage, ServerResponse } from 'node:http';
import { extname, join, normalize, sep } from 'node:path';

const types: Readonly<Record<string, string>> = {
  '.css': 'text/css; charset=utf-8',
  '.html': 'text/html; charset=utf-8',
  '.ico': 'image/x-icon',
  '.js': 'text/javascript; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.map': 'application/json; charset=utf-8',
  '.png': 'image/png',
  '.svg': 'image/svg+xml',
  '.ttf': 'font/ttf',
  '.txt': 'text/plain; charset=utf-8',
  '.wasm': 'application/wasm',
  '.webmanifest': 'application/manifest+json',
  '.woff': 'font/woff',
  '.woff2': 'font/woff2',
};

/** Sends a built file of the app; a path that is no file is a place in the app, and its page is sent. */
export function sendAppFile(
  folder: string,
  request: IncomingMessage,
  response: ServerResponse,
  path: string,
): void {
  const file = findFile(folder, path) ?? (extname(path) === '' ? findFile(folder, '/index.html') : null);
  if (file === null) {
    const isPage = extname(path) === '';
    response.writeHead(isPage ? 503 : 404, { 'Content-Type': 'text/plain; charset=utf-8' });
    response.end(isPage ? 'The app is not built yet: run `npm start`.' : 'There is no such file.');
    return;
  }
  const isNamedByContent = path.startsWith('/assets/');
  response.writeHead(200, {
    'Content-Type': types[extname(file.path)] ?? 'application/octet-stream',
    'Content-Length': file.byteCount,
    'Cache-Control': isNamedByContent ? 'public, max-age=31536000, immutable' : 'no-cache',
  });
  if (request.method === 'HEAD') response.end();
  else
    createReadStream(file.path)
      .on('error', () => response.destroy())
      .pipe(response);
}

function findFile(folder: string, urlPath: string): { path: string; byteCount: number } | null {
  let decoded: string;
  try {
    decoded = decodeURIComponent(urlPath);
  } catch {
    return null;
  }
  const path = normalize(join(folder, decoded));
  if (!path.startsWith(folder + sep) || decoded.includes('\0')) return null;
  const found = statSync(path, { throwIfNoEntry: false });
  return found?.isFile() === true ? { path, byteCount: found.size } : null;
}
