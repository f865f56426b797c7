import { type Assessed, type ComparisonDocument, compareAssessed } from '@boothwright/assessment';
import type { BoothSpec } from '@boothwright/language';
import { filePlace } from '../file-place.js';
import type { Platform } from '../platform.js';
import type { View } from '../view.js';
import { committedSpec } from './committed-spec.js';

export interface SinceCommitOptions {
  readonly platform: Pick<Platform, 'committed' | 'lastCommit' | 'assess'>;
  folders(): readonly string[];
  /** False while nobody wants it, or the workspace is not trusted. */
  isWanted(): boolean;
  /** There is something new to tell of a document. */
  arrived(uri: string): void;
}

/** What changed in each open document since the last commit. */
export interface SinceCommit {
  /**
   * The comparison for the numbers of the view; undefined where there is nothing to compare with, where they are not those
   * of the present text, and until what was committed is worked out, which `arrived` tells.
   */
  of(view: View): ComparisonDocument | undefined;
  /** Looks for a new commit at once. */
  refresh(uri: string): void;
  closed(uri: string): void;
}

/** How long a commit counts as the last one without another look, ms. */
const goodFor = 2_000;

interface Entry {
  commit?: string | undefined;
  /** What was committed; undefined where the file is new. */
  before?: Assessed | undefined;
  lookedAt: number;
  isLooking: boolean;
  compared?: { readonly spec: BoothSpec; readonly with: Assessed; readonly comparison: ComparisonDocument };
}

export function createSinceCommit(options: SinceCommitOptions): SinceCommit {
  const { committed, lastCommit, assess } = options.platform;
  const entries = new Map<string, Entry>();

  const look = async (uri: string, entry: Entry): Promise<void> => {
    if (committed === undefined || lastCommit === undefined || entry.isLooking) return;
    entry.isLooking = true;
    try {
      const { folderUri, path } = filePlace(uri, options.folders());
      const commit = await lastCommit(folderUri);
      if (commit === entry.commit) return;
      const spec = commit === undefined ? undefined : await committedSpec(committed, folderUri, commit, path);
      // Variants are compared with the spec itself elsewhere.
      const bare = spec && { ...spec, variants: [] };
      entry.before = bare && { name: 'last commit', spec: bare, result: await assess(bare) };
      entry.commit = commit;
      if (entries.get(uri) === entry) options.arrived(uri);
    } catch {
      // Without what was committed there is nothing to compare with; the numbers themselves are told all the same.
      entry.before = undefined;
    } finally {
      entry.isLooking = false;
      entry.lookedAt = Date.now();
    }
  };

  const entryOf = (uri: string): Entry => {
    const entry = entries.get(uri) ?? { lookedAt: 0, isLooking: false };
    entries.set(uri, entry);
    return entry;
  };

  return {
    of(view) {
      if (!options.isWanted() || committed === undefined) return undefined;
      const entry = entryOf(view.uri);
      const { results } = view;
      if (results === undefined || view.stale || view.basePending) return undefined;
      // Only here, so that git does not run while somebody waits for numbers.
      if (Date.now() - entry.lookedAt > goodFor) void look(view.uri, entry);
      const { before } = entry;
      if (before === undefined) return undefined;
      const { spec } = view.checked;
      if (entry.compared?.spec !== spec || entry.compared.with !== before) {
        const now: Assessed = { name: 'now', spec: { ...spec, variants: [] }, result: results };
        entry.compared = { spec, with: before, comparison: compareAssessed(before, now) };
      }
      return entry.compared.comparison;
    },
    refresh(uri) {
      const entry = entries.get(uri);
      if (entry !== undefined && options.isWanted()) void look(uri, entry);
    },
    closed(uri) {
      entries.delete(uri);
    },
  };
}
