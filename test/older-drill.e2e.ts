import { readFileSync } from 'node:fs';
import { startServer } from '@icewright/server';
import { describe, expect, it } from 'vitest';
import { documentStoreOn } from '../server/store/document-store.ts';
import { openDatabase } from '../server/store/open-database.ts';
import { appOfFile } from './app-of-file.ts';
import { allOnDisc } from './on-disc.ts';
import { withPage } from './with-page.ts';

const ID = 'drill-middle-first';
const older = new Uint8Array(readFileSync('fixtures/documents/drill-version-1.update'));

// The demo as a folder that the program of document version 1 has left: one of its drills is written by that program.
const app = appOfFile({
  prepare: async dataFolder => {
    const server = await startServer({ dataFolder, port: 0 });
    await server.close();
    const db = openDatabase(dataFolder);
    const store = documentStoreOn(db);
    for (const table of ['updates', 'bases', 'versions'])
      db.prepare(`DELETE FROM ${table} WHERE document = ?`).run(ID);
    store.append(ID, 'drill', older);
    db.close();
  },
});

const kept = () => allOnDisc(app.dataFolder)[ID] as Record<string, unknown>;

describe('a drill that an older Icewright has written', () => {
  it('is shown and computed without a change; the first change brings it up, and what it was can be seen', () =>
    withPage(app, 'older drill', async page => {
      await page.goto(`${app.url}/drills/${ID}`);
      await page.getByText(/^In this rep/).waitFor();
      const title = page.getByLabel('Title of the drill');
      expect(await title.inputValue()).toBe('Middle first');
      await page.getByLabel('key points, one a line').waitFor();
      expect(kept()).toMatchObject({ schema: 1, minutes: 11 });
      expect(kept()).not.toHaveProperty('games');

      await title.fill('Middle first, again');
      await expect.poll(() => kept().title).toBe('Middle first, again');
      expect(kept()).toMatchObject({ schema: 4, minutes: 11, games: {} });

      const at = `${app.url}/api/documents/${ID}/versions`;
      const versions = (await (await fetch(at)).json()) as { id: number; isOriginal: number }[];
      const original = versions.find(({ isOriginal }) => isOriginal === 1);
      expect(await (await fetch(`${at}/${original?.id}`)).json()).toMatchObject({ title: 'Middle first' });

      await page.getByRole('button', { name: 'Undo', exact: true }).click();
      await expect.poll(() => kept().title).toBe('Middle first');
      expect(kept()).toMatchObject({ schema: 4, games: {} });
    }));
});
