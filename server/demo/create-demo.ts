import { constants, copyFileSync, existsSync } from 'node:fs';
import { join } from 'node:path';
import { type FilmFolder, hashOfFile } from '../films/film-folder.ts';
import { Refusal } from '../refusal.ts';
import type { DocumentStore } from '../store/document-store.ts';
import { demoDocuments, demoFilms } from './demo-documents.ts';
import type { DemoFilm } from './games.ts';

/** True when the films that the demo team is shown with are there. */
export const canCreateDemo = (filmFixtures: string): boolean =>
  Object.values(demoFilms).every(({ from }) => existsSync(join(filmFixtures, from)));

/** Puts the demo team and its films into the data folder; gives the team's id. */
export async function createDemo(
  store: DocumentStore,
  films: FilmFolder,
  filmFixtures: string,
  now: Date,
): Promise<string> {
  if (!canCreateDemo(filmFixtures))
    throw new Refusal('The films of the demo team are not there.', { status: 404 });
  const at = now.toISOString();
  const [hunt, join] = [
    await demoFilm('hunt', films, filmFixtures),
    await demoFilm('join', films, filmFixtures),
  ];
  const documents = demoDocuments(
    { hunt, join },
    { today: at.slice(0, 10), at },
    id => store.isErased(id) || store.has(id),
  );
  store.appendAll(documents);
  return documents[0]!.id;
}

async function demoFilm(
  which: keyof typeof demoFilms,
  films: FilmFolder,
  fixtures: string,
): Promise<DemoFilm> {
  const { from, fileName } = demoFilms[which];
  const path = join(films.folder, fileName);
  if (!existsSync(path)) copyFileSync(join(fixtures, from), path, constants.COPYFILE_FICLONE);
  const hash = await hashOfFile(path);
  const film = await films.find(hash);
  if (film === null) throw new Error(`the demo film ${fileName} is not found after it was put there`);
  return { hash, byteCount: film.byteCount };
}
