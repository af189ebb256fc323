import type { IncomingMessage, ServerResponse } from 'node:http';
import { isIP } from 'node:net';

/**
 * What may be loaded and run: our own files only, and one style that the accessible components put into the page
 * (its hash). Film comes as `blob:` from the user's own disc.
 */
export const componentStyleHash = "'sha256-38RhXrc7EdReTKsOm23ZPOCUgniTUUcjky8QOOrQx6o='";

const policy = [
  "default-src 'self'",
  "script-src 'self' 'wasm-unsafe-eval'",
  `style-src 'self' ${componentStyleHash}`,
  "img-src 'self' blob: data:",
  "media-src 'self' blob:",
  "object-src 'none'",
  "base-uri 'none'",
  "form-action 'self'",
  "frame-ancestors 'none'",
].join('; ');

export function setSecurityHeaders(response: ServerResponse): void {
  response.setHeader('Content-Security-Policy', policy);
  response.setHeader('X-Content-Type-Options', 'nosniff');
  response.setHeader('Referrer-Policy', 'no-referrer');
  response.setHeader('Cross-Origin-Opener-Policy', 'same-origin');
  response.setHeader('Cross-Origin-Resource-Policy', 'same-origin');
  response.setHeader('Permissions-Policy', 'camera=(), microphone=(), geolocation=()');
}

export const isLoopback = (host: string): boolean =>
  host === 'localhost' || host === '::1' || (isIP(host) === 4 && host.startsWith('127.'));

/**
 * Why a request must not be served, or null. The name it was sent to must be this machine's own (else a page from
 * elsewhere could point its own name here), and a write or a socket must come from our own page or from no page.
 */
export function findIntrusion(request: IncomingMessage, needsOwnPage: boolean): string | null {
  const host = request.headers.host ?? '';
  if (!isLoopback(nameOf(host))) return 'This server answers to this machine only.';
  if (!needsOwnPage) return null;
  const { origin } = request.headers;
  if (origin !== undefined && origin !== `http://${host}`)
    return 'Changes come from Icewright’s own page only.';
  const site = request.headers['sec-fetch-site'];
  if (site !== undefined && site !== 'same-origin' && site !== 'none') {
    return 'Changes come from Icewright’s own page only.';
  }
  return null;
}

export const isWrite = (method: string | undefined): boolean =>
  !['GET', 'HEAD', 'OPTIONS'].includes(method ?? '');

const nameOf = (host: string): string =>
  host
    .replace(/:\d+$/, '')
    .replace(/^\[(.*)\]$/, '$1')
    .toLowerCase();
