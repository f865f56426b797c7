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
      log(`${what} failed: ${error instanceof Error ? (error.stack ?? error.message) : String(error)}`);
      return nothing;
    }
  };
}
