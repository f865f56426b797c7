import type { ResultDocument } from '@boothwright/assessment';
import type { SymbolEntry } from '@boothwright/language';
import {
  assemblyHover,
  boothHover,
  code,
  equipmentHover,
  escapeMarkdown,
  formatFigures,
  materialHover,
  neighbourHover,
  openingHover,
  sourceHover,
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
  'variant',
];

/** What is known about a declared thing: its results, or its data, or at least its declaration. */
export function symbolSection(view: View, symbol: SymbolEntry, offset: number): string | undefined {
  if (symbol.kind === 'material') {
    const material = view.checked.spec.materials.get(symbol.name);
    return material && materialHover(material);
  }
  const found = view.results && resultOf(view.results, symbol);
  if (found !== undefined && found !== '') return ifStale(view, found);
  if (view.pending && hasResults.includes(symbol.kind)) return `${title(symbol)}\n\n_Being worked out._`;
  // Whoever points at the declaration sees it; whoever points elsewhere is shown its first line.
  const declaration = view.checked.files.find(({ file }) => file === symbol.range.file);
  const here = symbol.range.file === view.file && symbol.range.from <= offset && offset <= symbol.range.to;
  if (declaration === undefined || here) return title(symbol);
  const text = declaration.text.slice(symbol.range.from, symbol.range.to).split(/\r?\n/)[0]!;
  return `\`\`\`booth\n${text}\n\`\`\``;
}

function title(symbol: SymbolEntry): string {
  return `**${escapeMarkdown(symbol.name)}** ${escapeMarkdown(symbol.title ?? symbol.kind)}`;
}

function resultOf(results: ResultDocument, symbol: SymbolEntry): string | undefined {
  const context = {
    nominalHz: results.grid.nominalHz,
    defaults: results.defaults,
    requirements: results.requirements,
  };
  const { name } = symbol;
  const booths = Object.entries(results.booths);
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
      return booths
        .map(([boothName, booth]) => sourceHover(name, boothName, booth, context))
        .filter((part) => part !== undefined)
        .join('\n\n');
    case 'door':
    case 'window':
    case 'vent':
    case 'slit':
    case 'hole': {
      const booth = symbol.container === undefined ? undefined : results.booths[symbol.container];
      return booth && openingHover(name, symbol.container!, booth, context);
    }
    case 'neighbour':
      return booths
        .map(([boothName, booth]) => neighbourHover(name, boothName, booth))
        .filter((part) => part !== undefined)
        .join('\n\n');
    case 'equipment': {
      const booth = symbol.container === undefined ? undefined : results.booths[symbol.container];
      return booth && equipmentHover(name, booth);
    }
    case 'variant':
      return variantChanges(results, name);
    default:
      return undefined;
  }
}

/** What a variant changes, beside the base. */
function variantChanges(results: ResultDocument, name: string): string | undefined {
  const variant = results.variants[name];
  if (variant === undefined) return undefined;
  const figure = (value: number | null, unit: string) => (value === null ? '–' : `${formatFigures(value)} ${unit}`);
  const rows = variant.changes.map(
    ({ what, base, variant: changed, unit }) =>
      `| ${escapeMarkdown(what)} | ${figure(base, unit)} | ${figure(changed, unit)} |`,
  );
  const head = `**${escapeMarkdown(name)}** ${escapeMarkdown(variant.title ?? '')}`;
  if (rows.length === 0) return `${head}\n\nChanges nothing that is predicted`;
  return `${head}\n\n| | without ${code(name)} | with it |\n| :-- | --: | --: |\n${rows.join('\n')}`;
}
