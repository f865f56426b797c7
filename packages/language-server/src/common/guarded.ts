/** Keeps one failed answer from ending the server: the failure is logged and an empty answer given. */
export function guarded<A extends unknown[], R>(
  what: string,
  log: (message: string) => void,
  nothing: R,
  answer: (...input: A) => R,
): (...input: A) => R {
  return (...input) => {
    try {
      return answer(...input);
    } catch (error) {
      log(failure(what, error));
      return nothing;
    }
  };
}

/** The same for an answer that is waited for. */
export function guardedLater<A extends unknown[], R>(
  what: string,
  log: (message: string) => void,
  nothing: R,
  answer: (...input: A) => Promise<R>,
): (...input: A) => Promise<R> {
  return async (...input) => {
    try {
      return await answer(...input);
    } catch (error) {
      log(failure(what, error));
      return nothing;
    }
  };
}

function failure(what: string, error: unknown): string {
  return `${what} failed: ${error instanceof Error ? (error.stack ?? error.message) : String(error)}`;
}
