import { HocuspocusProvider, HocuspocusProviderWebsocket } from '@hocuspocus/provider';
import { WebSocket } from 'ws';
import type * as Y from 'yjs';

export interface Client {
  readonly provider: HocuspocusProvider;
  /** Resolves when the server has said that it has everything this client wrote. */
  settled(timeoutMs?: number): Promise<void>;
  readonly closeReasons: string[];
  close(): void;
}

/** A device on the sync line, for tests. */
export function clientOf(port: number, ydoc: Y.Doc, options: { reconnects?: boolean } = {}): Client {
  const socket = new HocuspocusProviderWebsocket({
    url: `ws://127.0.0.1:${port}/sync`,
    WebSocketPolyfill: WebSocket,
    ...(options.reconnects === true ? { delay: 50, minDelay: 50, maxDelay: 200 } : { maxAttempts: 1 }),
  });
  const closeReasons: string[] = [];
  const provider = new HocuspocusProvider({
    websocketProvider: socket,
    name: ydoc.guid,
    document: ydoc,
    onClose: ({ event }) => closeReasons.push(event.reason),
    onAuthenticationFailed: ({ reason }) => closeReasons.push(reason),
  });
  provider.attach();
  return {
    provider,
    closeReasons,
    settled: timeoutMs => until(() => provider.isSynced && !provider.hasUnsyncedChanges, timeoutMs),
    close() {
      provider.destroy();
      socket.destroy();
    },
  };
}

export async function until(isDone: () => boolean, timeoutMs = 5000): Promise<void> {
  for (let waitedMs = 0; !isDone(); waitedMs += 5) {
    if (waitedMs > timeoutMs) throw new Error(`not within ${timeoutMs} ms: ${isDone}`);
    await new Promise(done => setTimeout(done, 5));
  }
}
