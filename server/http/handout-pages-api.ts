import { readDocument } from '@icewright/book';
import { Hono } from 'hono';
import { Refusal } from '../refusal.ts';
import type { DocumentStore } from '../store/document-store.ts';
import { type HandoutPage, type HandoutPageStore, mostOpenPages } from '../store/handout-page-store.ts';
import type { SyncLine } from '../sync/sync-line.ts';
import { mostHandoutDays } from './handouts-api.ts';

/** A dozen moments of a few seconds each are about half of it. */
export const pageLimitBytes = 64 * 2 ** 20;

/** For the staff: the players' pages of a meeting, a new one, an end to one. */
export function handoutPagesApiOf({
  store,
  line,
  pages,
  handoutBase,
}: {
  readonly store: DocumentStore;
  readonly line: SyncLine;
  readonly pages: HandoutPageStore;
  readonly handoutBase: () => string | null;
}): Hono {
  const api = new Hono();
  const said = (page: HandoutPage) => ({ ...page, isOpen: pages.isOpen(page) });
  api.get('/:id/handouts', context =>
    context.json({ base: handoutBase(), links: pages.of(context.req.param('id')).map(said) }),
  );
  api.post('/:id/handouts', async context => {
    const id = context.req.param('id');
    const days = Number(context.req.query('days'));
    const forWhom = context.req.query('for') ?? '';
    if (!Number.isInteger(days) || days < 1 || days > mostHandoutDays)
      throw new Refusal(`days: a link lives 1 to ${mostHandoutDays} days.`);
    if (forWhom.length > 200) throw new Refusal('for: at most 200 characters.');
    if (!store.has(id) || !isMeeting(line, id))
      throw new Refusal('There is no such meeting on this server.', { status: 404 });
    if (pages.of(id).filter(pages.isOpen).length >= mostOpenPages)
      throw new Refusal(`This meeting has ${mostOpenPages} open links; end one first.`, { status: 409 });
    return context.json(said(pages.make(id, forWhom, days, await pageFrom(context.req.raw))), 201);
  });
  api.delete('/:id/handouts/:token', context => {
    const { id, token } = context.req.param();
    if (!pages.revoke(id, token)) throw new Refusal('There is no such open link.', { status: 404 });
    return context.body(null, 204);
  });
  return api;
}

async function pageFrom(request: Request): Promise<Uint8Array> {
  if (!request.headers.get('content-type')?.startsWith('text/html'))
    throw new Refusal('This address takes a page (text/html).', { status: 415 });
  if (Number(request.headers.get('content-length') ?? Number.POSITIVE_INFINITY) > pageLimitBytes)
    throw new Refusal(
      `The page is over ${pageLimitBytes / 2 ** 20} megabytes: leave a moment out, or shorten one.`,
      { status: 413 },
    );
  const bytes = new Uint8Array(await request.arrayBuffer());
  if (bytes.length === 0) throw new Refusal('The page is empty.');
  return bytes;
}

function isMeeting(line: SyncLine, id: string): boolean {
  const read = readDocument(line.current(id));
  return read.kind === 'ok' && read.value.kind === 'meeting';
}
