import type { BoothResult } from '@boothwright/assessment';
import { formatFrequency } from '../numbers/format-frequency.js';
import { shareText } from '../numbers/level-words.js';
import { octaveCentres } from '../numbers/octaves.js';
import { pathShares } from '../numbers/path-shares.js';
import { isPathOf } from '../numbers/path-words.js';

/**
 * `13 % of what comes in, 37 % at 2 kHz`: the A-weighted share of the opening with its seals, and the octave in which its
 * share is largest, for the source that is loudest inside. Undefined when the booth has no such opening or no band is assessed.
 */
export function openingLabel(name: string, booth: BoothResult, nominalHz: readonly number[]): string | undefined {
  const [loudest] = [...booth.noise.bySource].sort(
    (a, b) => (b.inside.dBA?.value ?? Number.NEGATIVE_INFINITY) - (a.inside.dBA?.value ?? Number.NEGATIVE_INFINITY),
  );
  if (!loudest) return undefined;
  const own = pathShares(booth, loudest, nominalHz).filter((share) => isPathOf(name, share));
  let best: { readonly hz: number; readonly share: number } | undefined;
  for (const [octave, hz] of octaveCentres.entries()) {
    const known = own.map(({ byOctave }) => byOctave[octave] ?? null);
    if (known.length === 0 || known.includes(null)) continue;
    const share = known.reduce<number>((sum, value) => sum + (value ?? 0), 0);
    if (!best || share > best.share) best = { hz, share };
  }
  if (!best) return undefined;
  const overall = own.reduce((sum, share) => sum + (share.overall ?? 0), 0);
  return `${shareText(overall)} of what comes in, ${shareText(best.share)} at ${formatFrequency(best.hz)}`;
}
