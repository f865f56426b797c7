import { energyOf, frequencyWeighting, levelOf } from '@boothwright/acoustics';
import type { BoothResult, ByBand } from '@boothwright/assessment';

export interface PathShare {
  readonly index: number;
  readonly id: string;
  readonly kind: string;
  readonly name: string;
  /** 0..1 of the A-weighted energy inside; null when no band is assessed. */
  readonly overall: number | null;
  /** 0..1 by octave; null where a third of it is not assessed. */
  readonly byOctave: readonly (number | null)[];
}

type SourceResult = BoothResult['noise']['bySource'][number];

function weightedShare(shares: ByBand, energies: readonly (number | null)[]): number | null {
  let through = 0;
  let total = 0;
  for (const [band, energy] of energies.entries()) {
    const share = shares[band] ?? null;
    if (energy === null || share === null) continue;
    through += share * energy;
    total += energy;
  }
  return total > 0 ? through / total : null;
}

/**
 * How much of what a source brings inside comes by each path, largest first. Shares by octave are energy means of the
 * thirds; the overall share weighs every band as the A-weighted level does.
 */
export function pathShares(
  booth: BoothResult,
  source: SourceResult,
  nominalHz: readonly number[],
): readonly PathShare[] {
  const known = told.get(source);
  if (known?.booth === booth && known.nominalHz === nominalHz) return known.shares;
  const shares = workedOut(booth, source, nominalHz);
  told.set(source, { booth, nominalHz, shares });
  return shares;
}

/** An editor asks for the same shares with every hint and hover; results never change. */
const told = new WeakMap<
  SourceResult,
  { readonly booth: BoothResult; readonly nominalHz: readonly number[]; readonly shares: readonly PathShare[] }
>();

function workedOut(booth: BoothResult, source: SourceResult, nominalHz: readonly number[]): readonly PathShare[] {
  const energies = source.inside.byBand.map((level) => (level === null ? null : energyOf(level)));
  const weighted = source.inside.byBand.map((level, band) =>
    level === null ? null : energyOf(level + frequencyWeighting('A', nominalHz[band] ?? 1000)),
  );
  const octaves = Math.floor(nominalHz.length / 3);
  return booth.paths
    .map((path, index): PathShare => {
      const shares = source.shares[index] ?? [];
      return {
        index,
        id: path.id,
        kind: path.kind,
        name: path.name,
        overall: weightedShare(shares, weighted),
        byOctave: Array.from({ length: octaves }, (_, octave) => {
          const thirds = [0, 1, 2].map((third) => octave * 3 + third);
          if (thirds.some((band) => energies[band] == null || shares[band] == null)) return null;
          return weightedShare(
            shares,
            energies.map((energy, band) => (thirds.includes(band) ? energy : null)),
          );
        }),
      };
    })
    .sort((a, b) => (b.overall ?? -1) - (a.overall ?? -1) || a.index - b.index);
}

/** The level inside that comes by one path alone. */
export function levelThrough(share: number, levelInside: number): number {
  return levelOf(share * energyOf(levelInside));
}
