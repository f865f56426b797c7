import type { RequirementResult, TextRange } from '@boothwright/assessment';

export interface DecayLimit {
  readonly hz: number;
  readonly seconds: number;
  readonly range: TextRange;
}

/** What requirements allow sound to ring in a booth, of those that name a band. */
export function decayLimits(booth: string, requirements: readonly RequirementResult[]): readonly DecayLimit[] {
  return requirements.flatMap((requirement) => {
    if (requirement.kind !== 'reverberation' || (requirement.booth !== null && requirement.booth !== booth)) return [];
    const band = /\bat\s+([\d.]+)\s*(k?)Hz\s*$/.exec(requirement.text);
    if (band === null) return [];
    return [
      { hz: Number(band[1]) * (band[2] === 'k' ? 1000 : 1), seconds: requirement.limit, range: requirement.range },
    ];
  });
}
