import { HocuspocusProviderWebsocket } from '@hocuspocus/provider';
import { create } from 'zustand';

/** The one web socket that carries every open document, and what is known about what it has delivered. */

interface Connection {
  readonly isConnected: boolean;
  /** Changes of mine that the server has not yet said it wrote down. */
  readonly unkeptCount: number;
  /** When the server last said that it has everything; null until it has. */
  readonly keptAt: number | null;
}

export const useConnection = create<Connection>(() => ({ isConnected: false, unkeptCount: 0, keptAt: null }));

const unkept = new Map<string, number>();

let socket: HocuspocusProviderWebsocket | null = null;

export function socketOf(): HocuspocusProviderWebsocket {
  socket ??= new HocuspocusProviderWebsocket({
    url: `${location.protocol === 'https:' ? 'wss' : 'ws'}://${location.host}/sync`,
    delay: 500,
    minDelay: 300,
    maxDelay: 5000,
    onStatus: ({ status }) => useConnection.setState({ isConnected: status === 'connected' }),
  });
  return socket;
}

/** Said by a document whenever the number of its changes not yet acknowledged moves. */
export function noteUnkept(documentId: string, count: number): void {
  unkept.set(documentId, count);
  const unkeptCount = [...unkept.values()].reduce((sum, one) => sum + one, 0);
  useConnection.setState(before => ({
    unkeptCount,
    keptAt: unkeptCount === 0 ? Date.now() : before.keptAt,
  }));
}
