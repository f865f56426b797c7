import { Worker } from 'node:worker_threads';
import type { Output } from './terminal.js';

const patienceMs = 1000;
const shown = 1;

/**
 * Writes `text` to a terminal when the work that follows takes longer than a second. The work keeps the main thread busy,
 * so the waiting is done by another thread. Returns the function that takes the line away again.
 */
export function startProgress(text: string, output: Output): () => void {
  if (!output.isTTY) return () => {};
  const state = new Int32Array(new SharedArrayBuffer(4));
  const worker = new Worker(
    `const { workerData } = require('node:worker_threads');
     Atomics.wait(workerData.state, 0, 0, ${patienceMs});
     if (Atomics.compareExchange(workerData.state, 0, 0, ${shown}) === 0) require('node:fs').writeSync(2, workerData.text);`,
    { eval: true, workerData: { state, text } },
  );
  // A thread that cannot start only costs the line.
  worker.on('error', () => {});
  worker.unref();
  return () => {
    const before = Atomics.exchange(state, 0, 2);
    Atomics.notify(state, 0);
    if (before === shown) output.write('\r\u001b[K');
  };
}
