import type { BoothResult, ResultDocument } from '@boothwright/assessment';
import type { SourceRange, Statement, SymbolKind, Token } from '@boothwright/language';
import {
  assemblyLabel,
  boothLabel,
  budgetLabel,
  itemLabel,
  layerLabel,
  microphoneLabel,
  mountsLabel,
  mouthLabel,
  neighbourLabel,
  obstacleLabel,
  openingLabel,
  panelsLabel,
  requirementLabel,
  sessionLabel,
  sourceLabel,
  variantLabel,
  ventAirLabel,
  wayLabel,
} from '@boothwright/presentation';
import type { InlayHint, Range } from 'vscode-languageserver';
import { boothsAt } from './hover/booths-at.js';
import { assumedDefault } from './hover/value-section.js';
import type { Settings } from './settings.js';
import type { View } from './view.js';

interface Answer {
  readonly range: SourceRange;
  readonly label: string | undefined;
  readonly tooltip?: string;
  /** Where it stands on a line that is too long to see the end of; else behind the name. */
  readonly onLong?: number;
}

/** At the end of a line, what the line came to. */
export function inlayHints(view: View, range: Range, settings: Settings): InlayHint[] {
  const shown = settings.inlayHints;
  const { results } = view;
  const answers: Answer[] = [];
  if (results !== undefined) {
    if (shown.assemblies) answers.push(...assemblies(results));
    if (shown.layers) answers.push(...layers(results));
    if (shown.openings) answers.push(...openings(results));
    if (shown.noise) answers.push(...noises(results));
    if (shown.requirements) answers.push(...requirements(results));
    if (shown.booths) answers.push(...booths(view, results));
    if (shown.noise) answers.push(...symbols(view, 'neighbour', neighbourLabel));
    if (shown.inside) answers.push(...lines(view, inside));
    if (shown.moving) {
      answers.push(...lines(view, moving));
      answers.push(...symbols(view, 'passage', wayLabel), ...symbols(view, 'obstacle', obstacleLabel));
    }
    if (shown.money) answers.push(...lines(view, money), ...symbols(view, 'item', itemLabel));
    if (shown.variants) answers.push(...variants(view, results));
  }
  const told = [
    ...answers.map((answer) => ({ answer, prefix: view.stale ? 'was ' : '' })),
    ...(shown.defaults ? assumptions(view).map((answer) => ({ answer, prefix: '' })) : []),
  ];
  // Only what an editor shows is written out: it asks for a screenful of a long text.
  return told
    .filter(({ answer }) => answer.range.file === view.file && mayBeWithin(view, answer, range))
    .flatMap(({ answer, prefix }) => hint(view, answer, prefix) ?? [])
    .filter(({ position }) => within(position.line, range));
}

const within = (line: number, range: Range): boolean => range.start.line <= line && line <= range.end.line;

/** A hint stands on the line on which its place starts, or further on in a header that takes several. */
function mayBeWithin(view: View, { range: { from }, onLong }: Answer, range: Range): boolean {
  return (
    within(view.lines.positionAt(from).line, range) ||
    (onLong !== undefined && within(view.lines.positionAt(onLong).line, range))
  );
}

function hint(view: View, { range, label, tooltip, onLong }: Answer, prefix: string): InlayHint | undefined {
  // A place that shrank to nothing was deleted since.
  if (label === undefined || range.file !== view.file || range.from === range.to) return undefined;
  return {
    position: view.lines.positionAt(hintPlace(view, range.from, onLong)),
    label: `${prefix}${label}`,
    paddingLeft: true,
    ...(tooltip === undefined ? {} : { tooltip: { kind: 'markdown', value: tooltip } }),
  };
}

/** On a longer line the end is likely out of sight. */
const longestLine = 100;

/** The end of the line, or on a long one a place early on: as the answer says, or the end of the name and title. */
function hintPlace(view: View, from: number, onLong: number | undefined): number {
  const end = view.lines.lineEnd(from);
  if (view.lines.positionAt(end).character <= longestLine) return end;
  if (onLong !== undefined) return onLong;
  const { tokens } = view.parsed;
  let name = firstTokenFrom(view, from);
  while (name < tokens.length && tokens[name]!.from <= end && !isName(view, tokens[name]!)) name++;
  if (name >= tokens.length || tokens[name]!.from > end) return end;
  const next = tokens[name + 1];
  return next?.kind === 'string' ? next.to : tokens[name]!.to;
}

function firstTokenFrom({ parsed: { tokens } }: View, from: number): number {
  let low = 0;
  let high = tokens.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (tokens[middle]!.from < from) low = middle + 1;
    else high = middle;
  }
  return low;
}

function isName(view: View, { kind, from }: Token): boolean {
  return (
    kind === 'word' &&
    view.checked.symbols.symbols.some(({ nameRange }) => nameRange.file === view.file && nameRange.from === from)
  );
}

function assemblies(results: ResultDocument): Answer[] {
  return Object.values(results.assemblies).map((assembly) => ({
    range: assembly.range,
    label: assemblyLabel(assembly),
  }));
}

/** The layers of an assembly that stands in another one are told once, where they are written. */
function layers(results: ResultDocument): Answer[] {
  const written = Object.values(results.assemblies)
    .flatMap((assembly) => assembly.layers)
    .map((layer): [string, Answer] => [
      `${layer.range.file}\n${layer.range.from}`,
      { range: layer.range, label: layerLabel(layer) },
    ]);
  return [...new Map(written).values()];
}

