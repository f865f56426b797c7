import { spawnSync } from 'node:child_process';

export type GitAnswer =
  | { readonly kind: 'done'; readonly code: number; readonly out: Buffer; readonly told: string }
  | { readonly kind: 'no-git' };

/** Far more than any specification, and than any list of renamed files. */
const mostBytes = 64_000_000;
const longestMs = 30_000;

/**
 * Runs git without a shell. Only plumbing is asked for, which neither pages nor converts texts nor runs what a repository
 * configures; nothing is fetched and nothing is written.
 */
export function runGit(words: readonly string[], cwd: string, env: NodeJS.ProcessEnv): GitAnswer {
  const { error, status, stdout, stderr } = spawnSync('git', ['--no-pager', '--literal-pathspecs', ...words], {
    cwd,
    shell: false,
    windowsHide: true,
    stdio: ['ignore', 'pipe', 'pipe'],
    maxBuffer: mostBytes,
    timeout: longestMs,
    env: { ...env, LC_ALL: 'C', GIT_OPTIONAL_LOCKS: '0', GIT_TERMINAL_PROMPT: '0', GIT_NO_LAZY_FETCH: '1' },
  });
  const code = (error as NodeJS.ErrnoException | undefined)?.code;
  if (code === 'ENOENT' || code === 'EACCES') return { kind: 'no-git' };
  return {
    kind: 'done',
    code: error ? 128 : (status ?? 128),
    out: stdout ?? Buffer.alloc(0),
    told: String(stderr ?? ''),
  };
}
