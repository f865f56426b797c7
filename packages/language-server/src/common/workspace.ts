import type { BaseResult, ResultDocument } from '@boothwright/assessment';
import {
  type BoothSpec,
  CATALOGUE_FILE,
  type CheckOptions,
  type CheckResult,
  catalogueText,
  checkSpec,
  type SourceHost,
} from '@boothwright/language';
import { catalogueUri } from './catalogue-uri.js';
import { type FilePlace, filePlace, sameUri, uriOfPlace } from './file-place.js';
import { type LineTable, lineTable } from './line-table.js';
import { longestText, tooLong } from './longest-text.js';
import type { Platform } from './platform.js';
import { shiftResults, withParts } from './shift-results.js';
import type { View } from './view.js';

export interface OpenDocument {
  readonly uri: string;
  readonly version: number;
  getText(): string;
}

export interface WorkspaceOptions {
  readonly platform: Pick<Platform, 'read'>;
  /** Addresses of the workspace folders. */
  folders(): readonly string[];
  /** The documents open in the editor; their text wins over that on disk. */
  documents(): readonly OpenDocument[];
  /** True when the editor can show the catalogue as a document. */
  readonly catalogueDocument: boolean;
}

/** What is known about each open document, worked out when it is asked for and kept until its text changes. */
export interface Workspace {
  /** Undefined for a document that is not open or too long to be read. */
  view(uri: string): View | undefined;
  /** The view of a spec that need not be open, without results. */
  viewOfText(uri: string, text: string): View | undefined;
  /** What is to be worked out for the document; undefined when the numbers are there or the text is broken. */
  pending(uri: string): Pending | undefined;
  /** Takes the numbers that were worked out. */
  accept(uri: string, pending: Pending, results: ResultDocument): void;
  /**
   * Takes the build-ups that were worked out, to stand among the other numbers of an earlier text; false when they are of
   * no use, because the text has moved on or there are no other numbers.
   */
  acceptAssemblies(uri: string, pending: Pending, assemblies: ResultDocument['assemblies']): boolean;
  /** The same of all but the variants. */
  acceptBase(uri: string, pending: Pending, base: BaseResult): boolean;
  /** Forgets what rests on a file; answers the other open documents that use it. */
  changed(uri: string): readonly string[];
  /** Forgets everything that was read from disk. */
  changedOnDisk(): void;
  closed(uri: string): void;
}

/** A sound text whose numbers are still to be worked out. */
export interface Pending {
  readonly text: string;
  readonly spec: BoothSpec;
}

interface Entry {
  /** The files of the last check, of which the next one reads again what changed. */
  files?: CheckResult['files'];
  checked?: { readonly version: number; readonly result: CheckResult; readonly lines: LineTable };
  /** The last text whose numbers were worked out, and the numbers. */
  assessed?: Pending & { readonly results: ResultDocument };
  /** The numbers with their places in a later text. */
  shifted?: { readonly text: string; readonly results: ResultDocument };
  /** The last spec whose build-ups were worked out before the rest. */
  assembliesOf?: BoothSpec;
  /** The last spec of which all but the variants was. */
  baseOf?: BoothSpec;
}

