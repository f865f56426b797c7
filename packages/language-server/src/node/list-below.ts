import { readdir } from 'node:fs/promises';
import path from 'node:path';
import { fileURLToPath } from 'node:url';

/** Beyond these a folder is not searched, so that a huge one costs no more than a moment. */
const mostFolders = 2000;
const mostFiles = 1000;

/**
 * The specs below a folder, as POSIX paths relative to it, the nearest first. Links are not followed, and neither
 * hidden folders nor installed packages are searched.
 */
export async function listBelow(folderUri: string): Promise<readonly string[]> {
  if (!folderUri.startsWith('file:')) return [];
  const root = fileURLToPath(folderUri);
  const found: string[] = [];
  const waiting = [''];
  for (let seen = 0; seen < mostFolders && waiting.length > 0; seen++) {
    const folder = waiting.shift()!;
    // A folder that may not be read holds nothing for us.
    const entries = await readdir(path.join(root, ...folder.split('/')), { withFileTypes: true }).catch(() => []);
    for (const entry of entries.sort((a, b) => (a.name < b.name ? -1 : 1))) {
      const file = folder === '' ? entry.name : `${folder}/${entry.name}`;
      if (entry.isDirectory() && !entry.name.startsWith('.') && entry.name !== 'node_modules') waiting.push(file);
      if (!entry.isFile() || !entry.name.endsWith('.booth')) continue;
      found.push(file);
      if (found.length >= mostFiles) return found;
    }
  }
  return found;
}
