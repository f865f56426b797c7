import type { Requirement } from '@boothwright/language';

/** Whether a requirement is asked of a booth: of every booth, unless it names one. */
export function isAskedOf(requirement: Requirement, booth: string): boolean {
  return requirement.booth === undefined || requirement.booth === booth;
}
