import fs from 'node:fs';
import path from 'node:path';
import { replaceFile } from './replace-file.js';

/** Why a file could not be written, in the words of whoever asked for it. */
export interface WriteFailure {
  readonly message: string;
  readonly help: string;
}

/**
 * Writes a file that may or may not be there, whole or not at all: first beside it under another name, then in its place.
 * Returns the reason when it could not be done; then the folder is as it was.
 */
export function writeWholeFile(file: string, text: string): WriteFailure | undefined {
  const found = statOf(file);
  if (found?.isDirectory()) return { message: 'this is a folder, expected a file to write', help: 'name a file in it' };
  if (found !== undefined && !found.isFile())
    return { message: 'this is a device or a pipe, expected a file to write', help: 'name a file' };
  const code = found === undefined ? writeNew(file, text) : replaceFile(file, text);
  if (code === undefined) return undefined;
  return {
    message: reasons[code] ?? `the file cannot be written (${code})`,
    help: found === undefined ? 'nothing was left behind' : 'the file that was there is as it was',
  };
}

const reasons: Readonly<Record<string, string>> = {
  ENOSPC: 'the disk is full',
  EDQUOT: 'the share of the disk that you may use is full',
  EACCES: 'the file may not be written here',
  EPERM: 'the file may not be written here',
  EROFS: 'the disk can only be read',
  ENOENT: 'the folder for the file is not there',
  ENOTDIR: 'the folder for the file is no folder',
  ENAMETOOLONG: 'the name of the file is too long',
};

/** Undefined for what is not there and for what cannot be looked at: the attempt to write says why. */
function statOf(file: string): fs.Stats | undefined {
  try {
    return fs.statSync(file);
  } catch {
    return undefined;
  }
}

function writeNew(file: string, text: string): string | undefined {
  const beside = path.join(path.dirname(file), `.boothwright-${process.pid}.new`);
  try {
    // Flushed, so that a disk that fills up later than the write says so here.
    fs.writeFileSync(beside, text, { flag: 'wx', flush: true });
    fs.renameSync(beside, file);
    return undefined;
  } catch (error) {
    // A path through a file, or a name that is too long, leaves nothing to take away.
    if (fs.existsSync(beside)) fs.rmSync(beside, { force: true });
    return (error as NodeJS.ErrnoException).code ?? 'unknown reason';
  }
}
