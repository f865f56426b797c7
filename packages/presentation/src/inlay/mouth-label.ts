import type { BoothResult } from '@boothwright/assessment';
import { formatNumber } from '../numbers/format-number.js';

/** `4.0 dB of ups and downs, 2 early reflections`; undefined where neither is known. */
export function mouthLabel({ reflections }: BoothResult): string | undefined {
  if (reflections === null) return undefined;
  const strong = reflections.early.filter((each) => each.strong).length;
  const words = [
    ...(reflections.response === null ? [] : [`${formatNumber(reflections.response.spreadDb, 1)} dB of ups and downs`]),
    ...(strong === 0 ? [] : [`${strong} strong ${strong === 1 ? 'reflection' : 'reflections'}`]),
  ];
  return words.length === 0 ? undefined : words.join(', ');
}
