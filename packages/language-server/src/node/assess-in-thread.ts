import { Worker } from 'node:worker_threads';
import type { ResultDocument } from '@boothwright/assessment';
import type { BoothSpec } from '@boothwright/language';
import type { AssessRun } from '../common/platform.js';
import type { Answer, Question } from './thread-messages.js';

/**
 * What the thread makes is thrown away soon or kept long: more room would make it larger, not faster. A
 * spec of ten thousand lines needs a small part of it.
 */
const resourceLimits = { maxYoungGenerationSizeMb: 8, maxOldGenerationSizeMb: 1024 };

interface Waiting {
  resolve(results: ResultDocument): void;
  reject(error: unknown): void;
  readonly assemblies: AssessRun['assemblies'];
  readonly base: AssessRun['base'];
}

/**
 * Works numbers out in a thread of its own, so that no keystroke waits for them. `file` is the script to run in the
 * thread; it must call `answerFromThread`. A thread that ends by itself fails what it had to do and is replaced.
 */
export function assessInThread(file: string): (spec: BoothSpec, run?: AssessRun) => Promise<ResultDocument> {
  const waiting = new Map<number, Waiting>();
  let thread: Worker | undefined;
  let next = 0;

  const failAll = (ended: Worker, error: Error): void => {
    if (thread !== ended) return;
    thread = undefined;
    for (const { reject } of waiting.values()) reject(error);
    waiting.clear();
  };
  const start = (): Worker => {
    const started = new Worker(file, { resourceLimits });
    started.on('message', (answer: Answer) => {
      const asked = waiting.get(answer.id);
      if ('assemblies' in answer) {
        asked?.assemblies?.(answer.assemblies);
        return;
      }
      if ('base' in answer) {
        asked?.base?.(answer.base);
        return;
      }
      waiting.delete(answer.id);
      if ('results' in answer) asked?.resolve(answer.results);
      else asked?.reject(new Error(answer.error));
    });
    started.on('error', (error) => failAll(started, error));
    started.on('exit', () => failAll(started, new Error('The thread that works the numbers out has ended')));
    // The server ends when its editor does, whatever the thread is at.
    started.unref();
    return started;
  };

  return (spec, { assemblies, base, signal } = {}) =>
    new Promise((resolve, reject) => {
      thread ??= start();
      const id = next++;
      const ended = new Int32Array(new SharedArrayBuffer(Int32Array.BYTES_PER_ELEMENT));
      waiting.set(id, { resolve, reject, assemblies, base });
      signal?.addEventListener('abort', () => {
        // The thread is busy and reads no message: it looks here at every step.
        Atomics.store(ended, 0, 1);
        waiting.delete(id);
        reject(signal.reason);
      });
      thread.postMessage({ id, spec, ended } satisfies Question);
    });
}
