import type { IncomingMessage, ServerResponse } from 'node:http';
import { Refusal } from '../refusal.ts';
import type { HandoutPageStore } from '../store/handout-page-store.ts';
import type { HandoutStore } from '../store/handout-store.ts';
import type { SyncLine } from '../sync/sync-line.ts';
import { sendAppFile } from './app-files.ts';
import { handedOut } from './handouts-api.ts';
import { rateLimitOf } from './rate-limit.ts';

export interface HandoutDoor {
  /** True when the address is one of a handout, and it was answered. */
  answer(request: IncomingMessage, response: ServerResponse, path: string): boolean;
}

/** A page asks once and again when it is opened anew; guessing one of 2^128 at this rate finds nothing in any lifetime. */
const ASKED = { most: 60, perMs: 60_000 };
const MISSED = { most: 10, perMs: 60_000 };

/**
 * `/handout/<token>`, the page of a player, whole where one was made for him, and `/handout/<token>/drill.json`, what it shows. Read only, one drill, no
 * word of what else lies here. A link that is not open says the same whatever the reason.
 */
export function handoutDoorOf(of: {
  readonly appFolder: string;
  readonly line: SyncLine;
  readonly handouts: HandoutStore;
  readonly pages: HandoutPageStore;
  readonly clock?: () => number;
}): HandoutDoor {
  const asked = rateLimitOf(ASKED, of.clock);
  const missed = rateLimitOf(MISSED, of.clock);
  return {
    answer(request, response, path) {
      const [, place, token = '', rest, ...more] = path.split('/');
      if (place !== 'handout') return false;
      if (request.method !== 'GET' && request.method !== 'HEAD') {
        response.setHeader('Allow', 'GET, HEAD');
        throw new Refusal('A handout can be looked at, nothing else.', { status: 405 });
      }
      response.setHeader('X-Robots-Tag', 'noindex, nofollow');
      response.setHeader('Cache-Control', 'no-store');
      if (rest === undefined) {
        const page = findPage(request, token);
        if (page !== null) {
          sendPage(request, response, page);
          return true;
        }
        sendAppFile(of.appFolder, request, response, '/handout.html');
        return true;
      }
      const value = rest === 'drill.json' && more.length === 0 ? open(request, token) : null;
      if (value === null) throw new Refusal(SHUT, { status: 404 });
      const body = JSON.stringify(value);
      response.writeHead(200, {
        'Content-Type': 'application/json; charset=utf-8',
        'Content-Length': Buffer.byteLength(body),
      });
      response.end(request.method === 'HEAD' ? undefined : body);
      return true;
    },
  };

  /** A page that was made for one player. Asked too often, nothing is looked for: the answer is that of an unknown link. */
  function findPage(request: IncomingMessage, token: string): Uint8Array | null {
    return asked.allows(request.socket.remoteAddress ?? '') ? of.pages.findOpen(token) : null;
  }

  function open(request: IncomingMessage, token: string) {
    const caller = request.socket.remoteAddress ?? '';
    if (!asked.allows(caller)) throw tooOften;
    const handout = of.handouts.findOpen(token);
    const value = handout === null ? null : handedOut(of.line, handout);
    if (value === null && !missed.allows(caller)) throw tooOften;
    return value;
  }
}

function sendPage(request: IncomingMessage, response: ServerResponse, page: Uint8Array): void {
  response.writeHead(200, {
    'Content-Type': 'text/html; charset=utf-8',
    'Content-Length': page.byteLength,
    'Content-Security-Policy': PAGE_POLICY,
  });
  response.end(request.method === 'HEAD' ? undefined : page);
}

/** Words, drawings and film that are in the page itself; no script runs and nothing else is loaded. */
const PAGE_POLICY =
  "default-src 'none'; style-src 'unsafe-inline'; font-src data:; img-src data:; media-src data:; base-uri 'none'; form-action 'none'; frame-ancestors 'none'; sandbox";

const SHUT =
  'This link shows nothing: it has ended, was taken back, or was never made. Ask your coach for a new one.';
const tooOften = new Refusal('Asked too often; wait a minute.', { status: 429 });
