import type { Origin, Sourced } from '@boothwright/language';

const words: Readonly<Record<string, string>> = {
  published: 'published',
  measured: 'measured',
  'data-sheet': "maker's data sheet",
  'common-practice': 'common practice',
  'from-memory': 'from memory, not checked against a source',
  stated: 'stated without a source',
  derived: 'derived from other figures',
};

/** How strongly a figure is backed, in words. */
export function evidenceText(evidence: string): string {
  return words[evidence] ?? evidence;
}

/** Where a value came from, in one phrase. */
export function originText(origin: Origin): string {
  if (origin.kind === 'given') return 'given here';
  if (origin.kind === 'catalogue') return 'catalogue';
  return `default \`${origin.name}\``;
}

/**
 * How strongly a value is backed and what it rests on. A figure that is given may say so itself; otherwise the `source`
 * line of its material speaks for it.
 */
export function backing(
  origin: Origin,
  covering: Sourced<string> | undefined,
): { readonly evidence: string; readonly source: string } {
  if (origin.kind !== 'given') return { evidence: evidenceText(origin.evidence), source: origin.source };
  const line = covering?.origin.kind === 'default' ? undefined : covering;
  const evidence = origin.evidence ?? line?.origin.evidence ?? 'stated';
  const source = origin.source ?? line?.value ?? '';
  return { evidence: evidence === 'stated' && source !== '' ? 'stated with a source' : evidenceText(evidence), source };
}
