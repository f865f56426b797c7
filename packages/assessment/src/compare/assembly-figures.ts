import type { AssemblyResult } from '../result/result-document.js';
import { voiceBandMean } from '../variants/changes.js';
import { type Figure, figure } from './figure.js';

/** Figures of a build-up that stand beside those of another text. */
export function assemblyFigures({
  ratings,
  transmissionLossDb,
  resonancesHz,
  surfaceMassKgPerM2,
  thicknessM,
  pricePerM2,
}: AssemblyResult): Figure[] {
  return [
    figure('rating', 'STC', ratings.stc, 'points', 'more'),
    figure('rating', 'Rw', ratings.rw, 'dB', 'more'),
    figure('rating', 'Rw + Ctr,50-5000', ratings.rw + ratings.ctr50To5000, 'dB', 'more'),
    figure('rating', 'mean transmission loss 100 Hz to 4 kHz', voiceBandMean(transmissionLossDb), 'dB', 'more'),
    figure('rating', 'lowest resonance', resonancesHz[0] ?? null, 'Hz'),
    figure('mass', 'surface mass', surfaceMassKgPerM2, 'kg/m2'),
    figure('size', 'thickness', thicknessM * 1000, 'mm'),
    figure('cost', 'price per m2', pricePerM2?.amount ?? null, pricePerM2?.currency ?? '', 'less'),
  ];
}
