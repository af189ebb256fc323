import { isFilmHash } from '@icewright/book';
import { Hono } from 'hono';
import type { FilmConverter } from '../films/convert-film.ts';
import { Refusal } from '../refusal.ts';

/** Whether films can be converted here, and the conversion of one: how far it is, its start, its end. */
export function conversionsApiOf(converter: FilmConverter): Hono {
  const api = new Hono();
  const hashIn = (text: string): string => {
    if (!isFilmHash(text)) throw new Refusal('A film is named by sampled-sha256: and 64 hex digits.');
    return text;
  };
  api.get('/', async context => context.json({ canConvert: await converter.isThere() }));
  api.get('/:hash', context => context.json(converter.stateOf(hashIn(context.req.param('hash')))));
  api.post('/:hash', async context =>
    context.json(await converter.start(hashIn(context.req.param('hash'))), 202),
  );
  api.delete('/:hash', context => {
    converter.stop(hashIn(context.req.param('hash')));
    return context.body(null, 204);
  });
  return api;
}
