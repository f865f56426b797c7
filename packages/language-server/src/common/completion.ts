import {
  contextAt,
  type DimensionName,
  dimensionWords,
  type Expectation,
  type Fact,
  type Material,
  type SymbolEntry,
  type SymbolKind,
  type UnitEntry,
  units,
  vocabulary,
} from '@boothwright/language';
import { assemblyLabel } from '@boothwright/presentation';
import { type CompletionItem, CompletionItemKind, MarkupKind, type Position, type Range } from 'vscode-languageserver';
import { materialAccount } from './material-account.js';
import { materialFacts } from './material-facts.js';
import { statementOnLine } from './statement-on-line.js';
import type { View } from './view.js';

/** What an item needs to be completed by its documentation, only when it is looked at. */
interface ItemData {
  readonly uri: string;
  readonly material: string;
}

const factsByKeyword = new Map(vocabulary.flatMap(({ facts }) => facts.map((fact) => [fact.keyword, fact])));
const faces = ['front', 'back', 'left', 'right', 'roof', 'floor', 'walls'];
const symbolItemKind: Readonly<Record<SymbolKind, CompletionItemKind>> = {
  material: CompletionItemKind.Struct,
  assembly: CompletionItemKind.Class,
  let: CompletionItemKind.Constant,
  noise: CompletionItemKind.Event,
  impact: CompletionItemKind.Event,
  appliance: CompletionItemKind.Event,
  passage: CompletionItemKind.Interface,
  obstacle: CompletionItemKind.Interface,
  neighbour: CompletionItemKind.Module,
  booth: CompletionItemKind.Module,
  door: CompletionItemKind.Interface,
  window: CompletionItemKind.Interface,
  vent: CompletionItemKind.Interface,
  slit: CompletionItemKind.Interface,
  hole: CompletionItemKind.Interface,
  equipment: CompletionItemKind.Class,
  item: CompletionItemKind.Value,
  variant: CompletionItemKind.Enum,
  measured: CompletionItemKind.Event,
};

/** What may stand at a position, and nothing else. */
export function completion(view: View, position: Position, currency = ''): CompletionItem[] {
  const offset = view.lines.offsetAt(position);
  const context = contextAt(view.parsed, offset);
  if (context.quiet) return [];
  const range = view.lines.rangeOf(context.replace);
  const fact = statementOnLine(view, offset)?.fact;
  const before = view.parsed.tokens.findLast(({ to }) => to <= context.replace.from)?.text ?? '';
  // Behind `require` and the like each choice makes a line of its own.
  const line = (word: string) => factsByKeyword.get(`${before} ${word}`) ?? fact;
  const items = context.expects.flatMap((expectation) => propose(view, expectation, line, currency));
  const seen = new Set<string>();
  return items.flatMap((item) => {
    if (seen.has(item.label)) return [];
    seen.add(item.label);
    return [{ ...item, textEdit: { range: range satisfies Range, newText: item.insertText ?? item.label } }];
  });
}

/** Adds the full account of a material to its item. */
export function completeItem(item: CompletionItem, viewOf: (uri: string) => View | undefined): CompletionItem {
  const data = item.data as ItemData | undefined;
  if (data === undefined) return item;
  const material = viewOf(data.uri)?.checked.spec.materials.get(data.material);
  if (material === undefined) return item;
  return { ...item, documentation: { kind: MarkupKind.Markdown, value: materialAccount(material) } };
}

