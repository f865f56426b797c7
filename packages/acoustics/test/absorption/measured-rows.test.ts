import { expect, it } from 'vitest';
import { absorberAbsorption, type Incidence } from '../../src/absorption/absorber-absorption.js';
import type { AbsorberLayer } from '../../src/absorption/absorber-layer.js';
import { airProperties } from '../../src/air/air-properties.js';
import { thirdOctaveBands } from '../../src/bands/bands.js';
import { absorptionRows } from '../../src/database/absorption-rows.generated.js';
import { fibreFlowResistivity } from '../../src/porous/fibre-flow-resistivity.js';

const air = airProperties({ temperature: 20, relativeHumidity: 0.5 });
/** Neither the fibre nor the sample is printed with the rows: glass fibre of 6 micrometres, a sample of 9 by 8 feet. */
const fibreDiameter = 6e-6;
const size = { width: 2.74, height: 2.44 };

/** Octave means of the prediction beside the measured octaves of a row. */
function deviations(id: string, incidence: Incidence): number[] {
  const row = absorptionRows.find((candidate) => candidate.id === id)!;
  const flowResistivity = fibreFlowResistivity(row.density!, fibreDiameter);
  const layers: AbsorberLayer[] = [{ kind: 'porous', model: 'miki', thickness: row.thickness!, flowResistivity }];
  const found = absorberAbsorption(layers, { air, backing: 'rigid', incidence }, 4);
  return row.bandsHz.map((hz, i) => {
    const centre = thirdOctaveBands.findIndex((band) => band.nominal === hz);
    return (found[centre - 1]! + found[centre]! + found[centre + 1]!) / 3 - row.values[i]!;
  });
}

const rms = (values: readonly number[]) => Math.sqrt(values.reduce((sum, v) => sum + v * v, 0) / values.length);

it('fibre boards as measured, up to 1.24, are met by the finite sample and missed by the infinite one', () => {
  const boards = ['25', '50', '75', '100'].map((mm) => `long-gfboard-48-${mm}-a`);
  const finite = rms(boards.flatMap((id) => deviations(id, { kind: 'diffuse-on-sample', size })));
  const infinite = rms(boards.flatMap((id) => deviations(id, { kind: 'diffuse' })));
  expect(finite).toBeLessThan(0.1);
  expect(infinite).toBeGreaterThan(2 * finite);
});
