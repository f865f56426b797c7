import type { BoothResult, ResultDocument } from '@boothwright/assessment';
import type { SymbolEntry } from '@boothwright/language';
import {
  assemblyHover,
  boothHover,
  cautionHover,
  equipmentHover,
  escapeMarkdown,
  itemHover,
  materialHover,
  neighbourHover,
  obstacleHover,
  openingHover,
  reflectionHover,
  sourceHover,
  variantHover,
  ventAirHover,
  wayHover,
} from '@boothwright/presentation';
import type { View } from '../view.js';
import { ifStale } from './if-stale.js';

const hasResults: readonly string[] = [
  'assembly',
  'booth',
  'noise',
  'door',
  'window',
  'vent',
  'slit',
  'hole',
  'equipment',
  'neighbour',
  'obstacle',
  'passage',
  'item',
  'variant',
];

/** What is known about a declared thing: its results, or its data, or at least its declaration. */
export function symbolSection(view: View, symbol: SymbolEntry, offset: number): string | undefined {
  if (symbol.kind === 'material') {
    const material = view.checked.spec.materials.get(symbol.name);
    return material && materialHover(material);
  }
  const found = view.results && resultOf(view.results, symbol);
  if (found !== undefined && found !== '') {
    return ifStale(view, found, isPending(view, symbol));
  }
  if (isPending(view, symbol) && hasResults.includes(symbol.kind)) return `${title(symbol)}\n\n_Being worked out._`;
  // Whoever points at the declaration sees it; whoever points elsewhere is shown its first line.
  const declaration = view.checked.files.find(({ file }) => file === symbol.range.file);
  const here = symbol.range.file === view.file && symbol.range.from <= offset && offset <= symbol.range.to;
  if (declaration === undefined || here) return title(symbol);
  const text = declaration.text.slice(symbol.range.from, symbol.range.to).split(/\r?\n/)[0]!;
  return `\`\`\`booth\n${text}\n\`\`\``;
}

/** True while the numbers of a thing are being worked out: build-ups come first and variants last. */
function isPending(view: View, { kind }: SymbolEntry): boolean {
  if (kind === 'assembly') return view.assembliesPending;
  return kind === 'variant' ? view.pending : view.basePending;
}

function title(symbol: SymbolEntry): string {
  return `**${escapeMarkdown(symbol.name)}** ${escapeMarkdown(symbol.title ?? symbol.kind)}`;
}

function resultOf(results: ResultDocument, symbol: SymbolEntry): string | undefined {
  const { requirements } = results;
  const context = { nominalHz: results.grid.nominalHz, defaults: results.defaults, requirements };
  const { name } = symbol;
  const booths = Object.entries(results.booths);
  const own = symbol.container === undefined ? undefined : results.booths[symbol.container];
  const ofEach = (tell: (boothName: string, booth: BoothResult) => string | undefined) =>
    booths.flatMap(([boothName, booth]) => tell(boothName, booth) ?? []).join('\n\n');
  const titled = (found: string) => (found === '' ? '' : `${title(symbol)}\n\n${found}`);
  switch (symbol.kind) {
    case 'assembly': {
      const assembly = results.assemblies[name];
      return assembly && assemblyHover(name, assembly, context);
    }
    case 'booth': {
      const booth = results.booths[name];
      return booth && boothHover(name, booth, context);
    }
    case 'noise':
    case 'impact':
      return ofEach((boothName, booth) => sourceHover(name, boothName, booth, context));
    case 'door':
    case 'window':
    case 'vent':
    case 'slit':
    case 'hole':
      if (own === undefined) return undefined;
      return [
        openingHover(name, symbol.container!, own, context),
        symbol.kind === 'vent' ? ventAirHover(name, own) : reflectionHover(name, own),
        ...cautionsOn(results, symbol),
      ]
        .filter(Boolean)
        .join('\n\n');
    case 'neighbour':
      return ofEach((boothName, booth) => neighbourHover(name, boothName, booth, requirements));
    case 'obstacle':
      return titled(ofEach((boothName, booth) => obstacleHover(name, boothName, booth)));
    case 'passage':
      return titled(ofEach((boothName, booth) => wayHover(name, boothName, booth)));
    case 'appliance':
      return titled(cautionsOn(results, symbol).join('\n\n'));
    case 'equipment':
      return own && equipmentHover(name, own, symbol.title);
    case 'item': {
      const found = booths.flatMap(([, booth]) => itemHover(name, symbol.title, booth) ?? []);
      return titled([...new Set(found)].join('\n\n'));
    }
    case 'variant':
      return variantHover(name, results);
    default:
      return undefined;
  }
}

/** Hazards that a thing brings with it; what belongs to any booth stands elsewhere. */
function cautionsOn(results: ResultDocument, { nameRange }: SymbolEntry): string[] {
  return results.cautions
    .filter(
      ({ severity, range }) =>
        severity !== 'note' &&
        range.file === nameRange.file &&
        range.from <= nameRange.from &&
        nameRange.to <= range.to,
    )
    .map(cautionHover);
}
