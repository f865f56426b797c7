import { expect, it } from 'vitest';
import { soon } from '../../src/common/soon.js';

it('waits for a task that ends soon', async () => {
  let done = false;
  await soon(
    Promise.resolve().then(() => {
      done = true;
    }),
  );
  expect(done).toBe(true);
});

it('does not wait for a task without end', async () => {
  const before = performance.now();
  await soon(new Promise(() => undefined));
  expect(performance.now() - before).toBeGreaterThan(900);
});
