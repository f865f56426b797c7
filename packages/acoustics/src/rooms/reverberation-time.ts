import type { Air } from '../air/air-properties.js';
import { arauPuchadesTime } from './arau-puchades-time.js';
import { eyringTime } from './eyring-time.js';
import { fitzroyTime } from './fitzroy-time.js';
import { millingtonSetteTime } from './millington-sette-time.js';
import { meanRoomAbsorption, type RoomSurface, type SurfacePairs } from './room-surface.js';
import { sabineTime } from './sabine-time.js';
import { schroederFrequency } from './schroeder-frequency.js';

/** Names of the reverberation models. */
export type ReverberationModel = 'sabine' | 'eyring' | 'millington-sette' | 'fitzroy' | 'arau-puchades';

/** Thresholds of the choice; rules of thumb, from memory. */
export const reverberationChoice = {
  /** Largest mean coefficient for which Sabine's equation is kept. */
  sabineUpTo: 0.2,
  /** Largest ratio of the mean coefficients of two pairs of walls that counts as even. */
  evenUpTo: 2,
} as const;

/** A reverberation time, the model it was taken from and what the others say. */
export type ReverberationTime = {
  readonly model: ReverberationModel;
  /** s */
  readonly seconds: number;
  /** Why this model, in a sentence. */
  readonly reason: string;
  /** Every model that takes the input, s; null where it does not. */
  readonly byModel: { readonly [model in ReverberationModel]: number | null };
  /** Mean absorption coefficient weighted by area. */
  readonly meanAbsorption: number;
  /** Schroeder frequency of the chosen time, Hz; below it no reverberation time predicts the decay. Null: infinite time. */
  readonly schroederHz: number | null;
};

/**
 * Reverberation time of a box in one band by the model that fits its absorption, and by the others beside it.
 *
 * Choice: Sabine where a coefficient exceeds 1, which the others forbid; Arau-Puchades where the mean coefficients of two
 * pairs of opposite walls differ by more than a factor of 2; else Sabine up to a mean coefficient of 0.2 and Eyring above
 * (`reverberationChoice`). Where one pair absorbs nothing and the air neither, Arau-Puchades is infinite, and Eyring is
 * taken.
 * Units: volume m3, areas m2, attenuation of the air dB/m; result s.
 * Source: the choice is common practice (thresholds from memory); equations as in the single functions.
 * Valid: above the Schroeder frequency, which is returned; the models differ by more than a factor of 2 in uneven rooms,
 * and their spread is the honest measure of what is known.
 * Errors: ArgumentError for a volume, area or coefficient that can't be.
 */
export function reverberationTime(
  volume: number,
  pairs: SurfacePairs,
  attenuation: number,
  air: Air,
): ReverberationTime {
  const surfaces: RoomSurface[] = pairs.flat();
  const { area, absorption } = meanRoomAbsorption(surfaces, Number.POSITIVE_INFINITY);
  const means = pairs.map((pair) => meanRoomAbsorption(pair, Number.POSITIVE_INFINITY).absorption);
  const logarithmic = surfaces.every((surface) => surface.absorption <= 1);
  const byModel = {
    sabine: sabineTime(volume, area * absorption, attenuation, air),
    eyring: logarithmic ? eyringTime(volume, area, Math.min(absorption, 1), attenuation, air) : null,
    'millington-sette': logarithmic ? millingtonSetteTime(volume, surfaces, attenuation, air) : null,
    fitzroy: logarithmic ? fitzroyTime(volume, pairs, attenuation, air) : null,
    'arau-puchades': logarithmic ? arauPuchadesTime(volume, pairs, attenuation, air) : null,
  };
  const [model, reason] = choose(absorption, means, byModel['arau-puchades']);
  const seconds = byModel[model] as number;
  const schroederHz = Number.isFinite(seconds) ? schroederFrequency(volume, seconds) : null;
  return { model, seconds, reason, byModel, meanAbsorption: absorption, schroederHz };
}

function choose(mean: number, pairs: readonly number[], arau: number | null): [ReverberationModel, string] {
  const { sabineUpTo, evenUpTo } = reverberationChoice;
  if (arau === null) return ['sabine', 'A coefficient above 1 suits no model but Sabine'];
  const least = Math.min(...pairs);
  const most = Math.max(...pairs);
  const range = `${least.toFixed(2)} to ${most.toFixed(2)}`;
  if (most > evenUpTo * least) {
    return Number.isFinite(arau)
      ? ['arau-puchades', `The pairs of walls differ, mean coefficients ${range}`]
      : ['eyring', `The pairs of walls differ, mean coefficients ${range}, but the model for that has no finite time`];
  }
  const share = `mean coefficient ${mean.toFixed(2)}`;
  return mean <= sabineUpTo
    ? ['sabine', `Little and even absorption, ${share}`]
    : ['eyring', `Much and even absorption, ${share}`];
}
