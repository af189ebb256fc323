import type { IncomingMessage } from 'node:http';
import type { Duplex } from 'node:stream';
import { Hocuspocus } from '@hocuspocus/server';
import { findKind, isDocumentId, isOlder } from '@icewright/book';
import { type WebSocket, WebSocketServer } from 'ws';
import type * as Y from 'yjs';
import { Refusal } from '../refusal.ts';
import type { DocumentStore } from '../store/document-store.ts';
import { Door, updateLimitBytes } from './door.ts';

/** A message may hold one change and its envelope. */
const messageLimitBytes = updateLimitBytes + 64 * 1024;

export type SyncLine = ReturnType<typeof syncLineOn>;

/** The line on which browsers and other servers exchange documents; a document's name on it is its id. */
export function syncLineOn(store: DocumentStore) {
  const doors = new WeakMap<Y.Doc, Door>();
  /** Documents with a change that the disc refused; it is not acknowledged, and saved as soon as the disc takes it. */
  const unsaved = new Set<string>();
  let isClosed = false;
  const hocuspocus = new Hocuspocus({
    quiet: true,
    debounce: 2_000,
    maxDebounce: 10_000,
    async onConnect({ documentName }) {
      if (!isDocumentId(documentName))
        throw new Refusal('A document needs an id of letters, digits, - and _.');
      if (store.isErased(documentName))
        throw new Refusal('This document was erased for good.', { code: 4410 });
    },
    async onLoadDocument({ documentName, document }) {
      store.load(documentName, document);
    },
    async afterLoadDocument({ documentName, document }) {
      const door = new Door(document);
      doors.set(document, door);
      // The library's own hook runs after its acknowledgement was sent; this one runs inside the change itself.
      document.on('update', (update: Uint8Array) => {
        const kind = findKind(document);
        if (kind === null) return;
        try {
          store.append(documentName, kind, update);
        } catch (error) {
          unsaved.add(documentName);
          throw error;
        }
      });
    },
    async beforeSync({ documentName, document, type, payload }) {
      // 0 asks what the other has; 1 and 2 carry changes (y-protocols, sync).
      if (type === 0) return;
      const { bringsUp } = doors.get(document)!.check(payload);
      if (bringsUp) store.keepOriginal(documentName, document);
    },
    async onStoreDocument({ documentName, document }) {
      // What was open when the line closed is written already, and the disc may be gone from here on.
      if (isClosed || store.isErased(documentName)) return;
      store.compact(documentName, document, unsaved.has(documentName));
      unsaved.delete(documentName);
    },
  });
  const sockets = new WebSocketServer({ noServer: true, maxPayload: messageLimitBytes });

  return {
    /** Takes over a request that was already checked. */
    handleUpgrade(request: IncomingMessage, socket: Duplex, head: Buffer): void {
      sockets.handleUpgrade(request, socket, head, webSocket => connect(hocuspocus, webSocket, request));
    },

    /** The document as it is open now, or as it lies on disc. Not to be changed by the caller. */
    current: (id: string): Y.Doc => hocuspocus.documents.get(id) ?? store.load(id),

    /** Changes a document as the server itself; devices that have it open see the change at once. */
    async change(id: string, change: (ydoc: Y.Doc) => void): Promise<void> {
      const connection = await hocuspocus.openDirectConnection(id);
      try {
        await connection.transact(ydoc => {
          if (isOlder(ydoc)) store.keepOriginal(id, ydoc);
          change(ydoc);
        });
      } finally {
        await connection.disconnect();
      }
    },

    /** Lets go of documents that were erased. */
    letGo(ids: readonly string[]): void {
      for (const id of ids) hocuspocus.closeConnections(id);
    },

    close(): void {
      for (const [id, document] of hocuspocus.documents) {
        if (!store.isErased(id)) store.compact(id, document, true);
      }
      isClosed = true;
      for (const client of sockets.clients) client.terminate();
      sockets.close();
    },
  };
}

function connect(hocuspocus: Hocuspocus, webSocket: WebSocket, request: IncomingMessage): void {
  const headers = new Headers();
  for (const [name, value] of Object.entries(request.headers)) {
    if (typeof value === 'string') headers.set(name, value);
  }
  const web = new Request(`http://${request.headers.host}${request.url}`, { headers });
  const client = hocuspocus.handleConnection(webSocket as never, web);
  webSocket.binaryType = 'nodebuffer';
  webSocket.on('message', (data: Buffer) => client.handleMessage(new Uint8Array(data)));
  webSocket.on('close', (code, reason) => client.handleClose({ code, reason: reason.toString() }));
  webSocket.on('error', () => webSocket.terminate());
}
