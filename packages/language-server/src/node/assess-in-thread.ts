import { parentPort, Worker } from 'node:worker_threads';
import { createAssessor, type ResultDocument } from '@boothwright/assessment';
import type { BoothSpec } from '@boothwright/language';

interface Question {
  readonly id: number;
  readonly spec: BoothSpec;
}

type Answer = { readonly id: number } & ({ readonly results: ResultDocument } | { readonly error: string });

/**
 * Works numbers out in a thread of its own, so that no keystroke waits for them. `file` is the script to run in the
 * thread; it must call `answerFromThread`. A thread that ends by itself fails what it had to do and is replaced.
 */
export function assessInThread(file: string): (spec: BoothSpec) => Promise<ResultDocument> {
  const waiting = new Map<number, { resolve(results: ResultDocument): void; reject(error: Error): void }>();
  let thread: Worker | undefined;
  let next = 0;

  const failAll = (ended: Worker, error: Error): void => {
    if (thread !== ended) return;
    thread = undefined;
    for (const { reject } of waiting.values()) reject(error);
    waiting.clear();
  };
  const start = (): Worker => {
    const started = new Worker(file);
    started.on('message', (answer: Answer) => {
      const asked = waiting.get(answer.id);
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

  return (spec) =>
    new Promise((resolve, reject) => {
      thread ??= start();
      const id = next++;
      waiting.set(id, { resolve, reject });
      thread.postMessage({ id, spec } satisfies Question);
    });
}

/** Runs inside the thread. It remembers parts of results, so that a keystroke costs only what depends on it. */
export function answerFromThread(): void {
  const assessor = createAssessor();
  parentPort?.on('message', ({ id, spec }: Question) => {
    let answer: Answer;
    try {
      answer = { id, results: assessor.assess(spec) };
    } catch (error) {
      answer = { id, error: error instanceof Error ? (error.stack ?? error.message) : String(error) };
    }
    parentPort?.postMessage(answer);
  });
}
