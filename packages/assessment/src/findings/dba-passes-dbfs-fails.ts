import type { JudgedContext } from '../assessment-context.js';
import { nominalHz } from '../bands/grid.js';
import { afterHighPass, noiseAtCapsule, voiceAtCapsule } from '../noise/capsule.js';
import { governingBand } from '../noise/governing.js';
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
      const { microphone } = booth;
      const { session } = spec;
      if (!missed || tone === null || dBA === null || session === undefined || microphone === undefined) return [];
      const levels = result.noise.total.byBand;
      const voice = voiceAtCapsule(microphone, session, 'A');
      const noise = noiseAtCapsule(levels, microphone, 'A');
      if (voice === null || noise === null) return [];
      // The same chain read with A-weighting: filter, distance, gain and the microphone's own noise stay.
      const weighted = tone.voiceSetToDbFS - (voice - noise);
      if (weighted > limit) return [];
      const filtered = afterHighPass(levels, microphone);
      const band = governingBand(filtered, 'Z');
      const at = band === null ? 'the low bands' : `the third octave of ${hertz(nominalHz[band] as number)}`;
      return [
        {
          id: 'dba-passes-dbfs-fails',
          severity: 'warning' as const,
          range: textRange(requirement.range),
          message: `${booth.name} is ${decimals(dBA.value, 0)} dBA quiet, yet a recording reads ${decimals(tone.dBFS.value, 0)} dBFS: ${decimals(tone.dBFS.value - limit, 1)} dB over`,
          explanation: `A meter in dBA forgives low sound, a recording does not. A-weighted the same room tone would read ${decimals(weighted, 0)} dBFS and pass. The difference sits in ${at}.`,
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
