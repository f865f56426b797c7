import type { ComparisonDocument, ResultDocument, TextRange } from '@boothwright/assessment';
import { type SourceRange, type Statement, symbolAt } from '@boothwright/language';
import { elementAt, headlineFacts, lossSection, sheetOf, sheetSize, verdictSign } from '@boothwright/presentation';
import { boothsAt } from '../hover/booths-at.js';
import { statementsAt } from '../statements-at.js';
import type { View } from '../view.js';
import type { Sheet, SheetAsked, SheetFold, SheetPlace } from './protocol.js';
import { versionOf } from './version-of.js';

const mostProblems = 5;

/**
 * What the live sheet shows for a cursor. `partial` are the numbers of a text that is broken and was so from the start, as
 * far as it could be read; `comparison` is what changed since the last commit.
 */
export function sheet(view: View, asked: SheetAsked, partial?: ResultDocument, comparison?: ComparisonDocument): Sheet {
  const results = view.results ?? partial;
  const offset = view.lines.offsetAt(asked.position);
  const statements = statementsAt(view.parsed, offset);
  const variant = results && variantAt(view, statements, results);
  const shown = results && (variant === undefined ? results : { ...results, ...results.variants[variant] });
  const [named] = shown === undefined ? [] : boothsOf(view, statements, shown);
  const common = {
    uri: view.uri,
    state: stateOf(view, results, partial, variant),
    variant: variant ?? null,
    ...problemsOf(view),
  };
  if (shown === undefined || named === undefined)
    return { ...common, booth: null, title: null, verdict: '', facts: [], folds: [] };
  const [name, booth] = named;
  const own = shown.requirements.filter((each) => each.booth === null || each.booth === name);
  const headline = {
    ...common,
    booth: name,
    title: booth.title,
    verdict: verdictSign(own),
    facts: headlineFacts(booth).map(({ range, ...fact }) => ({ ...fact, place: range ? placeOf(view, range) : null })),
  };
  // Numbers that are about to come are not drawn twice: what the editor shows stays until then.
  const isEarly = common.state === 'pending' && Object.keys(asked.known).length > 0;
  if (isEarly && view.assembliesPending) return { ...headline, folds: null };
  const element = elementAt(shown, name, booth, {
    file: view.file,
    assembly: assemblyAt(view, offset),
    headers: statements.map(({ from, headerTo }) => ({ from, to: headerTo })).toReversed(),
  });
  const spec = view.checked.spec.variants.find((each) => each.name === variant)?.spec ?? view.checked.spec;
  const input = {
    results: shown,
    name,
    booth,
    element,
    spec: spec.booths.find((each) => each.name === name),
    budget: spec.budget,
    sessionRange: spec.session?.range,
    size: sheetSize(asked.width),
    comparison: variant === undefined ? comparison : undefined,
  };
  // Build-ups are there long before the booths, and what is typed into one shows there first.
  const sections = isEarly ? [lossSection(input)] : sheetOf(input);
  const folds = sections.map(({ id, title, summary, html, marks }): SheetFold => {
    const version = versionOf(html);
    const isWanted = !asked.shut.includes(id) && asked.known[id] !== version;
    return {
      id,
      title,
      summary,
      version,
      ...(isWanted ? { html } : {}),
      marks: marks.map((range) => placeOf(view, range)),
    };
  });
  return { ...headline, folds };
}

function stateOf(
  view: View,
  results: ResultDocument | undefined,
  partial: ResultDocument | undefined,
  variant: string | undefined,
): Sheet['state'] {
  if (results === undefined) return view.pending ? 'pending' : 'empty';
  if (view.results === undefined && partial !== undefined) return 'partial';
  // The numbers of the spec itself are there before those of its variants.
  const isPending = variant === undefined ? view.basePending : view.pending;
  return view.stale ? 'stale' : isPending ? 'pending' : 'fresh';
}

/** The booth in whose block the cursor stands, else the first, with its numbers in what is shown. */
function boothsOf(view: View, statements: readonly Statement[], shown: ResultDocument) {
  return boothsAt({ ...view, results: shown }, statements);
}

/** The variant in whose block the cursor stands. */
function variantAt(
  { checked, file }: View,
  [block]: readonly Statement[],
  results: ResultDocument,
): string | undefined {
  if (block?.keyword.word !== 'variant') return undefined;
  const symbol = checked.symbols.symbols.find(
    ({ kind, nameRange }) =>
      kind === 'variant' && nameRange.file === file && nameRange.from >= block.from && nameRange.to <= block.headerTo,
  );
  return symbol !== undefined && symbol.name in results.variants ? symbol.name : undefined;
}

/** The build-up that is named at the cursor, also where it is only used. */
function assemblyAt({ checked, file }: View, offset: number): string | undefined {
  const symbol = symbolAt(checked.symbols, file, offset)?.symbol;
  return symbol?.kind === 'assembly' ? symbol.name : undefined;
}

function problemsOf(view: View): Pick<Sheet, 'problems' | 'moreProblems'> {
  const errors = view.checked.problems.filter(({ severity }) => severity === 'error');
  return {
    problems: errors.slice(0, mostProblems).map(({ message, range }) => ({ message, place: placeOf(view, range) })),
    moreProblems: Math.max(0, errors.length - mostProblems),
  };
}

/** Where a thing stands: from the line that declares it to the last line of its block. */
function placeOf(view: View, range: SourceRange | TextRange): SheetPlace | null {
  const found = view.locate(range);
  if (found === undefined) return null;
  const { start, end } = found.range;
  const block = range.file === view.file ? statementsAt(view.parsed, range.from).at(-1) : undefined;
  const isItsHeader = block !== undefined && range.from <= block.headerTo;
  const last = isItsHeader ? view.lines.positionAt(Math.max(range.to, block.to)) : end;
  return { uri: found.uri, line: start.line, endLine: last.line };
}