function propose(
  view: View,
  expectation: Expectation,
  line: (word: string) => Fact | undefined,
  currency: string,
): CompletionItem[] {
  switch (expectation.kind) {
    case 'fact':
      return expectation.facts.flatMap((fact, at) => {
        if (fact.keyword !== '') return [factItem(fact, at)];
        // A line that starts with no word of its own: in a variant, with what is to be changed.
        return fact.parts[0]?.kind === 'path' ? pathItems(view, []) : [];
      });
    case 'layer':
      return materialItems(view);
    case 'reference':
      return expectation.to.flatMap((kind) => (kind === 'material' ? materialItems(view) : symbolItems(view, kind)));
    case 'quantity':
      return symbolItems(view, 'let');
    case 'unit':
      return unitItems(expectation.dimension, currency);
    case 'choice':
      return expectation.options.map((option, at) => word(option, CompletionItemKind.EnumMember, at, line(option)));
    case 'face':
      return faces.map((face, at) => word(face, CompletionItemKind.EnumMember, at, line(face)));
    case 'word':
      return [word(expectation.word, CompletionItemKind.Keyword, 0, line(expectation.word))];
    case 'path':
      return pathItems(view, expectation.typed);
    case 'path-or-catalogue':
      return [
        {
          ...word('catalog', CompletionItemKind.Module, 0),
          detail: 'the materials that ship with Boothwright',
          documentation: useDocumentation,
        },
        {
          ...word('"./', CompletionItemKind.File, 1),
          detail: 'a file of this folder, such as "./materials.booth"',
          documentation: useDocumentation,
        },
      ];
    case 'clock':
    case 'new-name':
    case 'text':
      return [];
  }
}

const useDocumentation = 'Brings in what another file declares, or the catalogue of materials.';

/** Earlier in a list of options means earlier in the completion list. */
const rank = (group: number, at: number): string => `${group}${String(at).padStart(3, '0')}`;

/** A word of a line is explained by what the line means. */
function word(label: string, kind: CompletionItemKind, at: number, line?: Fact): CompletionItem {
  return {
    label,
    kind,
    sortText: rank(1, at),
    ...(line === undefined ? {} : { detail: line.example, documentation: line.documentation }),
  };
}

function factItem(fact: Fact, at: number): CompletionItem {
  return {
    label: fact.keyword,
    kind: CompletionItemKind.Keyword,
    detail: fact.example,
    documentation: fact.documentation,
    // What a block cannot do without comes first.
    sortText: rank(fact.required === true ? 2 : 3, at),
    insertText: fact.parts.length > 0 ? `${fact.keyword} ` : fact.keyword,
  };
}

function materialItems(view: View): CompletionItem[] {
  return [...view.checked.spec.materials.values()].map((material: Material, at) => ({
    label: material.name,
    kind: CompletionItemKind.Struct,
    labelDetails: { description: materialFacts(material) },
    detail: `${material.kind}, ${material.fromCatalogue ? 'from the catalogue' : 'of this spec'}`,
    // The user's own come before the catalogue's.
    sortText: rank(material.fromCatalogue ? 2 : 1, at),
    data: { uri: view.uri, material: material.name } satisfies ItemData,
  }));
}

function symbolItems(view: View, kind: SymbolKind): CompletionItem[] {
  return view.checked.symbols.symbols
    .filter((symbol) => symbol.kind === kind)
    .map((symbol, at) => ({ ...symbolItem(view, symbol), sortText: rank(1, at) }));
}

function symbolItem(view: View, symbol: SymbolEntry): CompletionItem {
  const assembly = symbol.kind === 'assembly' ? view.results?.assemblies[symbol.name] : undefined;
  return {
    label: symbol.name,
    kind: symbolItemKind[symbol.kind],
    detail: symbol.title === undefined ? symbol.kind : `${symbol.kind}, ${symbol.title}`,
    // What a wall or roof of it would come to is known already.
    ...(assembly === undefined ? {} : { labelDetails: { description: assemblyLabel(assembly) } }),
    documentation: { kind: MarkupKind.Markdown, value: declarationText(view, symbol) },
  };
}

/** The first line of a declaration. */
function declarationText({ checked }: View, { range }: SymbolEntry): string {
  const text = checked.files.find(({ file }) => file === range.file)?.text ?? '';
  return `\`\`\`booth\n${text.slice(range.from, range.to).split(/\r?\n/, 1)[0]}\n\`\`\``;
}

