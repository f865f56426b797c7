import fs from 'node:fs';
import path from 'node:path';
import { didYouMean } from '@boothwright/language';
import type { Complaint } from './complaint.js';
import type { ReadText } from './read-text.js';

const extension = '.booth';

/** The complaint about a missing file or a folder with what may have been meant. */
export function nearbySpecs(read: Extract<ReadText, { kind: 'complaint' }>, spec: string, cwd: string): Complaint {
  const { complaint } = read;
  const isFolder = complaint.id === 'folder-not-file';
  if (!isFolder && !read.missing) return complaint;
  const folder = isFolder ? spec : path.dirname(spec);
  const names = specsIn(path.resolve(cwd, folder));
  const near = isFolder ? names[0] : didYouMean(path.basename(spec), names);
  if (near) return { ...complaint, help: `did you mean ${path.join(folder, near)}?` };
  return isFolder
    ? complaint
    : { ...complaint, help: 'check the spelling and the folder; paths count from the current folder' };
}

function specsIn(folder: string): readonly string[] {
  try {
    return fs
      .readdirSync(folder)
      .filter((name) => name.endsWith(extension))
      .sort();
  } catch {
    return [];
  }
}
