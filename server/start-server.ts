import { createServer, type IncomingMessage, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { getRequestListener } from '@hono/node-server';
import { canCreateDemo, createDemo } from './demo/create-demo.ts';
import { filmConverterFor } from './films/convert-film.ts';
import { filmFolderAt } from './films/film-folder.ts';
import { type HandoutServer, startHandoutServer } from './handout-server.ts';
import { apiOf } from './http/api.ts';
import { sendAppFile } from './http/app-files.ts';
import { answerFilm } from './http/film-address.ts';
import { findIntrusion, isLoopback, isWrite, setSecurityHeaders } from './http/guard.ts';
import { handoutDoorOf } from './http/handout-address.ts';
import { listen, sayRefusal } from './http/listening.ts';
import manifest from './package.json' with { type: 'json' };
import { Refusal } from './refusal.ts';
import { documentStoreOn } from './store/document-store.ts';
import { handoutPageStoreOn } from './store/handout-page-store.ts';
import { handoutStoreOn } from './store/handout-store.ts';
import { openDatabase } from './store/open-database.ts';
import { syncLineOn } from './sync/sync-line.ts';

export interface ServerOptions {
  readonly dataFolder: string;
  /** 0 takes any free port. */
  readonly port: number;
  /** A loopback address; anything else is refused until there are accounts. */
  readonly host?: string;
  readonly appFolder?: string;
  /**
   * Where players reach the links that were made for them: an address of this machine in its network, and a port of
   * its own. Nothing but those links is answered there. Without it they work on this machine only.
   */
  readonly handouts?: { readonly host: string; readonly port: number };
  /** Where the demo's films come from; null starts an empty data folder without the demo. */
  readonly filmFixtures?: string | null;
}

export interface RunningServer {
  readonly port: number;
  /** Of the links for players, when they are open to the network. */
  readonly handoutPort: number | null;
  close(): Promise<void>;
}

const fromRoot = (path: string): string => fileURLToPath(new URL(`../${path}`, import.meta.url));

/** Starts the server on a data folder. Throws a `Refusal`, one clear sentence, when it cannot. */
export async function startServer(options: ServerOptions): Promise<RunningServer> {
  const { dataFolder, port, host = '127.0.0.1' } = options;
  const appFolder = options.appFolder ?? fromRoot('app/dist');
  const filmFixtures = options.filmFixtures === undefined ? fromRoot('fixtures/film') : options.filmFixtures;
  if (!isLoopback(host)) {
    throw new Refusal(
      `Icewright listens on this machine only; ${host} is open to others, and there are no accounts yet.`,
    );
  }
  const db = openDatabase(dataFolder);
  const store = documentStoreOn(db);
  const films = filmFolderAt(join(dataFolder, 'films'), db);
  const converter = filmConverterFor(films);
  const line = syncLineOn(store);
  const handouts = handoutStoreOn(db);
  const pages = handoutPageStoreOn(db);
  const handoutDoor = handoutDoorOf({ appFolder, line, handouts, pages });
  let handoutBase: string | null = null;
  let handoutServer: HandoutServer | null = null;
  const api = apiOf({
    store,
    films,
    converter,
    line,
    handouts,
    pages,
    handoutBase: () => handoutBase,
    dataFolder,
    version: manifest.version,
    filmFixtures: filmFixtures ?? fromRoot('fixtures/film'),
  });
  const answerApi = getRequestListener(request => api.fetch(request), { overrideGlobalObjects: false });

  const answer = async (request: IncomingMessage, response: ServerResponse): Promise<void> => {
    setSecurityHeaders(response);
    const intrusion = findIntrusion(request, isWrite(request.method));
    if (intrusion !== null) throw new Refusal(intrusion, { status: 403 });
    const url = new URL(request.url ?? '/', 'http://localhost');
    if (handoutDoor.answer(request, response, url.pathname)) return;
    if (url.pathname === '/api' || url.pathname.startsWith('/api/')) await answerApi(request, response);
    else if (url.pathname.startsWith('/film/') && !isPageAsked(request))
      await answerFilm(films, request, response, url);
    else if (isWrite(request.method))
      throw new Refusal('Nothing can be changed at this address.', { status: 405 });
    else sendAppFile(appFolder, request, response, url.pathname);
  };
  const server = createServer({ maxHeaderSize: 16 * 1024, requestTimeout: 0 }, (request, response) => {
    answer(request, response).catch(error => sayRefusal(error, request, response));
  });
  server.on('upgrade', (request, socket, head) => {
    const intrusion = findIntrusion(request, true);
    if (intrusion !== null) socket.end('HTTP/1.1 403 Forbidden\r\nConnection: close\r\n\r\n');
    else if (request.url?.split('?')[0] !== '/sync')
      socket.end('HTTP/1.1 404 Not Found\r\nConnection: close\r\n\r\n');
    else line.handleUpgrade(request, socket, head);
  });

  try {
    if (store.list().length === 0 && filmFixtures !== null && canCreateDemo(filmFixtures))
      await createDemo(store, films, filmFixtures, new Date());
    await listen(server, port, host);
    if (options.handouts !== undefined) {
      handoutServer = await startHandoutServer(handoutDoor, appFolder, options.handouts);
      handoutBase = handoutServer.base;
    }
  } catch (error) {
    server.close();
    db.close();
    throw error;
  }
  return {
    port: (server.address() as AddressInfo).port,
    handoutPort: handoutServer?.port ?? null,
    async close() {
      line.close();
      converter.close();
      await handoutServer?.close();
      const closed = new Promise(done => server.close(done));
      server.closeAllConnections();
      await closed;
      db.close();
    },
  };
}

/** `/film/<game>` is a page of the app, `/film/<hash>` a film's bytes; a browser that opens a page says that it wants HTML. */
const isPageAsked = (request: IncomingMessage): boolean =>
  request.method === 'GET' && request.headers.accept?.includes('text/html') === true;
