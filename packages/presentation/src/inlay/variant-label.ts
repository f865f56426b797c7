import type { ResultDocument } from '@boothwright/assessment';

/** `meets 8 of 8, 5 without`; undefined for a variant that is not known or where nothing is asked. */
export function variantLabel(name: string, results: ResultDocument): string | undefined {
  const variant = results.variants[name];
  if (variant === undefined || variant.requirements.length === 0) return undefined;
  const met = (requirements: ResultDocument['requirements']) =>
    requirements.filter(({ verdict }) => verdict === 'met').length;
  return `meets ${met(variant.requirements)} of ${variant.requirements.length}, ${met(results.requirements)} without`;
}
