import type { DefaultUsed } from '@boothwright/assessment';
import { defaults } from '@boothwright/language';

/** A default as a user would write it; the result document holds it as a bare SI figure. */
export function defaultText(used: DefaultUsed): string {
  return defaults.find(({ name }) => name === used.name)?.text ?? used.value;
}