function openings(results: ResultDocument): Answer[] {
  return Object.values(results.booths).flatMap((booth) => {
    // A door is told with its seals.
    return booth.paths
      .filter(({ kind }) => kind !== 'face' && kind !== 'door-seal')
      .map(({ name, range, kind }) => {
        const labels = [
          openingLabel(name, booth, results.grid.nominalHz),
          kind === 'vent' ? ventAirLabel(name, booth) : undefined,
        ].filter((label) => label !== undefined);
        return { range, label: labels.length === 0 ? undefined : labels.join(' · ') };
      });
  });
}

function noises(results: ResultDocument): Answer[] {
  const ranges = new Map<string, SourceRange>();
  const all = Object.entries(results.booths);
  for (const [, booth] of all) {
    for (const { name, range } of [...booth.noise.bySource, ...booth.noise.notPredicted]) ranges.set(name, range);
  }
  return [...ranges].map(([name, range]) => ({ range, label: perBooth(all, (booth) => sourceLabel(name, booth)) }));
}

/** With several booths each answer says which one it is about. */
function perBooth(
  booths: readonly (readonly [string, BoothResult])[],
  label: (booth: BoothResult) => string | undefined,
): string | undefined {
  const labels = booths.flatMap(([name, booth]) => {
    const text = label(booth);
    return text === undefined ? [] : [booths.length > 1 ? `${name}: ${text}` : text];
  });
  return labels.length === 0 ? undefined : labels.join('; ');
}

function requirements(results: ResultDocument): Answer[] {
  const lines = new Map<number, { range: SourceRange; labels: string[] }>();
  for (const requirement of results.requirements) {
    const line = lines.get(requirement.range.from) ?? { range: requirement.range, labels: [] };
    const label = requirementLabel(requirement);
    const several = requirement.booth !== null && Object.keys(results.booths).length > 1;
    line.labels.push(several ? `${requirement.booth}: ${label}` : label);
    lines.set(requirement.range.from, line);
  }
  return [...lines.values()].map(({ range, labels }) => ({ range, label: labels.join('; ') }));
}

function booths(view: View, results: ResultDocument): Answer[] {
  const all = Object.entries(results.booths);
  const session = view.checked.spec.session;
  const air = session && {
    range: session.range,
    label: perBooth(all, (booth) => (booth.air === null ? undefined : sessionLabel(booth.air))),
  };
  return [...all.map(([, booth]) => ({ range: booth.range, label: boothLabel(booth) })), ...(air ? [air] : [])];
}

type BoothLabel = (booth: BoothResult) => string | undefined;
type LineLabels = Readonly<Record<string, BoothLabel>>;

/** By the words of the lines that hold a line and its own. */
const inside: LineLabels = {
  'booth mic': microphoneLabel,
  'booth mouth': mouthLabel,
  'booth mounts': mountsLabel,
};
const moving: LineLabels = {
  'site doorway': (booth) => wayLabel('doorway', booth),
  'site lift': (booth) => wayLabel('lift', booth),
  'booth panels': panelsLabel,
};
const money: LineLabels = { budget: budgetLabel };

/** Answers on lines that declare no name. */
function lines(view: View, labels: LineLabels): Answer[] {
  const answers: Answer[] = [];
  const tops = new Set(Object.keys(labels).map((words) => words.split(' ')[0]));
  const walk = (statements: readonly Statement[], above: readonly Statement[]): void => {
    for (const statement of statements) {
      const path = [...above, statement];
      const label = labels[path.map(({ keyword }) => keyword.word).join(' ')];
      if (label !== undefined) {
        const range = { file: view.file, from: statement.from, to: statement.to };
        answers.push({ range, label: perBooth(boothsAt(view, path), label), onLong: statement.headerTo });
      }
      if (above.length === 0) walk(statement.block?.statements ?? [], path);
    }
  };
  walk(
    view.parsed.tree.statements.filter(({ keyword }) => tops.has(keyword.word)),
    [],
  );
  return answers;
}

/** Answers on lines that declare a name of a kind. */
function symbols(
  view: View,
  kind: SymbolKind,
  label: (name: string, booth: BoothResult) => string | undefined,
): Answer[] {
  const all = Object.entries(view.results?.booths ?? {});
  return view.checked.symbols.symbols
    .filter((symbol) => symbol.kind === kind)
    .map(({ name, nameRange }) => ({ range: nameRange, label: perBooth(all, (booth) => label(name, booth)) }));
}

function variants(view: View, results: ResultDocument): Answer[] {
  return view.checked.symbols.symbols
    .filter(({ kind }) => kind === 'variant')
    .map(({ name, nameRange }) => ({ range: nameRange, label: variantLabel(name, results) }));
}

/** How many facts of a block are assumed, named in the tooltip; the hover on the block's name says on what each rests. */
function assumptions(view: View): Answer[] {
  const byHeader = new Map<number, { range: SourceRange; names: string[] }>();
  for (const entry of view.checked.values) {
    const known = assumedDefault(entry);
    if (known === undefined || entry.value.range.file !== view.file) continue;
    const header = byHeader.get(entry.value.range.from) ?? { range: entry.value.range, names: [] };
    header.names.push(`${entry.label}: ${known.text}`);
    byHeader.set(entry.value.range.from, header);
  }
  return [...byHeader.values()].map(({ range, names }) => ({
    range,
    label: `${names.length} assumed`,
    tooltip: `Not given, and so assumed:\n\n${names.map((name) => `- ${name}`).join('\n')}`,
  }));
}
