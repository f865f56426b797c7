import type { Platform } from './platform.js';
import type { Pending, Workspace } from './workspace.js';

export interface Numbers {
  /** Settles when the numbers of the present text are there, or cannot be; answers whether they are new. */
  settle(uri: string): Promise<boolean>;
}

/**
 * Has numbers worked out, each text once, however many ask for them. `arrived` is called when the numbers of the
 * present text are there, whoever asked for them first.
 */
export function createNumbers(
  workspace: Workspace,
  assess: Platform['assess'],
  arrived: (uri: string) => void,
): Numbers {
  const running = new Map<string, { readonly spec: Pending['spec']; readonly done: Promise<boolean> }>();

  const start = async (uri: string, pending: Pending): Promise<boolean> => {
    const results = await assess(pending.spec);
    workspace.accept(uri, pending, results);
    // Numbers of a text that was typed over in the meantime are followed by those of the new one.
    if (workspace.pending(uri) === undefined) arrived(uri);
    return true;
  };

  return {
    async settle(uri) {
      const pending = workspace.pending(uri);
      if (pending === undefined) return false;
      const under = running.get(uri);
      if (under?.spec === pending.spec) return under.done;
      const done = start(uri, pending).finally(() => {
        if (running.get(uri)?.done === done) running.delete(uri);
      });
      running.set(uri, { spec: pending.spec, done });
      return done;
    },
  };
}
