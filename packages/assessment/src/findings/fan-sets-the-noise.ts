import { sumLevels } from '@boothwright/acoustics';
import type { JudgedContext } from '../assessment-context.js';
import { ownSounds } from '../noise/own-sounds.js';
import type { LevelTotals } from '../result/result-values.js';
import { decimals } from '../text/decimals.js';
import { textRange } from '../text/text-range.js';
import type { Found } from './found.js';

/** A-weighted level of sounds together, dBA; far down where there is none. */
function loudness(...sounds: readonly (LevelTotals | null)[]): number {
  const levels = sounds.flatMap((sound) => sound?.dBA?.value ?? []);
  return levels.length === 0 ? Number.NEGATIVE_INFINITY : sumLevels(levels);
}

/** A fan that raises the whole by more than this is heard, dB: 6 dB below the rest it adds 1 dB. */
export const heardAbove = 1;

/** The fan, not the street, decides how quiet it is inside. */
export function fanSetsTheNoise({ booths }: JudgedContext): Found[] {
  return booths.flatMap(({ booth, result }) => {
    const settings = result.noise.bySetting;
    const off = settings.find(({ setting }) => setting === 'off')?.total.dBA;
    const now = settings.find(({ session }) => session);
    const loud = now?.total.dBA;
    if (off === null || off === undefined || loud === null || loud === undefined || now?.setting === 'off') return [];
    const gain = loud.value - off.value;
    if (gain <= heardAbove) return [];
    const low = settings.find(({ setting }) => setting === 'low')?.total.dBA;
    const vent = booth.vents.find((candidate) => candidate.fan !== undefined);
    if (vent === undefined) return [];
    const { fan, airAtOpenings, airInDucts } = result.noise;
    const hisses = loudness(airAtOpenings, airInDucts) > loudness(fan);
    const opening = ownSounds(result.noise).find(({ id }) => id === 'air-at-openings')?.words ?? 'its openings';
    return [
      {
        id: 'fan-sets-the-noise',
        severity: 'information' as const,
        range: textRange(vent.nameRange),
        message: `${booth.name}: the fan ${hisses ? 'by the air that it moves ' : ''}raises the noise inside by ${decimals(gain, 1)} dB, from ${decimals(off.value, 1)} to ${decimals(loud.value, 1)} dBA`,
        explanation: `A steady fan 6 dB below the rest of the noise adds 1 dB and is not noticed; above that it is what one hears in the pauses.${hisses ? ` More of it is the air at ${opening} than the fan itself: lining does not help there, and it falls by 18 dB with half the speed.` : ''}`,
        source:
          'The same prediction with the fan off and on; 6 dB below is common practice. docs/findings/fan-sets-the-noise.md',
        fix: `${low !== null && low !== undefined && now?.setting === 'high' ? `At the low setting it is ${decimals(low.value, 1)} dBA. ` : ''}${hisses ? `Open what the air passes at ${opening}: a wider end, a larger grille with more free area, or less air.` : 'A longer lined run, a lined box, or a larger and slower fan further away; hang it on soft mounts.'}`,
        figures: { fanOffDbA: off.value, fanOnDbA: loud.value, gainDb: gain },
        related: [],
      },
    ];
  });
}
