import { octaveBands } from '@boothwright/acoustics';
import type { JudgedContext } from '../assessment-context.js';
import type { RoomTone } from '../result/noise-result.js';
import type { Finding } from '../result/result-document.js';
import { decimals } from '../text/decimals.js';
import { hertz } from '../text/hertz.js';
import { joined } from '../text/joined.js';
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
      if (!missed || tone === null || dBA === null) return [];
      // The same chain read with A-weighting: filter, distance, gain and the microphone's own noise stay.
      const weighted = tone.weightedDbFS;
      if (weighted === null || weighted > limit) return [];
      const carriers = carryingOctaves(tone);
      const at = carriers.length === 0 ? 'the low bands' : `the octave of ${hertz(carriers[0]?.hz ?? 0)}`;
      return [
        {
          id: 'dba-passes-dbfs-fails',
          severity: 'warning' as const,
          range: textRange(requirement.range),
          message: `${booth.name} is ${decimals(dBA.value, 0)} dBA quiet, yet a recording reads ${decimals(tone.dBFS.value, 0)} dBFS: ${decimals(tone.dBFS.value - limit, 1)} dB over`,
          explanation: `A meter in dBA forgives low sound, a recording does not. A-weighted the same room tone would read ${decimals(weighted, 0)} dBFS and pass. ${carriersSentence(carriers)}`,
          source:
            'Room tone chain of docs/models/recording-chain.md, weighted and unweighted. docs/findings/dba-passes-dbfs-fails.md',
          fix: `${filterSentence(tone, limit)} Else work on ${at}: mass, a deeper cavity or quieter hours. Speaking closer to the microphone lowers the gain, dB for dB.`,
          figures: {
            dBFS: tone.dBFS.value,
            aWeightedDbFS: weighted,
            insideDbA: dBA.value,
            limitDbFS: limit,
            ...(carriers[0] === undefined ? {} : { bandHz: carriers[0].hz, bandShare: carriers[0].share }),
            ...bestFilter(tone),
          },
          related: [{ range: textRange(booth.nameRange), message: 'this booth' }],
        },
      ];
    });
  });
}

interface Carrier {
  readonly hz: number;
  readonly share: number;
}

/** The octaves that make up most of the unweighted noise, the strongest first. */
function carryingOctaves({ shares }: RoomTone): Carrier[] {
  const ranked = shares.octaves
    .map((share, octave) => ({ hz: octaveBands[octave]?.nominal ?? 0, share }))
    .sort((a, b) => b.share - a.share);
  const carriers: Carrier[] = [];
  for (const octave of ranked) {
    if (carriers.reduce((sum, { share }) => sum + share, 0) >= mostOfIt || octave.share < least) break;
    carriers.push(octave);
  }
  return carriers;
}

/** Shares of the energy: what is called most of it, and below which an octave is not worth naming. */
const mostOfIt = 0.85;
const least = 0.05;

function carriersSentence(carriers: readonly Carrier[]): string {
  if (carriers.length === 0) return 'The difference sits in the low bands.';
  const words = carriers.map(
    ({ hz, share }) => `${decimals(100 * share, 0)} % of its energy in the octave of ${hertz(hz)}`,
  );
  return `The recording has ${joined(words)}.`;
}

type Filter = RoomTone['filters'][number];

/** The mildest filter that brings it below the limit, else the one that brings most; what a filter takes off the voice below 160 Hz is not known. */
function filterSentence(tone: RoomTone, limit: number): string {
  const stronger = tone.filters.filter(({ highPassHz }) => (highPassHz ?? 0) > (tone.highPassHz ?? 0));
  const now =
    tone.highPassHz === null ? 'no high-pass filter is set' : `the filter stands at ${decimals(tone.highPassHz, 0)} Hz`;
  const enough = stronger.find(({ dBFS }) => dBFS <= limit);
  const chosen = enough ?? stronger.at(-1);
  if (chosen === undefined) return `Now ${now}; a higher one would cut into the voice.`;
  const reads = `a second-order high-pass at ${decimals(chosen.highPassHz ?? 0, 0)} Hz would read ${decimals(chosen.dBFS, 1)} dBFS`;
  const cost = (chosen.highPassHz ?? 0) > 80 ? ', at a cost to a low voice' : '';
  return `Now ${now}; ${reads}${enough === undefined ? ', which is not enough' : ' and pass'}${cost}.`;
}

function bestFilter(tone: RoomTone): Record<string, number> {
  const at80: Filter | undefined = tone.filters.find(({ highPassHz }) => highPassHz === 80);
  return at80 === undefined ? {} : { dBFSWith80HzFilter: at80.dBFS };
}
