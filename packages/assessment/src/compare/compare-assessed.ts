import type { BoothSpec } from '@boothwright/language';
import type { Caution, Finding, ResultDocument } from '../result/result-document.js';
import { assemblyFigures } from './assembly-figures.js';
import { assemblyCurves, bandChanges, boothCurves } from './band-changes.js';
import { boothFigures } from './booth-figures.js';
import type { ComparisonDocument, FactChange } from './comparison-document.js';
import { effectsOf, largestFirst } from './effects.js';
import { diffFacts } from './facts/diff-facts.js';
import { sameThings } from './facts/same-things.js';
import { renamingOf } from './renaming.js';
import { requirementChanges } from './requirement-changes.js';
import { smallestSteps } from './smallest-steps.js';
import { toldChanges } from './told-changes.js';

/** One side: a checked spec with its result. */
export interface Assessed {
  /** As whoever asks names it. */
  readonly name: string;
  readonly variant?: string | undefined;
  readonly spec: BoothSpec;
  readonly result: ResultDocument;
}

/**
 * What changed from `old` to `now` and what that does. Pure. Layout, order of blocks and names of materials and build-ups are no
 * change; what could not be read on one side is not judged there and stands in `unread`.
 */
export function compareAssessed(old: Assessed, now: Assessed): ComparisonDocument {
  const same = sameThings(old.spec, now.spec);
  const booths = sameBooths(old.spec, now.spec);
  const renaming = renamingOf(same.renamed, booths);
  const requirements = requirementChanges(old.result.requirements, now.result.requirements, renaming);
  const facts = [...diffFacts(old.spec, now.spec, same), ...requirementFacts(old, now, renaming.words)];

  const ofBooths = Object.entries(old.result.booths).flatMap(([name, before]) => {
    const after = now.result.booths[renaming.booth(name) as string];
    return after === undefined ? [] : [{ name: renaming.booth(name) as string, before, after }];
  });
  const ofAssemblies = Object.entries(old.result.assemblies).flatMap(([name, before]) => {
    const after = now.result.assemblies[renaming.assembly(name)];
    return after === undefined ? [] : [{ name: renaming.assembly(name), before, after }];
  });
  const effects = largestFirst([
    ...ofBooths.flatMap(({ name, before, after }) => effectsOf(name, boothFigures(before), boothFigures(after))),
    ...ofAssemblies.flatMap(({ name, before, after }) =>
      effectsOf(name, assemblyFigures(before), assemblyFigures(after)),
    ),
  ]);
  const bands = largestFirst([
    ...ofBooths.flatMap(({ name, before, after }) => bandChanges(name, boothCurves(before), boothCurves(after))),
    ...ofAssemblies.flatMap(({ name, before, after }) =>
      bandChanges(name, assemblyCurves(before), assemblyCurves(after)),
    ),
  ]);
  const { words } = renaming;
  const finding = ({ message }: Finding) => message;
  const caution = ({ hazard, number, severity }: Caution) => `${severity} ${hazard} ${number ?? ''}`;
  const findings = toldChanges(old.result.findings, now.result.findings, (one) => words(finding(one)), finding);
  const cautions = toldChanges(old.result.cautions, now.result.cautions, (one) => words(caution(one)), caution);
  const told = [findings, cautions].some((one) => one.gained.length + one.lost.length + one.changed.length > 0);
  return {
    schema: 'boothwright-comparison/1',
    old: sideOf(old),
    new: sideOf(now),
    sameFacts: facts.length === 0,
    sameEffect: requirements.length + effects.length + bands.length === 0 && !told,
    facts,
    renamed: same.renamed,
    requirements,
    effects,
    bands,
    findings,
    cautions,
    steps: smallestSteps,
  };
}

function sideOf({ name, variant, result }: Assessed): ComparisonDocument['old'] {
  return { name, variant: variant ?? null, unread: result.unread };
}

/** Booths by name; one that is left over on each side is the same under another name. */
function sameBooths(old: BoothSpec, now: BoothSpec): ReadonlyMap<string, string> {
  const names = new Set(now.booths.map(({ name }) => name));
  const left = old.booths.filter(({ name }) => !names.has(name));
  const had = new Set(old.booths.map(({ name }) => name));
  const came = now.booths.filter(({ name }) => !had.has(name));
  const [before, after] = [left[0], came[0]];
  return left.length === 1 && came.length === 1 && before !== undefined && after !== undefined
    ? new Map([[before.name, after.name]])
    : new Map();
}

/** Lines that ask for something and differ; one whose limit moved stands once. */
function requirementFacts(old: Assessed, now: Assessed, words: (text: string) => string): FactChange[] {
  const before = old.spec.requirements.map(({ text, range }) => ({ text, words: words(text), range }));
  const after = now.spec.requirements.map(({ text, range }) => ({ text, words: text, range }));
  const gone = without(before, after);
  const come = without(after, before);
  const subject = (text: string) => text.replace(/[<>]=.*$/, '').trim();
  const facts: FactChange[] = [];
  for (const one of gone) {
    const at = come.findIndex((other) => subject(other.words) === subject(one.words));
    const [other] = at < 0 ? [] : come.splice(at, 1);
    facts.push(fact(one, other));
  }
  return [...facts, ...come.map((one) => fact(undefined, one))];
}

interface Asked {
  readonly text: string;
  readonly words: string;
  readonly range: { readonly file: string; readonly from: number; readonly to: number };
}

function fact(old: Asked | undefined, now: Asked | undefined): FactChange {
  const bare = (one: Asked | undefined) => one?.text.replace(/^require /, '') ?? null;
  const [oldRange, newRange] = [old?.range ?? null, now?.range ?? null];
  return { place: 'require', what: '', old: bare(old), new: bare(now), oldRange, newRange };
}

/** Entries of `list` beyond those of `other`, each as often as it stands there. */
function without(list: readonly Asked[], other: readonly Asked[]): Asked[] {
  const left = other.map(({ words }) => words);
  return list.filter(({ words }) => {
    const at = left.indexOf(words);
    if (at >= 0) left.splice(at, 1);
    return at < 0;
  });
}
