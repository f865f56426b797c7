import type { JudgedContext } from '../assessment-context.js';
import type { AssessedBooth } from '../booth/assess-booth.js';
import type { RequirementResult } from '../result/result-document.js';

/** The missed requirements of one kind, each with the booth that misses it. */
export function missedRequirements(
  { booths, requirements }: JudgedContext,
  kind: 'co2' | 'floor-load' | 'panel-weight',
): { readonly requirement: RequirementResult; readonly assessed: AssessedBooth }[] {
  return requirements.flatMap((requirement) => {
    if (requirement.kind !== kind || requirement.verdict !== 'missed') return [];
    const assessed = booths.find(({ booth }) => booth.name === requirement.booth);
    return assessed === undefined ? [] : [{ requirement, assessed }];
  });
}