export function createWorkspace(options: WorkspaceOptions): Workspace {
  const entries = new Map<string, Entry>();
  const entryOf = (uri: string): Entry => {
    let entry = entries.get(uri);
    if (entry === undefined) {
      entry = {};
      entries.set(uri, entry);
    }
    return entry;
  };
  const before = (entry: Entry | undefined): CheckOptions =>
    entry?.files === undefined ? {} : { before: entry.files };
  const open = (uri: string) => options.documents().find((document) => document.uri === uri);

  const placeOf = (uri: string): FilePlace =>
    sameUri(uri, catalogueUri) ? { folderUri: '', path: CATALOGUE_FILE } : filePlace(uri, options.folders());

  /** `instead` stands for the text of the entry itself. */
  const hostOf = (entryUri: string, { folderUri, path: entryPath }: FilePlace, instead?: string): SourceHost => ({
    read(path) {
      if (instead !== undefined && path === entryPath) return { kind: 'text', text: instead };
      const uri = path === entryPath ? entryUri : uriOfPlace({ folderUri, path });
      const document = options.documents().find((each) => sameUri(each.uri, uri));
      if (document === undefined) return options.platform.read(folderUri, path);
      const text = document.getText();
      return text.length > longestText ? { kind: 'refused', reason: tooLong(text) } : { kind: 'text', text };
    },
  });

  const check = (uri: string): Required<Entry>['checked'] | undefined => {
    const document = open(uri);
    if (document === undefined) return undefined;
    const entry = entryOf(uri);
    if (entry.checked?.version === document.version) return entry.checked;
    const text = document.getText();
    if (text.length > longestText) return undefined;
    const place = placeOf(uri);
    const result = checkSpec(place.path, hostOf(uri, place), before(entry));
    entry.files = result.files;
    entry.checked = { version: document.version, result, lines: lineTable(text) };
    return entry.checked;
  };

  const isBroken = (checked: CheckResult) => checked.problems.some(({ severity }) => severity === 'error');

  const shiftedResults = (uri: string, text: string, file: string): ResultDocument | undefined => {
    const entry = entryOf(uri);
    if (entry.assessed === undefined) return undefined;
    // The same text may have been taken up again, with build-ups that were worked out since.
    if (entry.assessed.text === text && entry.shifted?.text !== text) return entry.assessed.results;
    if (entry.shifted?.text !== text) {
      // From text to text and not from the first: between two texts that follow each other little has changed.
      const before = entry.shifted ?? entry.assessed;
      entry.shifted = { text, results: shiftResults(before.results, file, before.text, text) };
    }
    return entry.shifted.results;
  };

  /** Puts what was worked out of a text among the other numbers of an earlier one; undefined where it is of no use. */
  const acceptParts = (uri: string, { text, spec }: Pending, parts: Partial<ResultDocument>): Entry | undefined => {
    const entry = entries.get(uri);
    if (entry?.checked?.result.spec !== spec) return undefined;
    const others = shiftedResults(uri, text, placeOf(uri).path);
    if (others === undefined) return undefined;
    entry.shifted = { text, results: withParts(others, parts) };
    return entry;
  };

  const checkInstead = (uri: string, text: string): CheckResult | undefined => {
    if (text.length > longestText) return undefined;
    const place = placeOf(uri);
    return checkSpec(place.path, hostOf(uri, place, text), before(entries.get(uri)));
  };

  const viewOf = (
    uri: string,
    text: string,
    result: CheckResult,
    lines: LineTable,
    isTried = false,
  ): View | undefined => {
    const { path: file, folderUri } = placeOf(uri);
    const parsed = result.files.find((each) => each.file === file);
    if (parsed === undefined) return undefined;
    const isPending = !isTried && !isBroken(result) && entryOf(uri).assessed?.spec !== result.spec;
    return {
      uri,
      file,
      text,
      lines,
      checked: result,
      parsed,
      results: isTried ? undefined : shiftedResults(uri, text, file),
      stale: isBroken(result),
      pending: isPending,
      assembliesPending: isPending && entryOf(uri).assembliesOf !== result.spec,
      basePending: isPending && entryOf(uri).baseOf !== result.spec,
      checkWith: (other) => checkInstead(uri, other),
      withText: (other) => viewOfText(uri, other),
      locate(range) {
        if (range.file === file) return { uri, range: lines.rangeOf(range) };
        const other = result.files.find((each) => each.file === range.file);
        if (other === undefined) return undefined;
        if (range.file === CATALOGUE_FILE) {
          if (!options.catalogueDocument) return undefined;
          return { uri: catalogueUri, range: lineTable(other.text).rangeOf(range) };
        }
        const otherUri = uriOfPlace({ folderUri, path: range.file });
        const opened = options.documents().find((each) => sameUri(each.uri, otherUri));
        return { uri: opened?.uri ?? otherUri, range: lineTable(other.text).rangeOf(range) };
      },
    };
  };

  const viewOfText = (uri: string, text: string): View | undefined => {
    const checked = checkInstead(uri, text);
    return checked && viewOf(uri, text, checked, lineTable(text), true);
  };

  return {
    viewOfText,

    view(uri) {
      const checked = check(uri);
      const document = open(uri);
      if (checked === undefined || document === undefined) return undefined;
      return viewOf(uri, document.getText(), checked.result, checked.lines);
    },

    pending(uri) {
      const checked = check(uri)?.result;
      const text = open(uri)?.getText();
      if (checked === undefined || text === undefined || isBroken(checked)) return undefined;
      return entryOf(uri).assessed?.spec === checked.spec ? undefined : { text, spec: checked.spec };
    },

    accept(uri, pending, results) {
      const entry = entries.get(uri);
      // The document may have been closed in the meantime.
      if (entry === undefined) return;
      entry.assessed = { ...pending, results };
      delete entry.shifted;
      delete entry.assembliesOf;
      delete entry.baseOf;
    },

    acceptAssemblies(uri, pending, assemblies) {
      const entry = acceptParts(uri, pending, { assemblies });
      if (entry === undefined) return false;
      entry.assembliesOf = pending.spec;
      return true;
    },

    acceptBase(uri, pending, base) {
      const entry = acceptParts(uri, pending, base);
      if (entry === undefined) return false;
      entry.assembliesOf = pending.spec;
      entry.baseOf = pending.spec;
      return true;
    },

    changed(uri) {
      delete entryOf(uri).checked;
      const users: string[] = [];
      for (const [other, entry] of entries) {
        if (other === uri || entry.checked === undefined) continue;
        const { folderUri } = placeOf(other);
        const uses = entry.checked.result.files.some(({ file }) => sameUri(uriOfPlace({ folderUri, path: file }), uri));
        if (!uses) continue;
        delete entry.checked;
        users.push(other);
      }
      return users;
    },

    changedOnDisk() {
      for (const entry of entries.values()) delete entry.checked;
    },

    closed(uri) {
      entries.delete(uri);
    },
  };
}

/** What the catalogue's document holds. */
export function catalogueDocumentText(): string {
  return catalogueText;
}
