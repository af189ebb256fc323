import type { IncomingMessage, ServerResponse } from 'node:http';
import { isFilmHash } from '@icewright/book';
import type { FilmFolder } from '../films/film-folder.ts';
import { receiveFilm } from '../films/receive-film.ts';
import { sendFilm } from '../films/send-film.ts';
import { Refusal } from '../refusal.ts';

/** `GET`, `HEAD` and `PUT /film/<hash>[?name=file.mp4]`. */
export async function answerFilm(
  films: FilmFolder,
  request: IncomingMessage,
  response: ServerResponse,
  url: URL,
): Promise<void> {
  const hash = decodedOf(url.pathname.slice('/film/'.length));
  if (!isFilmHash(hash)) throw new Refusal('A film’s address ends in sampled-sha256: and 64 hex digits.');
  if (request.method === 'PUT') {
    const { fileName, byteCount } = await receiveFilm(
      films,
      hash,
      url.searchParams.get('name') ?? '',
      request,
    );
    response.writeHead(201, { 'Content-Type': 'application/json' });
    response.end(JSON.stringify({ hash, fileName, byteCount }));
    return;
  }
  if (request.method !== 'GET' && request.method !== 'HEAD') {
    response.setHeader('Allow', 'GET, HEAD, PUT');
    throw new Refusal('A film can be read or sent, nothing else.', { status: 405 });
  }
  const film = await films.find(hash);
  if (film === null) throw new Refusal('This film is not on this machine.', { status: 404 });
  sendFilm(film, hash, request, response);
}

function decodedOf(text: string): string {
  try {
    return decodeURIComponent(text);
  } catch {
    return '';
  }
}
