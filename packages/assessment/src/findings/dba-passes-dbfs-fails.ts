import { speechSpectrum, weightedTotal } from '@boothwright/acoustics';
import type { JudgedContext } from '../assessment-context.js';
import { exactHz, nominalHz } from '../bands/grid.js';
import { governingBand } from '../noise/governing.js';
import { highPassAttenuation } from '../noise/high-pass.js';
import type { Finding } from '../result/result-document.js';
import { decimals } from '../text/decimals.js';
import { hertz } from '../text/hertz.js';
import { textRange } from '../text/text-range.js';

/** The unweighted room tone misses its limit although the A-weighted one would pass: low bands that the ear ignores. */
export function dbaPassesDbfsFails({ spec, booths, requirements }: JudgedContext): Finding[] {
  return spec.requirements.flatMap((requirement) => {
    if (requirement.kind !== 'room-tone' || requirement.limit.value.weighting !== 'FS') return [];
    const limit = requirement.limit.value.decibels;
    return booths.flatMap(({ booth, result }) => {
      const missed = requirements.some(
        (entry) =>
          entry.range.from === requirement.range.from &&
          entry.range.file === requirement.range.file &&
          entry.booth === booth.name &&
          entry.verdict === 'missed',
      );
      const tone = result.noise.roomTone;
      const dBA = result.noise.total.dBA;
      const effort = spec.session?.effort.value;
      if (!missed || tone === null || dBA === null || effort === undefined) return [];
      const voice = weightedTotal(speechSpectrum(effort), 'A');
      if (voice === null) return [];
      // Distance and gain are the same for both readings; only the weighting differs.
      const weighted = tone.voiceSetToDbFS - (voice - 20 * Math.log10(tone.distanceM) - dBA.value);
      if (weighted > limit) return [];
      const filtered = result.noise.total.byBand.map((level, band) =>
        level === null || tone.highPassHz === null
          ? level
          : level - highPassAttenuation(exactHz[band] as number, tone.highPassHz),
      );
      const band = governingBand(filtered, 'Z');
      const at = band === null ? 'the low bands' : hertz(nominalHz[band] as number);
      return [
        {
          id: 'dba-passes-dbfs-fails',
          severity: 'warning' as const,
          range: textRange(requirement.range),
          message: `${booth.name} is ${decimals(dBA.value, 0)} dBA quiet, yet a recording reads ${decimals(tone.dBFS.value, 0)} dBFS: ${decimals(tone.dBFS.value - limit, 1)} dB over`,
          explanation: `A meter in dBA forgives low sound, a recording does not. A-weighted the same room tone would read ${decimals(weighted, 0)} dBFS and pass. The difference sits at ${at}.`,
          source:
            'Room tone chain of docs/models/noise-inside.md, weighted and unweighted. docs/findings/dba-passes-dbfs-fails.md',
          fix: `Work on ${at}: mass, a deeper cavity or quieter hours. A high-pass filter helps where the voice has nothing to lose${tone.highPassHz === null ? '; none is set' : ` (now ${decimals(tone.highPassHz, 0)} Hz)`}, and speaking closer to the microphone lowers the gain.`,
          figures: {
            dBFS: tone.dBFS.value,
            aWeightedDbFS: weighted,
            insideDbA: dBA.value,
            limitDbFS: limit,
            ...(band === null ? {} : { bandHz: nominalHz[band] as number }),
          },
          related: [{ range: textRange(booth.nameRange), message: 'this booth' }],
        },
      ];
    });
  });
}
