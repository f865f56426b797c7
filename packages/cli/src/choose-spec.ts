import { type BoothSpec, didYouMean } from '@boothwright/language';
import type { Complaint } from './complaint.js';

/** The spec with the variant that was asked for in place of the base. */
export function chooseSpec(
  spec: BoothSpec,
  variant: string | undefined,
  place: string,
): { readonly spec: BoothSpec } | { readonly complaint: Complaint } {
  if (variant === undefined) return { spec };
  const found = spec.variants.find(({ name }) => name === variant);
  if (found) return { spec: { ...found.spec, variants: [] } };
  const names = spec.variants.map(({ name }) => name);
  const near = didYouMean(variant, names);
  const help =
    names.length === 0
      ? 'the specification declares no variant; leave --variant out'
      : `${near ? `did you mean ${near}? ` : ''}the specification declares ${names.join(', ')}`;
  return {
    complaint: {
      id: 'unknown-variant',
      place,
      message: `found no variant ${variant}, expected one that is declared`,
      help,
    },
  };
}
