/** A file as the language sees it: a POSIX path below a workspace folder. */
export interface FilePlace {
  /** Address of the folder, without a slash at its end; empty when there is none. */
  readonly folderUri: string;
  readonly path: string;
}

/** Addresses are compared decoded, since editors differ in which characters they encode. */
export function sameUri(a: string, b: string): boolean {
  return a === b || decoded(a) === decoded(b);
}

/** The deepest workspace folder that holds the document, or else the document's own folder. */
export function filePlace(uri: string, folders: readonly string[]): FilePlace {
  const plain = decoded(uri);
  let best: FilePlace | undefined;
  for (const folder of folders) {
    const folderUri = folder.replace(/\/+$/, '');
    const start = `${decoded(folderUri)}/`;
    if (plain.startsWith(start) && (best === undefined || folderUri.length > best.folderUri.length)) {
      best = { folderUri, path: plain.slice(start.length) };
    }
  }
  if (best !== undefined) return best;
  // A document that has no place on disk yet reads from the first folder.
  if (!uri.startsWith('file:'))
    return { folderUri: folders[0]?.replace(/\/+$/, '') ?? '', path: plain.replace(/^[^:]*:\/*/, '') };
  const slash = uri.lastIndexOf('/');
  return { folderUri: uri.slice(0, slash), path: decoded(uri.slice(slash + 1)) };
}

export function uriOfPlace({ folderUri, path }: FilePlace): string {
  return `${folderUri}/${path.split('/').map(encodeURIComponent).join('/')}`;
}

/** The form in which addresses are compared. */
export function decoded(uri: string): string {
  try {
    return decodeURIComponent(uri);
  } catch {
    return uri;
  }
}
