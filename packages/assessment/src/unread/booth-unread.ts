import type { BoothSpec, Unread } from '@boothwright/language';

/** Parts from which any booth may have lost something: what could not be read may be what was meant for this one. */
const reachesEveryBooth: ReadonlySet<Unread['part']> = new Set(['assembly', 'material', 'let', 'use', 'outside']);

/** Errors of the text that can have changed a booth or taken something from it; null for a booth without a name. */
export function boothUnread(spec: BoothSpec, booth: string | null): readonly Unread[] {
  const own = (name: string | undefined) => booth === null || name === undefined || name === booth;
  return spec.unread.filter(({ part, name }) => reachesEveryBooth.has(part) || (part === 'booth' && own(name)));
}
