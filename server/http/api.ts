import {
  drillFileSchema,
  emptyTeam,
  newDocument,
  newId,
  type RinkChoice,
  readDocument,
  type Team,
  team as teamSchema,
} from '@icewright/book';
import { Hono } from 'hono';
import * as Y from 'yjs';
import { createDemo } from '../demo/create-demo.ts';
import { isDemoFilm } from '../demo/demo-documents.ts';
import type { FilmConverter } from '../films/convert-film.ts';
import type { FilmFolder } from '../films/film-folder.ts';
import { Refusal } from '../refusal.ts';
import type { DocumentStore } from '../store/document-store.ts';
import type { HandoutPageStore } from '../store/handout-page-store.ts';
import type { HandoutStore } from '../store/handout-store.ts';
import type { SyncLine } from '../sync/sync-line.ts';
import { conversionsApiOf } from './conversions-api.ts';
import { handoutPagesApiOf } from './handout-pages-api.ts';
import { handoutsApiOf } from './handouts-api.ts';
import { jsonOf, textOf } from './json-body.ts';
import { takeInTeam, teamFileLimitBytes, teamFileOf, toldOfTeamFile } from './team-file.ts';
import { versionsApiOf } from './versions-api.ts';

export interface Kept {
  readonly store: DocumentStore;
  readonly films: FilmFolder;
  readonly converter: FilmConverter;
  readonly line: SyncLine;
  readonly handouts: HandoutStore;
  readonly pages: HandoutPageStore;
  /** What a link for a player begins with, where they are open to the network. */
  readonly handoutBase: () => string | null;
  readonly dataFolder: string;
  readonly version: string;
  readonly filmFixtures: string;
}

/** What the app asks over HTTP; everything inside documents goes over the sync line instead. */
export function apiOf(kept: Kept): Hono {
  const { store, films, line } = kept;
  const api = new Hono().basePath('/api');
  api.onError((error, context) => {
    if (error instanceof Refusal) return context.json({ sentence: error.message }, error.status as 400);
    console.error(error);
    return context.json({ sentence: 'Something went wrong in the server; its window says what.' }, 500);
  });
  api.notFound(context => context.json({ sentence: 'There is nothing at this address.' }, 404));

  api.get('/about', context =>
    context.json({ name: 'Icewright', version: kept.version, dataFolder: kept.dataFolder }),
  );
  api.get('/teams', context =>
    context.json(teamsIn(kept).map(({ id, team }) => ({ id, name: team.name, demo: team.demo }))),
  );
  api.post('/teams', async context => {
    const start = teamStartFrom(await jsonOf(context.req.raw));
    const id = newId();
    const ydoc = newDocument('team', id, emptyTeam({ ...start, madeAt: new Date().toISOString() }));
    store.append(id, 'team', Y.encodeStateAsUpdate(ydoc));
    return context.json({ id }, 201);
  });
  api.post('/demo', async context => {
    const there = teamsIn(kept).find(({ team }) => team.demo);
    const id = there?.id ?? (await createDemo(store, films, kept.filmFixtures, new Date()));
    return context.json({ id }, there === undefined ? 201 : 200);
  });
  api.delete('/teams/:id', context => {
    const found = teamWith(kept, context.req.param('id'));
    if (!found.team.demo) throw new Refusal('Only the demo team can be put away here.', { status: 409 });
    const ids = [found.id, ...Object.keys(found.team.contents)];
    store.erase(ids);
    line.letGo(ids);
    return context.body(null, 204);
  });
  api.get('/teams/:id/file', context => {
    const { id, team } = teamWith(kept, context.req.param('id'));
    return context.body(teamFileOf(store, line, id, team), 200, {
      'Content-Type': 'application/json; charset=utf-8',
      'Content-Disposition': 'attachment; filename="team.icewright.json"',
    });
  });
  api.post('/teams/file', async context => {
    const text = await textOf(context.req.raw, teamFileLimitBytes);
    return context.json({ id: await takeInTeam(store, line, text) }, 201);
  });
  api.post('/teams/file/told', async context => {
    const text = await textOf(context.req.raw, teamFileLimitBytes);
    return context.json(toldOfTeamFile(store, line, text));
  });
  api.get('/drill-file.schema.json', context => context.json(drillFileSchema()));
  api.route('/documents', versionsApiOf(store, line));
  api.route('/drills', handoutsApiOf(kept));
  api.route('/meetings', handoutPagesApiOf(kept));
  api.route('/conversions', conversionsApiOf(kept.converter));
  api.get('/films', async context =>
    context.json(
      (await films.list()).map(film => (isDemoFilm(film.fileName) ? { ...film, demo: true } : film)),
    ),
  );
  return api;
}

function teamsIn({ store, line }: Kept): { id: string; team: Team }[] {
  return store.list().flatMap(({ id, kind }) => {
    if (kind !== 'team') return [];
    const read = readDocument(line.current(id));
    return read.kind === 'ok' && read.value.kind === 'team' ? [{ id, team: read.value }] : [];
  });
}

function teamWith(kept: Kept, id: string): { id: string; team: Team } {
  const found = teamsIn(kept).find(each => each.id === id);
  if (found === undefined) throw new Refusal('There is no such team.', { status: 404 });
  return found;
}

function teamStartFrom(body: Record<string, unknown>): {
  name: string;
  level: Team['level'];
  rink: RinkChoice;
} {
  const { shape } = teamSchema;
  const name = typeof body.name === 'string' ? body.name.trim() : '';
  if (name === '' || !shape.name.safeParse(name).success) {
    throw new Refusal('A team needs a name of 1 to 200 letters.');
  }
  const level = shape.level.safeParse(body.level);
  if (!level.success)
    throw new Refusal('The team’s level must be one of u10, u14, u18, collegeWomen, collegeMen, pro.');
  const rink = shape.rink.safeParse(body.rink);
  if (!rink.success)
    throw new Refusal(
      'The team’s sheet of ice must be one of those offered, or of an own size of 15 to 75 by 10 to 40 metres.',
    );
  return { name, level: level.data, rink: rink.data };
}
