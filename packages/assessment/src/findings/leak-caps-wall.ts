import { weightedTotal } from '@boothwright/acoustics';
import { ratingsOf } from '../assembly/ratings.js';
import type { JudgedContext } from '../assessment-context.js';
import { exactHz, nominalHz, perBand } from '../bands/grid.js';
import type { AssessedBooth } from '../booth/assess-booth.js';
import type { BoothPath } from '../booth/booth-path.js';
import { pathWords } from '../booth/path-words.js';
import { ownSounds } from '../noise/own-sounds.js';
import { decimals } from '../text/decimals.js';
import { hertz } from '../text/hertz.js';
import { insteadOf } from '../text/instead-of.js';
import { joined } from '../text/joined.js';
import type { Found } from './found.js';
import { longerDuct, withTighterOpening } from './tighter-opening.js';

/** The openings must bring more than this share of the energy ... */
export const leastShare = 0.5;
/** ... in bands where the booth without them would be better by this, dB ... */
export const leastGainDb = 5;
/** ... and in at least this many thirds: one octave. */
export const leastBands = 3;

/** Gaps, slits, holes and ducts let through more than all the walls together. */
export function leakCapsWall({ booths }: JudgedContext): Found[] {
  return booths.flatMap((assessed) => {
    const leaks = assessed.paths.filter((path) => path.leak);
    const solid = assessed.paths.filter((path) => !path.leak);
    if (leaks.length === 0 || solid.length === 0) return [];
    const throughLeaks = transmitted(leaks);
    const throughAll = transmitted(assessed.paths);
    const capped = exactHz.flatMap((_, band) => {
      const model = assessed.result.bandModels[band];
      if (model === 'small-enclosure' || model === 'hand-over') return [];
      const share = (throughLeaks[band] as number) / (throughAll[band] as number);
      const gain = -10 * Math.log10(1 - share);
      return share > leastShare && gain >= leastGainDb ? [band] : [];
    });
    if (capped.length < leastBands) return [];
    return [finding(assessed, leaks, throughLeaks, throughAll, capped)];
  });
}

/** Sum of S tau by band, m2. */
function transmitted(paths: readonly BoothPath[]): number[] {
  return perBand((band) =>
    paths.reduce(
      (sum, { result }) => sum + result.areaM2 * 10 ** (-(result.transmissionLossDb[band] as number) / 10),
      0,
    ),
  );
}

function finding(
  { booth, result, paths }: AssessedBooth,
  leaks: readonly BoothPath[],
  throughLeaks: readonly number[],
  throughAll: readonly number[],
  capped: readonly number[],
): Found {
  const total = paths.reduce((sum, path) => sum + path.result.areaM2, 0);
  const mean = (values: (band: number) => number) =>
    capped.reduce((sum, band) => sum + values(band), 0) / capped.length;
  const ceiling = mean((band) => -10 * Math.log10((throughLeaks[band] as number) / total));
  const wall = mean(
    (band) => -10 * Math.log10(((throughAll[band] as number) - (throughLeaks[band] as number)) / total),
  );
  const openArea = leaks.reduce((sum, path) => sum + path.result.areaM2, 0);
  const strength = (path: BoothPath) =>
    capped.reduce(
      (sum, band) =>
        sum +
        (path.result.areaM2 * 10 ** (-(path.result.transmissionLossDb[band] as number) / 10)) /
          (throughAll[band] as number),
      0,
    ) / capped.length;
  const worst = leaks.reduce((best, path) => (strength(path) > strength(best) ? path : best));
  const tight = perBand((band) => (throughAll[band] as number) - transmittedBy(worst, band));
  const tightLoss = tight.map((energy) => -10 * Math.log10(energy / total));
  const levels = levelsWithout(result, throughAll, tight);
  const sealed = levelsWithout(
    result,
    throughAll,
    perBand((band) => (throughAll[band] as number) - (throughLeaks[band] as number)),
  );
  const words = pathWords(worst.result);
  const first = hertz(nominalHz[capped[0] as number] as number);
  const last = hertz(nominalHz[capped.at(-1) as number] as number);
  const stcWithoutWorst = ratingsOf(tightLoss).stc;
  const figures: Record<string, number> = {
    ceilingDb: ceiling,
    withoutLeaksDb: wall,
    openAreaCm2: openArea * 1e4,
    worstLeakShare: strength(worst),
    stc: result.ratings.stc,
    stcWithoutWorstLeak: stcWithoutWorst,
  };
  if (levels !== null) {
    figures.insideDbA = levels.now;
    figures.insideDbAWithoutWorstLeak = levels.tight;
    figures.insideDbAWithoutLeaks = sealed?.tight ?? levels.tight;
  }
  const hardly = sealed !== null && sealed.now - sealed.tight < 1;
  return {
    id: 'leak-caps-wall',
    severity: hardly ? 'information' : 'warning',
    range: worst.result.range,
    message: `${booth.name}: ${openingWords(leaks)} hold the booth at ${decimals(ceiling, 0)} dB from ${first} to ${last}, where its walls alone would reach ${decimals(wall, 0)} dB`,
    explanation: `Sound adds by area times what passes. In these bands the openings bring more than half of it, so better walls change nothing. The strongest is ${words} with ${decimals(100 * strength(worst), 0)} % of the sound.${levelWords(levels, sealed, hardly)}`,
    source:
      'Area-weighted sum of transmission coefficients; slits after a two-port with friction, ducts after published tables. docs/findings/leak-caps-wall.md',
    fix: `${fixWords(worst, words)} With it closed the whole booth rates ${insteadOf('STC', stcWithoutWorst, result.ratings.stc)}.`,
    figures,
    related: leaks
      .filter((path) => path !== worst)
      .map((path) => ({ range: path.result.range, message: pathWords(path.result) })),
    fixed: (other) => (other.name === booth.name ? withTighterOpening(other, worst.result.id) : other),
  };
}

