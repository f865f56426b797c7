import type { Platform } from './platform.js';

export interface SchedulerOptions {
  readonly platform: Pick<Platform, 'later'>;
  /** Says what is wrong with the text. */
  reportText(uri: string): void;
  /** True when numbers are to be worked out for the document. */
  isPending(uri: string): boolean;
  /** Has the numbers worked out; never fails. */
  settleNumbers(uri: string): Promise<void>;
}

/**
 * Two turns for each burst of changes: first what is wrong with the text, then, in a turn of its own, the numbers.
 * A change that comes in between calls the second turn off, so typing never waits for numbers that are out of date.
 * There is no waiting time: reading a text costs less than a keystroke.
 */
export interface Scheduler {
  changed(uris: readonly string[]): void;
  closed(uri: string): void;
}

export function createScheduler({ platform, reportText, isPending, settleNumbers }: SchedulerOptions): Scheduler {
  const unread = new Set<string>();
  const unassessed = new Set<string>();
  let textTurnWaits = false;
  let numbersTurn: (() => void) | undefined;
  let assessing = false;

  const runNumbers = async (): Promise<void> => {
    numbersTurn = undefined;
    const [uri] = unassessed;
    if (uri === undefined || assessing) return;
    unassessed.delete(uri);
    if (isPending(uri)) {
      assessing = true;
      await settleNumbers(uri);
      assessing = false;
    }
    // One document per turn, so that a keystroke gets in between.
    if (unassessed.size > 0) numbersTurn ??= platform.later(runNumbers);
  };

  const runText = (): void => {
    textTurnWaits = false;
    const uris = [...unread];
    unread.clear();
    for (const uri of uris) {
      reportText(uri);
      unassessed.add(uri);
    }
    numbersTurn ??= platform.later(runNumbers);
  };

  return {
    changed(uris) {
      numbersTurn?.();
      numbersTurn = undefined;
      for (const uri of uris) unread.add(uri);
      if (textTurnWaits) return;
      textTurnWaits = true;
      platform.later(runText);
    },
    closed(uri) {
      unread.delete(uri);
      unassessed.delete(uri);
    },
  };
}
