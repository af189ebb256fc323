import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['**/*.e2e.ts'],
    exclude: ['**/node_modules/**', '**/dist/**'],
    testTimeout: 120_000,
    hookTimeout: 120_000,
    // Two browsers for two cores: one after the other took longer than a check of everything may.
    maxWorkers: 2,
    // Until it holds: a busy machine may be late, and a wait that ends early proves nothing.
    expect: { poll: { timeout: 15_000 } },
    retry: 0,
  },
});
