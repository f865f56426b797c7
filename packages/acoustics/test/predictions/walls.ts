import {
  asTransmissionLoss,
  bandTransmissionLoss,
  bendingStiffness,
  compositeTransmissionLoss,
  criticalFrequency,
  massAirMassFrequency,
  massLawField,
  massLawNormal,
  mikiPorous,
  smallEnclosureLevelDifference,
  stackAbsorption,
  wallTransmissionLoss,
} from '../../src/index.js';
import type { PredictionGroup } from './prediction.js';
import { air, board, fibre, panel, risingLoss } from './reference-inputs.js';

const gap = { kind: 'air-gap', thickness: 0.05 } as const;
const stud = { between: [0, 2], spacing: 0.6 } as const;

/** Panels, layered walls, walls of several parts and a small box. */
export const walls: PredictionGroup = {
  'panels/board-critical-frequency': () => criticalFrequency(board, air),
  'panels/board-bending-stiffness': () => bendingStiffness(board),
  'panels/mass-law-normal-500-hz-10-kg': () => massLawNormal(500, 10, air),
  'panels/mass-law-field-500-hz-10-kg': () => massLawField(500, 10, air),
  'porous/miki-impedance-1-khz-8-kpa': () => {
    const { re, im } = mikiPorous(8000, 1000, air).characteristicImpedance;
    return [re, im];
  },
  'layered/mass-air-mass-two-boards-90-mm': () => massAirMassFrequency(8.75, 8.75, 0.09, air),
  'layered/single-board': () => bandTransmissionLoss([board], { air, field: panel }),
  'layered/two-boards-on-air': () => bandTransmissionLoss([board, gap, board], { air, field: panel }),
  'layered/two-boards-on-fibre': () =>
    wallTransmissionLoss({ layers: [board, fibre, board], connections: [] }, { air, field: panel }).total,
  'layered/two-boards-on-fibre-and-studs': () =>
    wallTransmissionLoss({ layers: [board, fibre, board], connections: [stud] }, { air, field: panel }).total,
  'layered/fibre-before-hard-wall-absorption': () => stackAbsorption([fibre], { air, backing: 'rigid' }),
  'composite/wall-with-leak': () =>
    compositeTransmissionLoss([
      { area: 10, transmissionLoss: asTransmissionLoss(risingLoss) },
      { area: 0.01, transmissionLoss: asTransmissionLoss(risingLoss.map(() => 0)) },
    ]),
  'enclosure/small-box-of-boards': () =>
    smallEnclosureLevelDifference({
      volume: 2,
      elements: [{ kind: 'wall', layers: [board], area: 9, size: panel.size }],
      air,
      hz: [20, 31.5, 50],
    }),
};
