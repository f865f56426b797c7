import type { BoothSpec } from '@boothwright/language';
import { allower } from './allowed/apply-allowances.js';
import { assessAssembly } from './assembly/assess-assembly.js';
import type { AssessmentContext, JudgedContext } from './assessment-context.js';
import { nominalHz } from './bands/grid.js';
import { assessBooth } from './booth/assess-booth.js';
import { assemblyOutOfBounds } from './bounds/assembly-bounds.js';
import { boothOutOfBounds } from './bounds/booth-bounds.js';
import { firstReason, outOfBounds } from './bounds/bounds.js';
import { cautionsOf } from './cautions/cautions-of.js';
import { defaultsUsed } from './defaults-used.js';
import { findingsOf } from './findings/findings-of.js';
import { leavesOut } from './leaves-out.js';
import { entriesOf } from './memo/entries-of.js';
import { createMemo, type Memo } from './memo/memo.js';
import { steppingMemo } from './memo/stepping-memo.js';
import { withHours } from './noise/hours-result.js';
import { judgeRequirements } from './requirements/judge.js';
import type { ResultDocument, VariantResult } from './result/result-document.js';
import { siteAir } from './site-air.js';
import { textRange } from './text/text-range.js';
import { unreadParts } from './unread/unread-parts.js';
import { changesBetween } from './variants/changes.js';
import type { BaseResult, Watch } from './watch.js';

/** Remembers what it computed: assessing an edited text again computes only what depends on the edit. */
export interface Assessor {
  assess(spec: BoothSpec, watch?: Watch): ResultDocument;
  /** The bounded store behind it. */
  readonly memo: Memo;
}

export function createAssessor(memo: Memo = createMemo()): Assessor {
  let step: Watch['step'];
  // One for all assessments, for what is kept by it.
  const stepping = steppingMemo(memo, () => step?.());
  return {
    assess(spec, watch = {}) {
      step = watch.step;
      memo.reserve(entriesOf(spec));
      return document(spec, stepping, watch);
    },
    memo,
  };
}

export interface AssessOptions {
  /** A memory to use and to fill; a fresh one when absent. */
  readonly memo?: Memo;
}

/**
 * All numbers, verdicts, findings and cautions of a checked spec. Pure: the same spec gives the same document; no clock,
 * locale or random number enters.
 */
export function assess(spec: BoothSpec, { memo = createMemo() }: AssessOptions = {}): ResultDocument {
  return createAssessor(memo).assess(spec);
}

function document(spec: BoothSpec, memo: Memo, watch: Watch): ResultDocument {
  const base = assessOne(spec, memo, watch);
  const comments = allower(spec.allowances ?? []);
  const kept = comments.keep(base);
  const air = base.air;
  const own: BaseResult = {
    schema: 'boothwright-result/1',
    file: spec.file,
    grid: { kind: 'third-octave', nominalHz },
    air: {
      temperatureC: air.temperature,
      relativeHumidity: air.relativeHumidity,
      densityKgPerM3: air.density,
      soundSpeedMPerS: air.soundSpeed,
    },
    assemblies: base.assemblies,
    booths: base.booths,
    requirements: base.requirements,
    findings: kept.findings,
    cautions: kept.cautions,
    unread: unreadParts(spec),
    defaults: defaultsUsed(spec),
    leavesOut: leavesOut(spec, base.refused),
  };
  if (spec.variants.length > 0) watch.base?.(own);
  const variants = spec.variants.map((variant): [string, VariantResult] => {
    const result = assessOne(variant.spec, memo);
    const { findings, cautions } = comments.keep(result);
    return [
      variant.name,
      {
        title: variant.title ?? null,
        assemblies: result.assemblies,
        booths: result.booths,
        requirements: result.requirements,
        findings,
        cautions,
        unread: unreadParts(variant.spec),
        written: variant.written.map(({ text, range }) => ({ text, range: textRange(range) })),
        changes: changesBetween(base, result),
      },
    ];
  });
  return { ...own, variants: Object.fromEntries(variants), allowances: comments.results() };
}

function assessOne(spec: BoothSpec, memo: Memo, watch: Watch = {}) {
  const air = siteAir(spec);
  const refused = new Map<string, string>();
  const allowed = <T extends { readonly name: string }>(
    things: Iterable<T>,
    bound: 'assemblies' | 'booths',
    reason: (thing: T) => string | null,
  ) =>
    [...things].filter((thing, index) => {
      const why = firstReason(outOfBounds(`the number of ${bound}`, index + 1, bound), reason(thing));
      if (why !== null) refused.set(thing.name, why);
      return why === null;
    });
  const assemblies = allowed(spec.assemblies.values(), 'assemblies', ({ name, layers }) =>
    assemblyOutOfBounds(name, layers),
  );
  const ofAssemblies = Object.fromEntries(
    assemblies.map((assembly) => [assembly.name, assessAssembly(assembly, air, memo)]),
  );
  watch.assemblies?.(ofAssemblies);
  const booths = allowed(spec.booths, 'booths', (booth) => boothOutOfBounds(booth, spec)).map((booth) =>
    withHours(assessBooth(booth, spec, air, memo), spec),
  );
  const context: AssessmentContext = {
    spec: { ...spec, assemblies: new Map(assemblies.map((assembly) => [assembly.name, assembly])) },
    air,
    memo,
    assemblies: ofAssemblies,
    booths,
    refused,
  };
  const requirements = judgeRequirements(context);
  const judged: JudgedContext = { ...context, requirements };
  return {
    air,
    refused,
    assemblies: context.assemblies,
    booths: Object.fromEntries(booths.map((booth) => [booth.booth.name, booth.result])),
    unknownFans: new Set(booths.filter(({ unknownFans }) => unknownFans.length > 0).map(({ booth }) => booth.name)),
    requirements,
    findings: findingsOf(judged),
    cautions: cautionsOf(judged),
  };
}
