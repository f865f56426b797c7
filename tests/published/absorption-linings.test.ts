// Linings of more than one layer, held against measured rows that handbooks print. Figures are as transcribed: read in a
// public transcription, the printed pages were not opened; most rows are those of `absorptionRows`.
//
// The rows print no flow resistivity and no size of the sample. A board that is printed twice, on a hard wall and before a gap,
// tells its own flow resistivity by the first row; the second is then a prediction with nothing left to choose. The
// sample of the reverberation room is taken as 3.6 m x 3 m (common practice), the fibre at rest.
//
// Not found: a measured row of cloth on fibre before a gap with all three told. The cloth is held against Maa's resistance
// before a gap in porous.test.ts, and here against the sum of impedances by hand.
import {
  type AbsorberLayer,
  absorberAbsorption,
  absorberSurfaceImpedance,
  airProperties,
  octaveAbsorption,
  stoneWoolFlowResistivity,
} from '@boothwright/acoustics';
import { absorptionRows } from '@boothwright/acoustics/database';
import { describe, expect, test } from 'vitest';

const air = airProperties({ temperature: 20, relativeHumidity: 0.5 });
const incidence = { kind: 'diffuse-on-sample', size: { width: 3.6, height: 3 } } as const;
const conditions = { air, backing: 'rigid', incidence } as const;

/** Four rows of M. Long, Architectural Acoustics, 2nd ed. (2014), Table 7.1, that `absorptionRows` leaves out. */
const furtherRows: Readonly<Record<string, readonly number[]>> = {
  'long-gfboard-96-25-a': [0.08, 0.25, 0.74, 0.95, 0.97, 1],
  'long-gfboard-96-50-a': [0.19, 0.74, 1.17, 1.11, 1.01, 1.01],
  'long-gfboard-96-25-e400': [0.68, 0.91, 0.78, 0.97, 1.05, 1.18],
  'long-gfboard-96-50-e400': [0.62, 0.95, 0.98, 1.07, 1.09, 1.22],
};

/** The six octaves 125 Hz to 4 kHz as printed. */
const printed = (id: string) => furtherRows[id] ?? absorptionRows.find((row) => row.id === id)!.values.slice(0, 6);

function lining(thickness: number, flowResistivity: number, gap: number): number[] {
  const fibre: AbsorberLayer = { kind: 'porous', model: 'miki', thickness, flowResistivity };
  const layers: AbsorberLayer[] = gap > 0 ? [{ kind: 'air-gap', thickness: gap }, fibre] : [fibre];
  return octaveAbsorption(absorberAbsorption(layers, conditions, 2)).slice(1) as number[];
}

const errors = (found: readonly number[], row: readonly number[]) => found.map((value, band) => value - row[band]!);
const rms = (values: readonly number[]) => Math.sqrt(values.reduce((sum, v) => sum + v * v, 0) / values.length);

/** Pa s/m2 with which the layer on a hard wall comes nearest to its printed row, in steps of 15 %. */
function flowResistivityOf(id: string, thickness: number): number {
  let best = { flowResistivity: 0, error: Number.POSITIVE_INFINITY };
  for (let flowResistivity = 3000; flowResistivity < 120_000; flowResistivity *= 1.15) {
    const error = rms(errors(lining(thickness, flowResistivity, 0), printed(id)));
    if (error < best.error) best = { flowResistivity, error };
  }
  return best.flowResistivity;
}

