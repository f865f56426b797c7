import type { Platform } from './platform.js';
import type { Pending, Workspace } from './workspace.js';

export interface Numbers {
  /** Settles when the numbers of the present text are there, or cannot be; answers whether they are new. */
  settle(uri: string): Promise<boolean>;
  /** The same for those of its build-ups, which come first. */
  settleAssemblies(uri: string): Promise<unknown>;
  /** The same for all but its variants. */
  settleBase(uri: string): Promise<unknown>;
  /** Ends what is worked out for a text that is typed over. */
  changed(uri: string): void;
}

export interface Arrivals {
  /** The numbers of the present text are there, whoever asked for them first. */
  arrived(uri: string): void;
  /** The build-ups of the present text are there, and the rest is still that of an earlier text. */
  assembliesArrived?(uri: string): void;
  /** All but the variants is there. */
  baseArrived?(uri: string): void;
}

interface Running {
  readonly spec: Pending['spec'];
  readonly done: Promise<boolean>;
  readonly assemblies: Promise<unknown>;
  readonly base: Promise<unknown>;
  readonly end: AbortController;
}

/** Has numbers worked out, each text once, however many ask for them. */
export function createNumbers(workspace: Workspace, assess: Platform['assess'], arrivals: Arrivals): Numbers {
  const running = new Map<string, Running>();

  const whole = async (
    uri: string,
    pending: Pending,
    signal: AbortSignal,
    assembliesCame: () => void,
    baseCame: () => void,
  ): Promise<boolean> => {
    try {
      const results = await assess(pending.spec, {
        signal,
        assemblies(found) {
          if (signal.aborted || !workspace.acceptAssemblies(uri, pending, found)) return;
          assembliesCame();
          arrivals.assembliesArrived?.(uri);
        },
        base(found) {
          if (signal.aborted || !workspace.acceptBase(uri, pending, found)) return;
          baseCame();
          arrivals.baseArrived?.(uri);
        },
      });
      workspace.accept(uri, pending, results);
    } catch (error) {
      if (signal.aborted) return false;
      throw error;
    }
    // Numbers of a text that was typed over in the meantime are followed by those of the new one.
    if (workspace.pending(uri) === undefined) arrivals.arrived(uri);
    return true;
  };

  const start = (uri: string, pending: Pending): Running => {
    const end = new AbortController();
    const assemblies = heldPromise();
    const base = heldPromise();
    const done = whole(uri, pending, end.signal, assemblies.keep, base.keep).finally(() => {
      if (running.get(uri)?.done === done) running.delete(uri);
    });
    return {
      spec: pending.spec,
      done,
      assemblies: Promise.race([assemblies.promise, done]),
      base: Promise.race([base.promise, done]),
      end,
    };
  };

  const run = (uri: string): Running | undefined => {
    const pending = workspace.pending(uri);
    if (pending === undefined) return undefined;
    const under = running.get(uri);
    if (under?.spec === pending.spec) return under;
    under?.end.abort();
    const started = start(uri, pending);
    // Who does not wait for a part is told of a failure by the whole.
    started.assemblies.catch(() => undefined);
    started.base.catch(() => undefined);
    running.set(uri, started);
    return started;
  };

  return {
    settle: async (uri) => run(uri)?.done ?? false,
    settleAssemblies: async (uri) => run(uri)?.assemblies,
    settleBase: async (uri) => run(uri)?.base,
    changed(uri) {
      running.get(uri)?.end.abort();
      running.delete(uri);
    },
  };
}

/** A promise that is kept from outside. */
function heldPromise(): { readonly promise: Promise<void>; readonly keep: () => void } {
  let keep = (): void => undefined;
  const promise = new Promise<void>((resolve) => {
    keep = resolve;
  });
  return { promise, keep };
}