/** What closing would change in the noise inside; nothing when no noise is known. */
function levelWords(
  one: { now: number; tight: number } | null,
  all: { now: number; tight: number } | null,
  hardly: boolean,
): string {
  if (one === null || all === null) return '';
  const [now, onceClosed, allClosed] = [one.now, one.tight, all.tight].map((level) => decimals(level, 1));
  const rest = 'other bands set the limit, so this is not the first thing to spend money on.';
  if (hardly) {
    return allClosed === now
      ? ` Yet closing all of them makes no difference to the noise inside of ${now} dBA: ${rest}`
      : ` Yet closing all of them changes the noise inside from ${now} to ${allClosed} dBA only: ${rest}`;
  }
  const first =
    onceClosed === now
      ? `Closing it alone makes no difference to the noise inside of ${now} dBA`
      : `Closing it takes the noise inside from ${now} to ${onceClosed} dBA`;
  return ` ${first}, closing all of them ${onceClosed === now ? 'takes it to' : 'to'} ${allClosed} dBA.`;
}

function transmittedBy(path: BoothPath, band: number): number {
  return path.result.areaM2 * 10 ** (-(path.result.transmissionLossDb[band] as number) / 10);
}

/** `gaps of 10.5 cm2 and ducts of 245.4 cm2`; ducts lose sound along their run, so their area counts for less. */
function openingWords(leaks: readonly BoothPath[]): string {
  const ducts = leaks.filter((path) => path.result.kind === 'vent');
  const gaps = leaks.filter((path) => path.result.kind !== 'vent');
  const area = (paths: readonly BoothPath[]) =>
    decimals(paths.reduce((sum, path) => sum + path.result.areaM2, 0) * 1e4, 1);
  return joined([
    ...(gaps.length > 0 ? [`gaps of ${area(gaps)} cm2`] : []),
    ...(ducts.length > 0 ? [`ducts of ${area(ducts)} cm2`] : []),
  ]);
}

function fixWords(path: BoothPath, words: string): string {
  switch (path.result.kind) {
    case 'vent':
      return `Give ${words} a longer lined run, thicker lining or another bend (below, ${longerDuct.run} m and ${longerDuct.bends} bend more are counted).`;
    case 'door-seal':
      return `Seal ${words}: a compression gasket all round, a drop seal at the threshold.`;
    case 'face':
      return `Give ${words} a build-up.`;
    default:
      return `Close ${words} with sealant or a gasket.`;
  }
}

/** Noise inside now and with one path closed, dBA, above the first mode only; null without a known noise. */
function levelsWithout(
  result: AssessedBooth['result'],
  before: readonly number[],
  after: readonly number[],
): { now: number; tight: number } | null {
  const levels = result.noise.total.byBand;
  const now = weightedTotal(levels, 'A');
  const tight = weightedTotal(
    levels.map((level, band) => {
      const model = result.bandModels[band];
      if (level === null || model === 'small-enclosure' || model === 'hand-over') return level;
      const own = ownSounds(result.noise).reduce((sum, { levels: sound }) => {
        const each = sound[band] ?? null;
        return each === null ? sum : sum + 10 ** (each / 10);
      }, 0);
      const outside = Math.max(10 ** (level / 10) - own, 0);
      const left = outside * ((after[band] as number) / (before[band] as number)) + own;
      return left > 0 ? 10 * Math.log10(left) : null;
    }),
    'A',
  );
  return now === null || tight === null ? null : { now, tight };
}