function unitItems(dimension: DimensionName | 'any' | 'amount', currency: string): CompletionItem[] {
  const fits = (each: DimensionName) =>
    dimension === 'any' ||
    each === dimension ||
    (dimension === 'amount' && (each === 'length' || each === 'mass-per-area'));
  const isListed = units.some(({ unit }) => unit === currency);
  const own: UnitEntry = { unit: currency, dimension: 'money', documentation: 'currency' };
  return [...units, ...(currency === '' || isListed ? [] : [own])]
    .filter((entry) => fits(entry.dimension))
    .map((entry, at) => ({
      label: entry.unit,
      kind: CompletionItemKind.Unit,
      detail: entry.documentation,
      documentation: `${dimensionWords[entry.dimension].noun}, such as ${dimensionWords[entry.dimension].example}`,
      // The currency that the settings name comes before all others.
      sortText: rank(entry.unit === currency ? 0 : entry.common === true ? 1 : 2, at),
    }));
}

/** The next step of a path such as `alcove.entry.gap`: a thing in the booth, or one of the facts of its block. */
function pathItems(view: View, typed: readonly string[]): CompletionItem[] {
  const [first, second] = typed;
  const { symbols } = view.checked.symbols;
  const unnamed = ['site', 'session', 'budget'].filter((block) =>
    view.parsed.tree.statements.some(({ fact }) => fact?.keyword === block),
  );
  const placed = (items: CompletionItem[]) => items.map((item, at) => ({ ...item, sortText: rank(1, at) }));
  if (first === undefined) {
    const kinds: readonly SymbolKind[] = ['let', 'booth', 'material'];
    return placed(
      symbols
        .filter(({ kind, fromCatalogue }) => kinds.includes(kind) && !fromCatalogue)
        .map((symbol) => symbolItem(view, symbol)),
    );
  }
  if (unnamed.includes(first))
    return second === undefined ? placed(unnamedItems(view, first)) : inUnnamed(symbols, typed);
  const head = symbols.find(({ name, kind }) => name === first && (kind === 'booth' || kind === 'material'));
  if (head === undefined) return [];
  if (second === undefined) {
    const inside = head.kind === 'booth' ? symbols.filter(({ container }) => container === head.name) : [];
    return placed([...inside.map((symbol) => symbolItem(view, symbol)), ...pathFacts(head.kind)]);
  }
  const thing = symbols.find(({ name, container }) => name === second && container === head.name);
  if (thing !== undefined && typed.length === 2) return placed(pathFacts(thing.kind));
  return [];
}

/** Symbol kinds of the lines with names in the blocks that have none. */
const namedIn: Readonly<Record<string, readonly SymbolKind[]>> = {
  site: ['noise', 'impact', 'appliance', 'passage', 'obstacle', 'neighbour'],
  budget: ['item'],
};

function unnamedItems(view: View, block: string): CompletionItem[] {
  const named = view.checked.symbols.symbols.filter(({ kind }) => namedIn[block]?.includes(kind));
  return [...named.map((symbol) => symbolItem(view, symbol)), ...pathFacts(block)];
}

/** Behind `site.stair`: the facts of its block. */
function inUnnamed(symbols: readonly SymbolEntry[], [block, name, ...more]: readonly string[]): CompletionItem[] {
  const thing = symbols.find((symbol) => symbol.name === name && namedIn[block!]?.includes(symbol.kind));
  return thing === undefined || more.length > 0 ? [] : pathFacts(thing.kind === 'impact' ? 'noise' : thing.kind);
}

/** The facts of a block by which a variant can change one value; those with a block of their own are things. */
function pathFacts(block: string): CompletionItem[] {
  const facts = vocabulary.find(({ name }) => name === block)?.facts ?? [];
  return facts
    .filter((fact) => fact.keyword !== '' && fact.block === undefined)
    .map((fact) => ({
      label: fact.keyword.replace(' ', '.'),
      kind: CompletionItemKind.Field,
      detail: fact.example,
      documentation: fact.documentation,
    }));
}
