import type { CancellationToken } from 'vscode-languageserver';

/** Longest time, in milliseconds, that a reader is kept waiting; then what is at hand must do. */
const patience = 1000;

/** Waits for a task, but not for longer than a reader would. */
export async function soon(task: Promise<unknown>): Promise<void> {
  let late: ReturnType<typeof setTimeout> | undefined;
  await Promise.race([
    task,
    new Promise<void>((resolve) => {
      late = setTimeout(resolve, patience);
    }),
  ]);
  clearTimeout(late);
}

/** Waits for a task as long as the answer is wanted. */
export async function unlessCancelled(task: Promise<unknown>, token: CancellationToken): Promise<void> {
  let listening: { dispose(): void } | undefined;
  await Promise.race([
    task,
    new Promise<void>((resolve) => {
      listening = token.onCancellationRequested(() => resolve());
    }),
  ]);
  listening?.dispose();
}
