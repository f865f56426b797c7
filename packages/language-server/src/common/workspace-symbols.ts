import { parse, type Statement, type SymbolKind } from '@boothwright/language';
import { SymbolKind as ProtocolKind, type SymbolInformation } from 'vscode-languageserver';
import { lineTable } from './line-table.js';
import type { WorkspaceFile } from './workspace-files.js';

const kinds: Readonly<Record<SymbolKind, ProtocolKind>> = {
  material: ProtocolKind.Struct,
  assembly: ProtocolKind.Class,
  let: ProtocolKind.Constant,
  noise: ProtocolKind.Event,
  impact: ProtocolKind.Event,
  appliance: ProtocolKind.Object,
  passage: ProtocolKind.Interface,
  obstacle: ProtocolKind.Object,
  neighbour: ProtocolKind.Namespace,
  booth: ProtocolKind.Module,
  door: ProtocolKind.Interface,
  window: ProtocolKind.Interface,
  vent: ProtocolKind.Interface,
  slit: ProtocolKind.Interface,
  hole: ProtocolKind.Interface,
  equipment: ProtocolKind.Object,
  item: ProtocolKind.Number,
  variant: ProtocolKind.Enum,
  measured: ProtocolKind.Object,
};

/** An editor narrows the list as one types on; more than these no one reads. */
const most = 1000;

/** Everything that is declared in the specs of a workspace and whose name or title holds the query's letters in order. */
export function workspaceSymbols(files: readonly WorkspaceFile[], query: string): SymbolInformation[] {
  const found: SymbolInformation[] = [];
  const matches = matcher(query);
  for (const { uri, text } of files) {
    const lines = lineTable(text);
    const visit = (statements: readonly Statement[], container: string | undefined): void => {
      for (const { fact, slots, block, from, to } of statements) {
        if (found.length >= most) return;
        const name = slots.get('name');
        const title = slots.get('title');
        const declares = fact?.declares;
        const isNamed = declares !== undefined && name?.kind === 'word';
        if (isNamed && (matches(name.word) || (title?.kind === 'string' && matches(title.value)))) {
          found.push({
            name: name.word,
            kind: kinds[declares],
            location: { uri, range: lines.rangeOf({ from, to }) },
            ...(container === undefined ? {} : { containerName: container }),
          });
        }
        if (block !== undefined) visit(block.statements, isNamed ? name.word : container);
      }
    };
    // Reading alone costs little; names need no checking.
    visit(parse(text, uri).tree.statements, undefined);
  }
  return found;
}

/** True for a text in which the letters of the query follow each other, whatever stands between and however written. */
function matcher(query: string): (text: string) => boolean {
  const letters = [...query.toLowerCase()].filter((letter) => letter !== ' ');
  return (text) => {
    let at = 0;
    for (const letter of text.toLowerCase()) if (letter === letters[at]) at++;
    return at === letters.length;
  };
}
