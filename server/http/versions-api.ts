import { bringBack, readDocument } from '@icewright/book';
import { Hono } from 'hono';
import { Refusal } from '../refusal.ts';
import type { DocumentStore } from '../store/document-store.ts';
import type { SyncLine } from '../sync/sync-line.ts';

/** Earlier versions of a document: which there are, what each said, and bringing one back. */
export function versionsApiOf(store: DocumentStore, line: SyncLine): Hono {
  const api = new Hono();
  const earlier = (id: string, version: string) => {
    const ydoc = store.loadVersion(id, Number(version));
    if (ydoc === null) throw new Refusal('There is no such version.', { status: 404 });
    const read = readDocument(ydoc);
    if (read.kind === 'refused')
      throw new Refusal(`This version cannot be read: ${read.issues[0]?.message ?? read.reason}`);
    return read.value;
  };
  api.get('/:id/versions', context => context.json(store.versions(context.req.param('id'))));
  api.get('/:id/versions/:version', context =>
    context.json(earlier(context.req.param('id'), context.req.param('version'))),
  );
  api.post('/:id/versions/:version', async context => {
    const { id, version } = context.req.param();
    const value = earlier(id, version);
    await line.change(id, ydoc => {
      // What is there now becomes a version too, so that bringing back can itself be taken back.
      store.keepVersion(id, ydoc);
      const changed = bringBack(ydoc, value, 'bring back');
      if (changed.kind === 'refused')
        throw new Error(`a version that was read does not fit: ${JSON.stringify(changed.issues)}`);
    });
    return context.body(null, 204);
  });
  return api;
}
