import { spawnSync } from 'node:child_process';

/** Runs a command to its end and answers what it printed; throws what it printed when it fails. */
export function execute(command, args, options = {}) {
  const result = spawnSync(command, args, { encoding: 'utf8', stdio: ['ignore', 'pipe', 'pipe'], ...options });
  if (result.error) throw result.error;
  if (result.status !== 0) {
    throw new Error(
      `${command} ${args[0]} ended with ${result.status}:\n${result.stdout}${result.stderr}`.slice(0, 4000),
    );
  }
  return result.stdout;
}
