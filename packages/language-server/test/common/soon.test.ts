import { expect, it } from 'vitest';
import { CancellationToken, CancellationTokenSource } from 'vscode-languageserver';
import { soon, unlessCancelled } from '../../src/common/soon.js';

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

it('waits for a task without end only as long as the answer is wanted', async () => {
  const source = new CancellationTokenSource();
  const waiting = unlessCancelled(new Promise(() => undefined), source.token);
  source.cancel();
  await waiting;
  let done = false;
  const task = Promise.resolve().then(() => {
    done = true;
  });
  await unlessCancelled(task, CancellationToken.None);
  expect(done).toBe(true);
});
