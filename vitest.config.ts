import { availableParallelism } from 'node:os';
import { configDefaults, defineConfig } from 'vitest/config';

/** The files that swap a module or the environment under the code, which must not be seen by their neighbours. */
const isolated = ['packages/acoustics/test/layered/simd-kernel.test.ts'];

// Tests run on the sources of every package, so that no stale build can pass or fail them.
export default defineConfig({
  resolve: { conditions: ['boothwright-source'] },
  ssr: { resolve: { conditions: ['boothwright-source'] } },
  test: {
    // Loading the modules takes longer than most files' tests, so the files of a worker share them.
    projects: [
      {
        extends: true,
        test: {
          name: 'shared',
          isolate: false,
          exclude: [...configDefaults.exclude, ...isolated],
          include: [
            'packages/*/test/**/*.test.ts',
            'tests/published/**/*.test.ts',
            'tests/accuracy/**/*.test.ts',
            'tests/robustness/**/*.test.ts',
            'tests/journeys/**/*.test.ts',
          ],
        },
      },
      { extends: true, test: { name: 'isolated', include: isolated } },
    ],
    // The default leaves a core to the runner, which on two cores means one worker.
    maxWorkers: Math.max(2, availableParallelism() - 1),
    testTimeout: 30_000,
  },
});
