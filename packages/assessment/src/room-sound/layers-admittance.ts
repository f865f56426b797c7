import {
  type AbsorberLayer,
  type Air,
  absorberSurfaceImpedance,
  admittanceOfAbsorption,
  bandSamples,
  type Complex,
  type Layer,
  thirdOctaveBands,
} from '@boothwright/acoustics';
import { statedAbsorption } from '../assembly/absorption.js';
import { constructionOf } from '../assembly/construction.js';
import { hardFloorAbsorption } from '../booth/absorption-area.js';
import type { Memo } from '../memo/memo.js';
import { keyText, oncePer } from '../memo/once-per.js';
import type { FacePart } from './face-parts.js';

/** Bands from 50 Hz up for which modes may be asked: to 1 kHz. */
export const modalBands = 14;
/** Frequencies per band whose mean stands for it. */
const samplesPerBand = 3;

/** A value of each of the lowest bands, worked out when it is asked for: a trial of a fix asks for one band of fourteen. */
export type ByBand<T> = (band: number) => T;

/** What stands behind the innermost layers: the wall that moves and lets sound through, or one that stands still. */
export type Behind = 'wall' | 'rigid';

/**
 * Specific admittance of the inner face of a part of a wall in the lowest bands, rho c over its impedance: straight on, with
 * open air behind. An opening has that of free air, 1; what only a table of absorption describes, the real one that takes as
 * much of a diffuse field. With `rigid` behind, only what lies inside the innermost leaf takes sound.
 */
export function layersAdmittance(
  part: FacePart['layers'],
  air: Air,
  memo: Memo,
  behind: Behind = 'wall',
  samples = samplesPerBand,
): ByBand<Complex> {
  if (part === 'opening') return constant(1);
  if (part === 'building') return constant(admittanceOfAbsorption(hardFloorAbsorption));
  const stated = statedAbsorption(part);
  if (stated !== undefined) {
    return (band) => ({ re: admittanceOfAbsorption(stated[band]!), im: 0 });
  }
  const { layers } = constructionOf(part);
  if (layers.length === 0) return constant(1);
  if (behind === 'wall') return admittanceOf(layers, 'open', samples, air, memo);
  const inside = insideOf(layers);
  return inside.length === 0
    ? constant(admittanceOfAbsorption(hardFloorAbsorption))
    : admittanceOf(inside, 'rigid', samples, air, memo);
}

/** What lies inside the innermost leaf. */
const insideOf = oncePer((layers: readonly Layer[]): readonly Layer[] => {
  const leaf = layers.findLastIndex(({ kind }) => kind === 'plate' || kind === 'limp-sheet');
  return layers.slice(leaf + 1);
});

function admittanceOf(
  layers: readonly Layer[],
  backing: 'open' | 'rigid',
  count: number,
  air: Air,
  memo: Memo,
): ByBand<Complex> {
  return memo.of(`room-sound-admittance ${backing} ${count} ${keyText(layers)} ${keyText(air)}`, () => {
    const absorber = layers.map(
      (layer): AbsorberLayer => (layer.kind === 'porous' ? { ...layer, model: 'miki' } : layer),
    );
    return eachOnce((band) => {
      const samples = bandSamples(thirdOctaveBands[band]!, count);
      let re = 0;
      let im = 0;
      for (const hz of samples) {
        const impedance = absorberSurfaceImpedance(absorber, hz, 0, { air, backing });
        const square = impedance.re ** 2 + impedance.im ** 2;
        // Cloth that lies on a wall that stands still has no air to move through it: an impedance without end takes nothing.
        if (!Number.isFinite(square)) continue;
        re += (air.impedance * Math.max(0, impedance.re)) / square / samples.length;
        im -= (air.impedance * impedance.im) / square / samples.length;
      }
      return { re, im };
    });
  });
}

function constant(re: number): ByBand<Complex> {
  return () => ({ re, im: 0 });
}

function eachOnce<T extends object>(of: ByBand<T>): ByBand<T> {
  const known: T[] = [];
  return (band) => {
    known[band] ??= of(band);
    return known[band]!;
  };
}
