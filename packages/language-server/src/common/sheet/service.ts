import type { ComparisonDocument, ResultDocument } from '@boothwright/assessment';
import type { BoothSpec } from '@boothwright/language';
import { showing } from '@boothwright/presentation';
import type { Platform } from '../platform.js';
import type { ShownSettings } from '../shown-settings.js';
import type { View } from '../view.js';
import type { Sheet, SheetAsked } from './protocol.js';
import { sheet } from './sheet.js';

export interface SheetServices {
  viewOf(uri: string): View | undefined;
  /** Settles when the numbers of the present text are there, or cannot be. */
  settle(uri: string): Promise<unknown>;
  readonly assess: Platform['assess'];
  /** What changed since the last commit, as far as it is known by now. */
  sinceCommit(view: View): ComparisonDocument | undefined;
  /** In which units and with which ratings figures are written. */
  shown(): ShownSettings;
}

/** Answers `boothwright/sheet`. */
export function createSheets({
  viewOf,
  settle,
  assess,
  sinceCommit,
  shown,
}: SheetServices): (asked: SheetAsked) => Promise<Sheet | null> {
  // A text that is broken from the start is assessed as far as it could be read, once for each reading.
  const partial = new WeakMap<BoothSpec, Promise<ResultDocument>>();
  const partialOf = (spec: BoothSpec): Promise<ResultDocument> => {
    const known = partial.get(spec) ?? assess(spec);
    partial.set(spec, known);
    return known;
  };
  const write = (view: View, asked: SheetAsked, found?: ResultDocument): Sheet =>
    showing(shown(), () => sheet(view, asked, found, sinceCommit(view)));
  return async (asked) => {
    const before = viewOf(asked.uri);
    if (before === undefined) return null;
    // The first sheet has nothing to show before its numbers.
    if (before.results === undefined && before.pending) await settle(asked.uri);
    const view = viewOf(asked.uri);
    if (view === undefined) return null;
    if (view.results !== undefined || !view.stale) return write(view, asked);
    const found = await partialOf(view.checked.spec).catch(() => undefined);
    const now = viewOf(asked.uri);
    return now === undefined ? null : write(now, asked, now.checked.spec === view.checked.spec ? found : undefined);
  };
}
