import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['**/*.test.ts', '**/*.test.tsx'],
    exclude: ['**/node_modules/**', '**/dist/**'],
    testTimeout: 60_000,
    // One more than cores: the test that kills the server a dozen times mostly waits.
    maxWorkers: 3,
  },
});
