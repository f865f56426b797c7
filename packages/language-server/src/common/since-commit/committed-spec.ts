import { type BoothSpec, checkSpec, type SourceAnswer } from '@boothwright/language';
import type { Platform } from '../platform.js';

/** A spec uses files that use files; deeper than this nothing more is read. */
const mostRounds = 8;

/**
 * The spec of a file as it was at a commit, with all that it used then; undefined where the file was not there. The check
 * asks for files at once and git answers later, so it is made anew until nothing is missing that git has.
 */
export async function committedSpec(
  committed: NonNullable<Platform['committed']>,
  folderUri: string,
  commit: string,
  file: string,
): Promise<BoothSpec | undefined> {
  const known = new Map<string, SourceAnswer>([[file, await committed(folderUri, commit, file)]]);
  if (known.get(file)?.kind !== 'text') return undefined;
  for (let round = 0; ; round++) {
    const wanted = new Set<string>();
    const read = (path: string): SourceAnswer => {
      const answer = known.get(path);
      if (answer === undefined) wanted.add(path);
      return answer ?? { kind: 'missing' };
    };
    const { spec } = checkSpec(file, { read });
    if (wanted.size === 0 || round === mostRounds) return spec;
    for (const path of wanted) known.set(path, await committed(folderUri, commit, path));
  }
}
