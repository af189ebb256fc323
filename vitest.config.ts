import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['**/*.test.ts', '**/*.test.tsx'],
    exclude: ['**/node_modules/**', '**/dist/**'],
    testTimeout: 60_000,
    // One more than cores: the test that kills the server a dozen times mostly waits.
    maxWorkers: 3,
    // Code of the rooms keeps nothing between tests; loading it anew for each of 200 files took a fifth of the time.
    isolate: false,
  },
});
