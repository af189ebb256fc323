import { exportDrills, readDocument } from '@icewright/book';
import { Hono } from 'hono';
import { Refusal } from '../refusal.ts';
import type { DocumentStore } from '../store/document-store.ts';
import { type Handout, type HandoutStore, mostOpenHandouts } from '../store/handout-store.ts';
import type { SyncLine } from '../sync/sync-line.ts';
import { jsonOf } from './json-body.ts';

export const mostHandoutDays = 90;

/** For the staff: the links of a drill, a new one, an end to one. */
export function handoutsApiOf({
  store,
  line,
  handouts,
  handoutBase,
}: {
  readonly store: DocumentStore;
  readonly line: SyncLine;
  readonly handouts: HandoutStore;
  readonly handoutBase: () => string | null;
}): Hono {
  const api = new Hono();
  const said = (handout: Handout) => ({ ...handout, isOpen: handouts.isOpen(handout) });
  api.get('/:id/handouts', context =>
    context.json({ base: handoutBase(), links: handouts.of(context.req.param('id')).map(said) }),
  );
  api.post('/:id/handouts', async context => {
    const id = context.req.param('id');
    const { days, teamName } = await jsonOf(context.req.raw);
    if (typeof days !== 'number' || !Number.isInteger(days) || days < 1 || days > mostHandoutDays)
      throw new Refusal(`days: a link lives 1 to ${mostHandoutDays} days.`);
    if (typeof teamName !== 'string' || teamName.length > 200)
      throw new Refusal('teamName: a name of at most 200 characters, or none.');
    if (!store.has(id) || findDrill(line, id) === null)
      throw new Refusal('There is no such drill on this server.', { status: 404 });
    if (handouts.of(id).filter(handouts.isOpen).length >= mostOpenHandouts)
      throw new Refusal(`This drill has ${mostOpenHandouts} open links; end one first.`, { status: 409 });
    return context.json(said(handouts.make(id, teamName, days)), 201);
  });
  api.delete('/:id/handouts/:token', context => {
    const { id, token } = context.req.param();
    if (!handouts.revoke(id, token)) throw new Refusal('There is no such open link.', { status: 404 });
    return context.body(null, 204);
  });
  return api;
}

/** What a player gets: the drill as it stands now, in the form of a drill file, so that nothing of the team is in it. */
export function handedOut(
  line: SyncLine,
  { document, teamName, endsAt }: Handout,
): { readonly teamName: string; readonly endsAt: number; readonly file: unknown } | null {
  const drill = findDrill(line, document);
  if (drill === null) return null;
  return { teamName, endsAt, file: JSON.parse(exportDrills([{ id: document, drill }], {})) };
}

function findDrill(line: SyncLine, id: string) {
  const read = readDocument(line.current(id));
  return read.kind === 'ok' && read.value.kind === 'drill' ? read.value : null;
}
