import { defineConfig } from 'vitest/config';

// Tests run on the sources of every package, so that no stale build can pass or fail them.
export default defineConfig({
  resolve: { conditions: ['boothwright-source'] },
  ssr: { resolve: { conditions: ['boothwright-source'] } },
  test: {
    include: [
      'packages/*/test/**/*.test.ts',
      'tests/published/**/*.test.ts',
      'tests/accuracy/**/*.test.ts',
      'tests/robustness/**/*.test.ts',
      'tests/journeys/**/*.test.ts',
    ],
    benchmark: { include: ['tests/bench/**/*.bench.ts'] },
    testTimeout: 30_000,
  },
});
