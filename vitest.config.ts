import { configDefaults, defineConfig } from 'vitest/config';
import { constants } from './esbuild.config.mjs';

export default defineConfig({
  define: constants,
  test: {
    include: ['tests/**/*.test.ts'],
    exclude: [...configDefaults.exclude, 'tests/editors/**', 'tests/bench/**'],
    globalSetup: ['tests/setup/build.ts'],
    pool: 'threads',
    maxWorkers: 2,
    // The code holds no mutable module state but lazy tables, and building the lexer once a worker is much faster.
    isolate: false,
    testTimeout: 120_000,
    reporters: ['default', ['json', { outputFile: '.cache/results/vitest.json' }]],
  },
});
