import { createServer, type IncomingMessage, type ServerResponse } from 'node:http';
import { type AddressInfo, isIP } from 'node:net';
import { sendAppFile } from './http/app-files.ts';
import { setSecurityHeaders } from './http/guard.ts';
import type { HandoutDoor } from './http/handout-address.ts';
import { listen, sayRefusal } from './http/listening.ts';
import { Refusal } from './refusal.ts';

export interface HandoutServer {
  readonly port: number;
  /** What a link begins with. */
  readonly base: string;
  close(): Promise<void>;
}

/**
 * The links for players, open to the network on a port of their own. The staff's documents, the line and the films are
 * not behind a lock here: they are not here at all.
 */
export async function startHandoutServer(
  door: HandoutDoor,
  appFolder: string,
  at: { readonly host: string; readonly port: number },
): Promise<HandoutServer> {
  if (isIP(at.host) === 0 || at.host === '0.0.0.0' || at.host === '::') {
    throw new Refusal(
      `Players need the one address of this machine that they reach, as 192.168.1.20; ${at.host} is none.`,
    );
  }
  const server = createServer({ maxHeaderSize: 8 * 1024, requestTimeout: 20_000 }, (request, response) => {
    try {
      answer(request, response);
    } catch (error) {
      sayRefusal(error, request, response);
    }
  });
  server.maxConnections = 200;
  const answer = (request: IncomingMessage, response: ServerResponse) => {
    setSecurityHeaders(response);
    const path = new URL(request.url ?? '/', 'http://localhost').pathname;
    if (door.answer(request, response, path)) return;
    const isRead = request.method === 'GET' || request.method === 'HEAD';
    if (!isRead || !isPublic(path)) throw new Refusal('There is nothing at this address.', { status: 404 });
    sendAppFile(appFolder, request, response, path);
  };
  await listen(server, at.port, at.host);
  const { port } = server.address() as AddressInfo;
  const host = isIP(at.host) === 6 ? `[${at.host}]` : at.host;
  return {
    port,
    base: `http://${host}:${port}`,
    async close() {
      const closed = new Promise(done => server.close(done));
      server.closeAllConnections();
      await closed;
    },
  };
}

/** The program of the page: the same for everybody, and nobody's drill. */
const isPublic = (path: string): boolean => /^\/assets\/[\w.-]+$/.test(path) || path === '/icewright.svg';
