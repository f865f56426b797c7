import type { BoothResult, RequirementResult, ResultDocument } from '@boothwright/assessment';

/** A figure before and after a change of the text. */
export interface Change {
  readonly before: number;
  readonly after: number;
}

/** What a change of the text does, read off the results of both texts. */
export interface Promised {
  /** Of the assembly that changes most; null where none does. */
  readonly assembly: { readonly name: string; readonly stc: Change; readonly depthMm: Change } | null;
  /** Of the booth that is looked at; null in a file without one. */
  readonly booth: {
    readonly name: string;
    readonly stc: Change;
    readonly roomToneDbA: Change | null;
    readonly massKg: Change;
  } | null;
  /** The missed requirement that comes closest to its limit. */
  readonly requirement: {
    readonly text: string;
    readonly unit: string;
    readonly value: Change;
    readonly met: boolean;
    /** By how much it comes closer to its limit, in its own unit. */
    readonly gain: number;
    /** Share of what is missing that the change brings, at most 1. */
    readonly share: number;
  } | null;
  /** Requirements that were met and are not met any more. */
  readonly lost: readonly string[];
}

/** What is looked at: a booth, the first one when not given, and a requirement, the one that gains most when not given. */
export interface Looked {
  readonly booth?: string | undefined;
  readonly requirement?: RequirementResult | undefined;
}

/** Compares the results of two texts. */
export function promised(before: ResultDocument, after: ResultDocument, of: Looked = {}): Promised {
  const booth = of.booth ?? Object.keys(before.booths)[0];
  return {
    assembly: assemblyChange(before, after),
    booth: booth === undefined ? null : boothChange(booth, before.booths[booth], after.booths[booth]),
    requirement: requirementChange(before, after, of),
    lost: before.requirements.flatMap((each, at) =>
      each.verdict === 'met' && after.requirements[at]?.verdict !== 'met' ? [each.text] : [],
    ),
  };
}

function assemblyChange(before: ResultDocument, after: ResultDocument): Promised['assembly'] {
  let most: Promised['assembly'] = null;
  for (const [name, was] of Object.entries(before.assemblies)) {
    const is = after.assemblies[name];
    if (is === undefined) continue;
    const stc = { before: was.ratings.stc, after: is.ratings.stc };
    const depthMm = { before: was.thicknessM * 1000, after: is.thicknessM * 1000 };
    const differs =
      stc.before !== stc.after || depthMm.before !== depthMm.after || was.surfaceMassKgPerM2 !== is.surfaceMassKgPerM2;
    const moved = Math.abs(stc.after - stc.before);
    if (differs && (most === null || moved > Math.abs(most.stc.after - most.stc.before))) most = { name, stc, depthMm };
  }
  return most;
}

function boothChange(name: string, was: BoothResult | undefined, is: BoothResult | undefined): Promised['booth'] {
  if (was === undefined || is === undefined) return null;
  const [tone, newTone] = [was.noise.total.dBA?.value, is.noise.total.dBA?.value];
  return {
    name,
    stc: { before: was.ratings.stc, after: is.ratings.stc },
    roomToneDbA: tone === undefined || newTone === undefined ? null : { before: tone, after: newTone },
    massKg: { before: was.build.massKg, after: is.build.massKg },
  };
}

/** Requirements keep their order from text to text, since a fix touches none of them. */
function requirementChange(
  before: ResultDocument,
  after: ResultDocument,
  { booth, requirement }: Looked,
): Promised['requirement'] {
  const changes = before.requirements.flatMap((was, at) => {
    const is = after.requirements[at];
    if (was.verdict !== 'missed' || is === undefined || is.text !== was.text) return [];
    if (requirement !== undefined && requirement !== was) return [];
    return booth !== undefined && was.booth !== null && was.booth !== booth ? [] : compared(was, is);
  });
  return changes.reduce<Promised['requirement']>(
    (best, each) => (best === null || each.share > best.share ? each : best),
    null,
  );
}

function compared(was: RequirementResult, is: RequirementResult): NonNullable<Promised['requirement']>[] {
  const [value, now] = [was.value?.value, is.value?.value];
  if (value === undefined || now === undefined || was.margin === null || is.margin === null) return [];
  const gain = is.margin - was.margin;
  const missing = Math.abs(was.margin);
  const share = missing > 0 ? Math.min(1, gain / missing) : 0;
  return [
    { text: was.text, unit: was.unit, value: { before: value, after: now }, met: is.verdict === 'met', gain, share },
  ];
}
