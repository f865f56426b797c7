import type { RequirementResult, ResultDocument, VariantResult } from '@boothwright/assessment';
import { formatQuantity } from '../../numbers/format-quantity.js';
import { requirementName, valueText } from '../../numbers/requirement-words.js';

interface Pair {
  readonly base: RequirementResult;
  readonly variant: RequirementResult;
}

/** What a variant does to the requirements of the base, and what it costs. */
export interface VariantEffects {
  readonly gained: readonly Pair[];
  readonly lost: readonly Pair[];
  /** Missed in both, and visibly nearer to the limit or farther from it. */
  readonly nearer: readonly Pair[];
  readonly farther: readonly Pair[];
  /** `mass 447 kg becomes 530 kg`. */
  readonly costs: readonly string[];
  readonly met: number;
}

export function variantEffects(result: ResultDocument, { requirements, changes }: VariantResult): VariantEffects {
  const pairs = result.requirements.flatMap((base): Pair[] => {
    const variant = requirements.find(({ text, booth }) => text === base.text && booth === base.booth);
    return variant === undefined ? [] : [{ base, variant }];
  });
  const both = pairs.filter(
    ({ base, variant }) =>
      base.verdict === 'missed' && variant.verdict === 'missed' && valueText(base) !== valueText(variant),
  );
  const asked: ReadonlySet<string> = new Set(
    result.requirements.map(({ kind }) => (kind === 'cost' ? 'cost with reserve' : kind)),
  );
  // What is only known as a lower bound may be as much worse as nobody knows: it is no step nearer, and no start of one away.
  const better = ({ base, variant }: Pair) => !variant.atLeast && (variant.margin ?? 0) > (base.margin ?? 0);
  const worse = ({ base, variant }: Pair) => !base.atLeast && (variant.margin ?? 0) <= (base.margin ?? 0);
  return {
    gained: pairs.filter(({ base, variant }) => base.verdict === 'missed' && variant.verdict === 'met'),
    lost: pairs.filter(({ base, variant }) => base.verdict === 'met' && variant.verdict === 'missed'),
    nearer: both.filter(better),
    farther: both.filter(worse),
    costs: changes.flatMap(({ what, unit, base, variant }) => {
      const figure = /: (mass|cost with reserve)$/.exec(what)?.[1];
      // What a requirement asks for stands among the requirements.
      if (figure === undefined || asked.has(figure) || base === null || variant === null) return [];
      const [before, after] = [formatQuantity(base, unit), formatQuantity(variant, unit)];
      return before === after ? [] : [`${figure} ${before} becomes ${after}`];
    }),
    met: requirements.filter(({ verdict }) => verdict === 'met').length,
  };
}

/** `co2 <= 1000 ppm (1156 ppm becomes 970 ppm)`, joined by commas. */
export function pairsText(pairs: readonly Pair[]): string {
  return pairs
    .map(({ base, variant }) => `${requirementName(base)} (${valueText(base)} becomes ${valueText(variant)})`)
    .join(', ');
}
