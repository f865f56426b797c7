import type { Statement } from '@boothwright/language';
import { type DocumentSymbol, SymbolKind } from 'vscode-languageserver';
import type { View } from './view.js';

const kinds: Readonly<Record<string, SymbolKind>> = {
  material: SymbolKind.Struct,
  assembly: SymbolKind.Class,
  site: SymbolKind.Namespace,
  noise: SymbolKind.Event,
  impact: SymbolKind.Event,
  appliance: SymbolKind.Object,
  passage: SymbolKind.Interface,
  obstacle: SymbolKind.Object,
  neighbour: SymbolKind.Namespace,
  booth: SymbolKind.Module,
  door: SymbolKind.Interface,
  window: SymbolKind.Interface,
  vent: SymbolKind.Interface,
  slit: SymbolKind.Interface,
  hole: SymbolKind.Interface,
  mic: SymbolKind.Object,
  equipment: SymbolKind.Object,
  panels: SymbolKind.Struct,
  session: SymbolKind.Namespace,
  budget: SymbolKind.Namespace,
  item: SymbolKind.Number,
  let: SymbolKind.Constant,
  require: SymbolKind.Boolean,
  variant: SymbolKind.Enum,
};

/** The outline: what is declared, the blocks without a name, and the requirements, in the order of the text. */
export function documentSymbols(view: View): DocumentSymbol[] {
  return view.parsed.tree.statements.flatMap((statement) => entry(view, statement));
}

function entry(view: View, statement: Statement): DocumentSymbol[] {
  // A fact of two words, such as `require room-tone`, is of the kind of its first.
  const [first = ''] = statement.keyword.word.split(' ');
  const kind = kinds[first];
  if (kind === undefined || statement.fact === undefined) return [];
  // `floor` of the site is a fact and not a thing; only names, blocks and requirements belong into an outline.
  const named = nameOf(view, statement);
  if (named === undefined && statement.block === undefined && first !== 'require') return [];
  const selection = named ?? statement.keyword;
  const header = view.text.slice(statement.keyword.to, statement.headerTo).trim().replace(/\s+/g, ' ');
  const name =
    named === undefined ? `${statement.keyword.word}${isTitle(header) ? '' : ` ${header}`}`.trim() : named.name;
  const children = (statement.block?.statements ?? []).flatMap((inner) => entry(view, inner));
  return [
    {
      name,
      detail:
        named === undefined ? (isTitle(header) ? header.slice(1, -1) : '') : (named.title ?? statement.keyword.word),
      kind,
      range: view.lines.rangeOf(statement),
      selectionRange: view.lines.rangeOf(selection),
      ...(children.length > 0 ? { children } : {}),
    },
  ];
}

const isTitle = (header: string): boolean => /^"[^"]*"$/.test(header);

/** The declared name and the title behind it, as they stand in the header. */
function nameOf(
  view: View,
  statement: Statement,
): { name: string; title?: string; from: number; to: number } | undefined {
  if (statement.fact?.declares === undefined) return undefined;
  const symbol = view.checked.symbols.symbols.find(
    ({ nameRange }) =>
      nameRange.file === view.file && nameRange.from >= statement.keyword.to && nameRange.to <= statement.headerTo,
  );
  if (symbol !== undefined) {
    const { name, title, nameRange } = symbol;
    return { name, from: nameRange.from, to: nameRange.to, ...(title === undefined ? {} : { title }) };
  }
  // A line that the checker could not use still shows its name.
  for (const slot of statement.slots.values()) {
    if (slot.kind === 'word') return { name: slot.word, from: slot.from, to: slot.to };
  }
  return undefined;
}
