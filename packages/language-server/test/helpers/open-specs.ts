import { createAssessor } from '@boothwright/assessment';
import type { View } from '../../src/common/view.js';
import { createWorkspace, type Workspace } from '../../src/common/workspace.js';

const folder = 'file:///booths';
/** One for all tests: what one has worked out, the others need not. */
const assessor = createAssessor();

export interface OpenSpecs {
  readonly workspace: Workspace;
  /** The view of a file, by its path below the folder. */
  view(path: string): View;
  uri(path: string): string;
  /** Types over the whole text of an open file. */
  change(path: string, text: string): void;
  /** Works the numbers out; answers whether there was anything to work out. */
  assess(path: string): boolean;
}

/** A workspace of texts: those in `open` are open in the editor, those in `onDisk` are only there to be read. */
export function openSpecs(
  open: Readonly<Record<string, string>>,
  onDisk: Readonly<Record<string, string>> = {},
): OpenSpecs {
  const texts = new Map(Object.entries(open));
  const versions = new Map(Object.keys(open).map((path) => [path, 1]));
  const uri = (path: string): string => `${folder}/${path}`;
  const workspace = createWorkspace({
    catalogueDocument: true,
    folders: () => [folder],
    documents: () =>
      [...texts].map(([path, text]) => ({ uri: uri(path), version: versions.get(path)!, getText: () => text })),
    platform: {
      read: (_folder, path) => (path in onDisk ? { kind: 'text', text: onDisk[path]! } : { kind: 'missing' }),
    },
  });
  return {
    workspace,
    uri,
    assess(path) {
      const pending = workspace.pending(uri(path));
      if (pending !== undefined) workspace.accept(uri(path), pending, assessor.assess(pending.spec));
      return pending !== undefined;
    },
    view(path) {
      const view = workspace.view(uri(path));
      if (view === undefined) throw new Error(`${path} is not open`);
      return view;
    },
    change(path, text) {
      texts.set(path, text);
      versions.set(path, (versions.get(path) ?? 0) + 1);
      workspace.changed(uri(path));
    },
  };
}

/** The view of one text by itself, its numbers worked out. */
export function viewOf(text: string, others: Readonly<Record<string, string>> = {}): View {
  const specs = openSpecs({ 'test.booth': text }, others);
  specs.assess('test.booth');
  return specs.view('test.booth');
}

/** The views of all specs of a workspace, open or not. */
export function specsOf(specs: OpenSpecs, onDisk: Readonly<Record<string, string>>): View[] {
  return Object.entries(onDisk).flatMap(([path, text]) => specs.workspace.viewOfText(specs.uri(path), text) ?? []);
}
