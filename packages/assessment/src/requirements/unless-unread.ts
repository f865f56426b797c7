import type { AssemblyLayer, Booth, BoothSpec, Requirement, Unread } from '@boothwright/language';
import type { RequirementResult } from '../result/result-document.js';

/**
 * Withdraws a verdict, met or missed, that depends on a part of the text that could not be read: a wall with a misspelt
 * layer is not the wall that was meant.
 */
export function unlessUnread(result: RequirementResult, requirement: Requirement, spec: BoothSpec): RequirementResult {
  if (result.verdict === 'not-assessed') return result;
  const booth = spec.booths.find((candidate) => candidate.name === result.booth);
  const unread = spec.unread.find((part) => depends(requirement, booth, part));
  if (unread === undefined) return result;
  return {
    ...result,
    verdict: 'not-assessed',
    margin: null,
    withinRange: false,
    explanation: `Not judged, because the text has an error in what it depends on: ${unread.message}.`,
  };
}

function depends(requirement: Requirement, booth: Booth | undefined, { part, name }: Unread): boolean {
  const named = (used: readonly string[]) => name === undefined || used.includes(name);
  const parts = requirement.kind === 'rating' ? [requirement.assembly] : booth === undefined ? [] : usedBy(booth);
  switch (part) {
    case 'require':
      // A requirement that could not be read is not among those that are judged.
      return false;
    case 'budget':
      return requirement.kind === 'cost';
    case 'use':
    case 'let':
    case 'outside':
      return true;
    case 'booth':
      return booth !== undefined && named([booth.name]);
    case 'assembly':
      return requirement.kind !== 'cost' && named(parts.flatMap((built) => built.name ?? []));
    case 'material':
      return requirement.kind !== 'cost' && named(parts.flatMap(({ layers }) => layers.flatMap(materialsOf)));
    case 'site':
      // The air of the site enters every wall; the rest of it only what is heard, but one error can hide the other.
      return requirement.kind !== 'cost';
    case 'session':
      return ['room-tone', 'voice-outside', 'reverberation', 'co2', 'floor-load', 'isolation'].includes(
        requirement.kind,
      );
  }
}

interface Built {
  /** Linings have no name of their own. */
  readonly name?: string;
  readonly layers: readonly AssemblyLayer[];
}

function usedBy(booth: Booth): Built[] {
  return [
    ...Object.values(booth.faces).flatMap((built) => (built === undefined ? [] : [built.assembly])),
    ...booth.doors.map((door) => door.leaf),
    ...booth.windows.map((window) => window.pane),
    ...booth.linings.map(({ layers }) => ({ layers })),
    ...booth.vents.flatMap((vent) => (vent.lining === undefined ? [] : [{ layers: [vent.lining] }])),
  ];
}

function materialsOf(layer: AssemblyLayer): string[] {
  if (layer.kind === 'air') return [];
  if (layer.kind === 'material') return [layer.material.name];
  return [layer.lumber.name, ...(layer.fill === undefined ? [] : [layer.fill.material.name])];
}
