import { defineConfig } from 'vitest/config';
import { BaseSequencer, type TestSpecification } from 'vitest/node';

/** The longest, by what they did when last looked at: begun first, so that no browser is left alone with one of them at the end. */
const LONGEST = [
  'film-truth',
  'test/kept',
  'out/out',
  'film/freeze',
  'meeting/meeting',
  'film/film',
  'film/kinds',
  'thread-by-key',
  'many/many',
  'film/carry',
  'track/track',
  'edit/own-ground',
  'places-desk',
];

class LongestFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const rankOf = ({ moduleId }: TestSpecification): number => {
      const rank = LONGEST.findIndex(name => moduleId.includes(`${name}.e2e`));
      return rank < 0 ? LONGEST.length : rank;
    };
    return [...(await super.sort(files))].sort((a, b) => rankOf(a) - rankOf(b));
  }
}

export default defineConfig({
  test: {
    include: ['**/*.e2e.ts'],
    exclude: ['**/node_modules/**', '**/dist/**'],
    testTimeout: 120_000,
    hookTimeout: 120_000,
    // Two browsers for two cores: one after the other took longer than a check of everything may, and a third makes waits end too early.
    maxWorkers: 2,
    // Each file has a browser and a server of its own; loading the server's code anew for each is what is left out.
    isolate: false,
    sequence: { sequencer: LongestFirst },
    // Until it holds: a busy machine may be late, and a wait that ends early proves nothing.
    expect: { poll: { timeout: 15_000 } },
    retry: 0,
  },
});
