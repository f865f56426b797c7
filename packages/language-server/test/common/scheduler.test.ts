import { describe, expect, it } from 'vitest';
import { createScheduler } from '../../src/common/scheduler.js';

/** A clock by hand: each turn runs what was waiting when it began. */
function turns() {
  let waiting: { task: () => void; off: boolean }[] = [];
  return {
    later(task: () => void) {
      const entry = { task, off: false };
      waiting.push(entry);
      return () => {
        entry.off = true;
      };
    },
    async next() {
      const now = waiting;
      waiting = [];
      for (const { task, off } of now) if (!off) task();
      // What the tasks wait for, settles.
      await new Promise((resolve) => setTimeout(resolve, 0));
    },
    get idle() {
      return waiting.every(({ off }) => off);
    },
  };
}

function recorded() {
  const clock = turns();
  const log: string[] = [];
  const scheduler = createScheduler({
    platform: clock,
    reportText: (uri) => log.push(`text ${uri}`),
    isPending: (uri) => !uri.startsWith('broken'),
    settleNumbers: async (uri) => {
      log.push(`numbers ${uri}`);
    },
  });
  return { clock, log, scheduler };
}

describe('createScheduler', () => {
  it('reports the text first and the numbers in a later turn', async () => {
    const { clock, log, scheduler } = recorded();
    scheduler.changed(['a']);
    expect(log).toEqual([]);
    await clock.next();
    expect(log).toEqual(['text a']);
    await clock.next();
    expect(log).toEqual(['text a', 'numbers a']);
    expect(clock.idle).toBe(true);
  });

  it('reads a text once for a burst of changes', async () => {
    const { clock, log, scheduler } = recorded();
    for (let i = 0; i < 5; i++) scheduler.changed(['a']);
    await clock.next();
    expect(log).toEqual(['text a']);
  });

  it('calls the numbers off when a keystroke comes in between', async () => {
    const { clock, log, scheduler } = recorded();
    scheduler.changed(['a']);
    await clock.next();
    scheduler.changed(['a']);
    await clock.next();
    expect(log).toEqual(['text a', 'text a']);
    await clock.next();
    expect(log).toEqual(['text a', 'text a', 'numbers a']);
  });

  it('works out one document per turn', async () => {
    const { clock, log, scheduler } = recorded();
    scheduler.changed(['a', 'b']);
    await clock.next();
    await clock.next();
    expect(log).toEqual(['text a', 'text b', 'numbers a']);
    await clock.next();
    expect(log.at(-1)).toBe('numbers b');
  });

  it('works out nothing for a broken text or a closed document', async () => {
    const { clock, log, scheduler } = recorded();
    scheduler.changed(['broken', 'a']);
    await clock.next();
    scheduler.closed('a');
    for (let i = 0; i < 4; i++) await clock.next();
    expect(log).toEqual(['text broken', 'text a']);
  });
});
