import { nominalHz } from '../bands/grid.js';
import type { AssemblyResult, BoothResult } from '../result/result-document.js';
import type { ByBand } from '../result/result-values.js';
import type { BandChange } from './comparison-document.js';
import { turnOf } from './figure.js';
import { differs, stepsBetween } from './smallest-steps.js';

/** A curve of one side. */
interface Curve {
  readonly what: string;
  readonly unit: string;
  readonly byBand: ByBand;
  readonly better: 'more' | 'less';
}

export function assemblyCurves({ transmissionLossDb }: AssemblyResult): Curve[] {
  return [{ what: 'transmission loss', unit: 'dB', byBand: transmissionLossDb, better: 'more' }];
}

export function boothCurves({ noise, compositeTransmissionLossDb, roomSound, voiceOutside }: BoothResult): Curve[] {
  return [
    { what: 'noise inside', unit: 'dB', byBand: noise.total.byBand, better: 'less' },
    { what: 'transmission loss of the whole booth', unit: 'dB', byBand: compositeTransmissionLossDb, better: 'more' },
    { what: 'voice outside', unit: 'dB', byBand: voiceOutside?.byBand ?? [], better: 'less' },
    { what: 'decay', unit: 's', byBand: roomSound?.decay.map(({ seconds }) => seconds) ?? [], better: 'less' },
  ];
}

/** Curves that differ, each with the band in which it differs most. */
export function bandChanges(of: string, old: readonly Curve[], now: readonly Curve[]): BandChange[] {
  return now.flatMap(({ what, unit, byBand, better }): BandChange[] => {
    const before = nominalHz.map((_, band) => old.find((curve) => curve.what === what)?.byBand[band] ?? null);
    const after = nominalHz.map((_, band) => byBand[band] ?? null);
    let largest: { readonly band: number; readonly steps: number } | undefined;
    let any = false;
    nominalHz.forEach((_, band) => {
      const [a, b] = [before[band] ?? null, after[band] ?? null];
      if (!differs(a, b)) return;
      any = true;
      const steps = stepsBetween(a, b, unit === 'dB' ? 'dB in a band' : unit);
      if (steps !== null && steps > (largest?.steps ?? -1)) largest = { band, steps };
    });
    if (!any) return [];
    const at = largest?.band;
    const turn = at === undefined ? null : turnOf(before[at] ?? null, after[at] ?? null, better);
    return [
      {
        of,
        what,
        unit,
        largestHz: at === undefined ? null : (nominalHz[at] as number),
        hz: nominalHz,
        old: before,
        new: after,
        turn,
        steps: largest?.steps ?? null,
      },
    ];
  });
}