describe('the row before a gap follows from the row on a hard wall', () => {
  // 0.1 in a coefficient is what two laboratories differ by (from memory).
  test('felt of 25 mm before 50 mm: Arau-Puchades, ABC de la acustica arquitectonica (1999), Table 6.1, each octave within 0.1', () => {
    const found = lining(0.025, flowResistivityOf('arau-felt-25', 0.025), 0.05);
    for (const error of errors(found, printed('arau-felt-25-air50'))) expect(Math.abs(error)).toBeLessThan(0.1);
  });
  // Mounting E-400 of the same table: 0.4 m from the wall to the face of the board (common practice).
  test.each([
    ['48', 0.08],
    ['96', 0.08],
  ])(
    'board of 25 mm and %s kg/m3 in mounting E-400: M. Long, Architectural Acoustics, 2nd ed. (2014), Table 7.1, 125 and 250 Hz within %f',
    (density, most) => {
      const found = lining(0.025, flowResistivityOf(`long-gfboard-${density}-25-a`, 0.025), 0.375);
      const wrong = errors(found, printed(`long-gfboard-${density}-25-e400`));
      for (const error of wrong.slice(0, 2)) expect(Math.abs(error)).toBeLessThan(most);
      // The dip where the gap is half a wavelength, 0.76 and 0.78 as printed, is half as deep in the prediction.
      expect(wrong[2]).toBeGreaterThan(0);
      expect(wrong[2]).toBeLessThan(0.2);
      // The rows pass 1 at 4 kHz by what the open rim of the sample takes, which the model leaves out.
      expect(wrong[5]).toBeLessThan(-0.15);
      expect(rms(wrong)).toBeLessThan(0.15);
    },
  );
  // Disagreement: at 125 Hz the handbook has 0.59 to 0.68 for every board in mounting E-400, of 25 to 100 mm. A diffuse field,
  // which the model needs, does not exist there in a reverberation room.
  test.each(['48', '96'])(
    'board of 50 mm and %s kg/m3 in mounting E-400, the same table: 125 and 250 Hz predicted 0.15 to 0.35 too high, the rest within 0.15 up to 2 kHz',
    (density) => {
      const found = lining(0.05, flowResistivityOf(`long-gfboard-${density}-50-a`, 0.05), 0.35);
      const wrong = errors(found, printed(`long-gfboard-${density}-50-e400`));
      for (const error of wrong.slice(0, 2)) {
        expect(error).toBeGreaterThan(0.15);
        expect(error).toBeLessThan(0.35);
      }
      for (const error of wrong.slice(2, 5)) expect(Math.abs(error)).toBeLessThan(0.15);
    },
  );
  // The bare row of this table reaches 0.75 at most and falls to 0.65 at 4 kHz, which no fibre of the model does: another
  // sample, it seems, than the one before the gap.
  test('glass fibre of 25 mm before 25 mm: T. J. Cox, P. D’Antonio, Acoustic Absorbers and Diffusers, 3rd ed. (2017), Appendix A: too low by up to 0.25', () => {
    const found = lining(0.025, flowResistivityOf('cox-gf-25', 0.025), 0.025);
    const wrong = errors(found, printed('cox-gf-25-air25'));
    for (const error of wrong) {
      expect(error).toBeLessThan(0.02);
      expect(error).toBeGreaterThan(-0.25);
    }
  });
});

// By density alone: stone wool of 4.75 micrometres (C. Hopkins, Sound Insulation, 2007, p. 80), though these are glass.
test('boards of 48 kg/m3, 25 to 100 mm, and of 96 kg/m3, 25 and 50 mm, on a hard wall by their density alone: M. Long (2014), Table 7.1, within 0.12 (root mean square of 36 octaves), at most 0.3 in one', () => {
  const wrong = [
    [48, 25],
    [48, 50],
    [48, 75],
    [48, 100],
    [96, 25],
    [96, 50],
  ].flatMap(([density, mm]) => {
    const flowResistivity = stoneWoolFlowResistivity(density!, 4.75e-6, 'longitudinal');
    return errors(lining(mm! / 1000, flowResistivity, 0), printed(`long-gfboard-${density}-${mm}-a`));
  });
  expect(rms(wrong)).toBeLessThan(0.12);
  for (const error of wrong) expect(Math.abs(error)).toBeLessThan(0.31);
});

test('cloth on fibre before a gap adds its resistance to the impedance of the face, at any angle', () => {
  const behind: AbsorberLayer[] = [
    { kind: 'air-gap', thickness: 0.05 },
    { kind: 'porous', model: 'miki', thickness: 0.05, flowResistivity: 10_000 },
  ];
  const cloth: AbsorberLayer = { kind: 'screen', flowResistance: 250 };
  for (const angleDeg of [0, 45, 78]) {
    for (const hz of [63, 250, 1000, 4000]) {
      const bare = absorberSurfaceImpedance(behind, hz, angleDeg, { air, backing: 'rigid' });
      const covered = absorberSurfaceImpedance([...behind, cloth], hz, angleDeg, { air, backing: 'rigid' });
      expect(covered.re - bare.re).toBeCloseTo(250, 6);
      expect(covered.im - bare.im).toBeCloseTo(0, 6);
    }
  }
});
