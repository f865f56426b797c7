/** Where a `use` leads: a path relative to the workspace folder, or why it leads nowhere. */
export type ResolvedPath = { readonly path: string } | { readonly refused: string };

/** `use` reaches only files below the workspace folder, by relative path; this is decided on the text alone. */
export function resolvePath(from: string, written: string): ResolvedPath {
  if (written === '') return { refused: 'it names no file' };
  if (written.includes('\\')) return { refused: 'it has a backslash; paths are written with `/`' };
  if (/^[a-z][a-z0-9+.-]*:/i.test(written) || written.startsWith('//'))
    return { refused: 'it is an address or has a drive; only files below the workspace folder can be used' };
  if (written.startsWith('/') || written.startsWith('~'))
    return { refused: 'it is absolute; paths start from the folder of this file' };
  if (hasControlCharacter(written)) return { refused: 'it has characters that no path may have' };
  const parts = from.split('/').slice(0, -1);
  for (const part of written.split('/')) {
    if (part === '' || part === '.') continue;
    if (part !== '..') parts.push(part);
    else if (parts.pop() === undefined) return { refused: 'it leads out of the workspace folder' };
  }
  return parts.length === 0 ? { refused: 'it names no file' } : { path: parts.join('/') };
}

function hasControlCharacter(text: string): boolean {
  return [...text].some((c) => c.charCodeAt(0) < 32);
}
