import { parentPort } from 'node:worker_threads';
import { createAssessor } from '@boothwright/assessment';
import type { Answer, Question } from './thread-messages.js';

/** Runs inside the thread. It remembers parts of results, so that a keystroke costs only what depends on it. */
export function answerFromThread(): void {
  const assessor = createAssessor();
  parentPort?.on('message', ({ id, spec, ended }: Question) => {
    const isEnded = (): boolean => Atomics.load(ended, 0) !== 0;
    if (isEnded()) return;
    let answer: Answer;
    try {
      const results = assessor.assess(spec, {
        assemblies: (assemblies) => parentPort?.postMessage({ id, assemblies } satisfies Answer),
        base: (base) => parentPort?.postMessage({ id, base } satisfies Answer),
        step: () => {
          if (isEnded()) throw new Error('The numbers are not wanted any more');
        },
      });
      answer = { id, results };
    } catch (error) {
      if (isEnded()) return;
      answer = { id, error: error instanceof Error ? (error.stack ?? error.message) : String(error) };
    }
    parentPort?.postMessage(answer);
  });
}
