import path from 'node:path';
import type { Complaint } from '../complaint.js';
import { runGit } from './run-git.js';

/** What a path is at a revision. */
export type Found =
  | { readonly kind: 'blob'; readonly id: string }
  | { readonly kind: 'missing' }
  | { readonly kind: 'folder' | 'link' | 'submodule' };

/** A commit, or what is staged, to read files from. */
export interface Revision {
  /** As it was typed; empty for what is staged. */
  readonly name: string;
  /** The current folder in the repository, with `/` at its end; empty at the top. */
  readonly prefix: string;
  readonly find: (file: string) => Found;
  /** Bytes of a file that was found; null where git cannot give them. */
  readonly bytes: (id: string) => { readonly size: number; readonly content: Buffer } | null;
  /** What a file that is there now was called at this revision, as far as git can tell. */
  readonly formerName: (file: string) => string | undefined;
}

/** A revision of the repository around `cwd`, or one sentence why there is none. */
export function openRevision(
  name: string,
  cwd: string,
  env: NodeJS.ProcessEnv,
): { readonly revision: Revision } | { readonly complaint: Omit<Complaint, 'place'> } {
  const git = (...words: readonly string[]) => runGit(words, cwd, env);
  const refuse = (id: string, message: string, help?: string) => ({ complaint: { id, message, help } });
  // A word that git would take for an option is never handed to it.
  if (name.startsWith('-')) return refuse('unknown-revision', `found ${name}, a revision does not start with a hyphen`);
  const where = git('rev-parse', '--show-prefix', '--is-inside-work-tree');
  if (where.kind === 'no-git')
    return refuse(
      'git-missing',
      'git is needed to read a revision, and was not found',
      'install git, or compare two files',
    );
  if (where.code !== 0) {
    const doubtful = where.told.includes('dubious ownership');
    return doubtful
      ? refuse(
          'no-repository',
          'git does not read this repository as it belongs to another user',
          'see `safe.directory` of git',
        )
      : refuse(
          'no-repository',
          'the current folder lies in no git repository',
          'go into the repository, or compare two files',
        );
  }
  const prefix = where.out.toString('utf8').split('\n')[0] ?? '';
  let commit = '';
  if (name !== '') {
    const parsed = git('rev-parse', '--verify', '--quiet', `${name}^{commit}`);
    if (parsed.kind === 'no-git' || parsed.code !== 0)
      return refuse(
        'unknown-revision',
        `git knows no revision ${name}`,
        '`git log --oneline` and `git branch` list some',
      );
    commit = parsed.out.toString('utf8').trim();
  }
  return {
    revision: {
      name,
      prefix,
      find: (file) => find(file, commit, prefix.replace(/[^/]+/g, '..'), git),
      bytes: (id) => {
        const answer = git('cat-file', 'blob', id);
        return answer.kind === 'no-git' || answer.code !== 0 ? null : { size: answer.out.length, content: answer.out };
      },
      formerName: (file) => formerName(file, commit, git),
    },
  };
}

type Git = (...words: readonly string[]) => ReturnType<typeof runGit>;

/** `top` leads from the current folder to the top of the repository. */
function find(file: string, commit: string, top: string, git: Git): Found {
  const answer = commit === '' ? git('ls-files', '-s', '-z', '--full-name', '--', `${top}${file}`) : undefined;
  const tree = answer ?? git('ls-tree', '-z', '--full-tree', commit, '--', file);
  if (tree.kind === 'no-git' || tree.code !== 0) return { kind: 'missing' };
  // `MODE TYPE ID<tab>PATH` of a tree, `MODE ID STAGE<tab>PATH` of what is staged.
  for (const entry of tree.out.toString('utf8').split('\0')) {
    const [head = '', found] = entry.split('\t');
    if (found !== file) continue;
    const [mode = '', second = '', third = ''] = head.split(' ');
    if (mode === '040000') return { kind: 'folder' };
    if (mode === '120000') return { kind: 'link' };
    if (mode === '160000') return { kind: 'submodule' };
    return { kind: 'blob', id: commit === '' ? second : third };
  }
  return { kind: 'missing' };
}

function formerName(file: string, commit: string, git: Git): string | undefined {
  if (commit === '') return undefined;
  const answer = git('diff-index', '--cached', '-M', '-z', '--name-status', '--diff-filter=R', commit);
  if (answer.kind === 'no-git' || answer.code !== 0) return undefined;
  // `R<share>`, old name, new name, each ended by a zero byte.
  const parts = answer.out.toString('utf8').split('\0');
  for (let at = 0; at + 2 < parts.length; at += 3) if (parts[at + 2] === file) return parts[at + 1];
  return undefined;
}

/** `path` as git knows it: from the top of the repository, or from the current folder when it starts with `./` or `../`. */
export function inRepository(file: string, prefix: string): string | undefined {
  const from = /^\.\.?(\/|$)/.test(file) ? path.posix.join(prefix, file) : path.posix.normalize(file);
  return from.startsWith('../') || from === '..' || path.posix.isAbsolute(from) ? undefined : from;
}
