import { execFile } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import type { SourceAnswer } from '@boothwright/language';
import { longestText, tooLong } from '../common/longest-text.js';

/** A letter of text is up to four bytes. */
const mostBytes = 4 * longestText;
const longestMs = 5_000;

/**
 * Asks git without a shell. Only plumbing is asked, which neither pages nor converts texts nor runs what a repository
 * configures; nothing is fetched and nothing is written. Undefined where git is missing or has no answer.
 */
function git(folderUri: string, ...words: readonly string[]): Promise<string | undefined> {
  return new Promise((resolve) => {
    execFile(
      'git',
      ['--no-pager', '--literal-pathspecs', ...words],
      {
        cwd: fileURLToPath(folderUri),
        windowsHide: true,
        maxBuffer: mostBytes,
        timeout: longestMs,
        env: { ...process.env, LC_ALL: 'C', GIT_OPTIONAL_LOCKS: '0', GIT_TERMINAL_PROMPT: '0', GIT_NO_LAZY_FETCH: '1' },
      },
      (error, out) => resolve(error === null ? out : undefined),
    );
  });
}

/** The last commit of the repository around a folder; undefined where there is none. */
export async function lastCommit(folderUri: string): Promise<string | undefined> {
  if (!folderUri.startsWith('file:')) return undefined;
  const found = await git(folderUri, 'rev-parse', '--verify', '--quiet', 'HEAD^{commit}');
  return found?.trim() || undefined;
}

/** A file below a folder as it was at a commit; a link or a repository of its own counts as missing. */
export async function committedText(folderUri: string, commit: string, file: string): Promise<SourceAnswer> {
  const missing: SourceAnswer = { kind: 'missing' };
  if (!folderUri.startsWith('file:') || file.split('/').includes('..')) return missing;
  // `MODE TYPE ID<tab>PATH`
  const entry = await git(folderUri, 'ls-tree', '-z', commit, '--', `./${file}`);
  const [, kind, id] = /^100[0-7]{3} (blob) ([0-9a-f]+)\t/.exec(entry ?? '') ?? [];
  if (kind === undefined || id === undefined) return missing;
  const text = await git(folderUri, 'cat-file', 'blob', id);
  if (text === undefined) return missing;
  return text.length > longestText ? { kind: 'refused', reason: tooLong(text) } : { kind: 'text', text };
}
