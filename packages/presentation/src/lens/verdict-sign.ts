import type { RequirementResult } from '@boothwright/assessment';

/**
 * `✗ 2 of 8 requirements missed, 1 not assessed`, `✓ all 8 requirements met`. The sign and the words both tell it, so
 * that neither colour nor shape has to be seen.
 */
export function verdictSign(requirements: readonly RequirementResult[]): string {
  const of = (verdict: string) => requirements.filter((requirement) => requirement.verdict === verdict).length;
  const total = requirements.length;
  const [missed, open] = [of('missed'), of('not-assessed')];
  if (total === 0) return 'nothing required';
  const noun = total === 1 ? 'requirement' : 'requirements';
  if (missed > 0) return `✗ ${missed} of ${total} ${noun} missed${open > 0 ? `, ${open} not assessed` : ''}`;
  if (open > 0) return `? ${open} of ${total} ${noun} not assessed`;
  return total === 1 ? '✓ its requirement met' : `✓ all ${total} requirements met`;
}
