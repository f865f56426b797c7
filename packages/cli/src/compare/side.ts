import fs from 'node:fs';
import path from 'node:path';
import { CATALOGUE_FILE, type SourceAnswer, type SourceHost } from '@boothwright/language';
import type { Complaint } from '../complaint.js';
import { inRepository, openRevision, type Revision } from '../git/open-revision.js';
import { nearbySpecs } from '../nearby-specs.js';
import { largestFile, readText, textOf } from '../read-text.js';
import { openWorkspace } from '../workspace.js';

/** A specification to compare: a file as it is, or as it was at a revision. */
export interface Side {
  /** As it is told. */
  readonly name: string;
  readonly entry: string;
  readonly host: SourceHost;
  readonly shownAs: (file: string) => string;
  /** What the reader should know of how it was found; empty when nothing. */
  readonly note: string;
}

export type OpenedSide = { readonly side: Side } | { readonly complaint: Complaint };

interface Around {
  readonly cwd: string;
  readonly env: NodeJS.ProcessEnv;
}

/** `FILE`, or `REVISION:PATH` as git writes it; a file of that very name comes first. */
export function openSide(typed: string, around: Around): OpenedSide {
  const colon = typed.indexOf(':');
  const isDrive = process.platform === 'win32' && path.win32.isAbsolute(typed);
  if (colon < 0 || isDrive || fs.existsSync(path.resolve(around.cwd, typed))) return openFile(typed, around.cwd);
  const file = typed.slice(colon + 1);
  return openAt(typed.slice(0, colon), file, typed, around, (prefix) => inRepository(file, prefix));
}

/** `file`, named from the current folder, as it was at a revision. */
export function openSince(revision: string, file: string, around: Around): OpenedSide {
  const name = `${revision}:${file}`;
  const relative = path.relative(around.cwd, path.resolve(around.cwd, file)).split(path.sep).join('/');
  return openAt(revision, relative, name, around, (prefix) => inRepository(`./${relative}`, prefix));
}

function openFile(typed: string, cwd: string): OpenedSide {
  const read = readText(path.resolve(cwd, typed), typed);
  if (read.kind === 'complaint') return { complaint: nearbySpecs(read, typed, cwd) };
  const { entry, host, shownAs } = openWorkspace(typed, read.text, cwd);
  return { side: { name: typed, entry, host, shownAs, note: '' } };
}

function openAt(
  name: string,
  typed: string,
  place: string,
  { cwd, env }: Around,
  pathIn: (prefix: string) => string | undefined,
): OpenedSide {
  const refuse = (id: string, message: string, help?: string): OpenedSide => ({
    complaint: { id, place, message, help },
  });
  if (typed === '')
    return refuse(
      'missing-file',
      'found a revision without a file',
      'write the path after the colon: main:booth.booth',
    );
  const opened = openRevision(name, cwd, env);
  if ('complaint' in opened) return { complaint: { ...opened.complaint, place } };
  const { revision } = opened;
  const asked = pathIn(revision.prefix);
  if (asked === undefined) return refuse('missing-file', 'this lies outside the repository');

  const there = revision.find(asked);
  const former = there.kind === 'missing' ? revision.formerName(asked) : undefined;
  const file = former ?? asked;
  const read = textAt(revision, file, place);
  if (read.kind === 'missing') {
    const below = `${revision.prefix}${typed}`;
    const help =
      revision.prefix !== '' && below !== asked && revision.find(below).kind === 'blob'
        ? `paths start at the top of the repository: ${name}:${below} or ${name}:./${typed}`
        : undefined;
    return refuse('file-not-at-revision', `there was no such file ${whenOf(revision)}`, help);
  }
  if (read.kind === 'complaint') return { complaint: read.complaint };
  const root = file.startsWith(revision.prefix) ? revision.prefix : path.posix.join(path.posix.dirname(file), '/');
  const inRoot = root === './' ? '' : root;
  const entry = file.slice(inRoot.length);
  return {
    side: {
      name: former === undefined ? place : `${name}:${former}`,
      entry,
      host: { read: (other) => (other === entry ? { kind: 'text', text: read.text } : below(revision, inRoot, other)) },
      shownAs: (other) => (other === CATALOGUE_FILE && other !== entry ? other : `${name}:${inRoot}${other}`),
      note: former === undefined ? '' : `${asked} was called ${former} ${whenOf(revision)}`,
    },
  };
}

function whenOf({ name }: Revision): string {
  return name === '' ? 'among what is staged' : `at ${name}`;
}

type TextAt =
  | { readonly kind: 'text'; readonly text: string }
  | { readonly kind: 'missing' }
  | { readonly kind: 'complaint'; readonly complaint: Complaint };

function textAt(revision: Revision, file: string, place: string): TextAt {
  const found = revision.find(file);
  if (found.kind === 'missing') return found;
  const refuse = (id: string, message: string): TextAt => ({ kind: 'complaint', complaint: { id, place, message } });
  if (found.kind === 'folder') return refuse('folder-not-file', 'this is a folder, expected a file');
  if (found.kind !== 'blob') return refuse('not-a-regular-file', `this is a ${wordFor[found.kind]}, expected a file`);
  const bytes = revision.bytes(found.id);
  if (bytes === null) return refuse('unreadable-file', 'git cannot give the file at this revision');
  if (bytes.size > largestFile)
    return refuse(
      'file-too-large',
      `the file has ${(bytes.size / 1e6).toFixed(1)} MB, expected at most ${largestFile / 1e6} MB of text`,
    );
  const read = textOf(bytes.content, place);
  return read.kind === 'text' ? { kind: 'text', text: read.text } : { kind: 'complaint', complaint: read.complaint };
}

const wordFor = { link: 'symbolic link', submodule: 'repository of its own' } as const;

/** What a specification uses is read at the same revision, below the same folder. */
function below(revision: Revision, root: string, file: string): SourceAnswer {
  const full = path.posix.normalize(`${root}${file}`);
  if (full.startsWith('../') || !full.startsWith(root))
    return { kind: 'refused', reason: 'it lies outside the workspace folder' };
  const read = textAt(revision, full, full);
  if (read.kind === 'complaint') return { kind: 'unreadable', reason: read.complaint.message };
  return read;
}
