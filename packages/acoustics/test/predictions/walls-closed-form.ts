import {
  cableHoleTransmissionLoss,
  davyTransmissionLoss,
  massLawRandom,
  sewellTransmissionLoss,
  sharpTransmissionLoss,
  singlePanelOf,
  thirdOctaveBands,
} from '../../src/index.js';
import type { PredictionGroup } from './prediction.js';
import { air, board, panel } from './reference-inputs.js';

const atBands = (loss: (hz: number) => number) => thirdOctaveBands.map(({ exact }) => loss(exact));

/** Panels and openings in closed form. */
export const wallsClosedForm: PredictionGroup = {
  'panels/mass-law-random-500-hz-10-kg': () => massLawRandom(500, 10, air),
  'panels/board-by-sharp': () => atBands((hz) => sharpTransmissionLoss(singlePanelOf(board), hz, air)),
  'panels/board-by-davy': () => atBands((hz) => davyTransmissionLoss(singlePanelOf(board), panel.size, hz, air)),
  'panels/board-by-sewell-500-hz': () => sewellTransmissionLoss(singlePanelOf(board), panel.size, 500, air),
  'openings/cable-hole': () =>
    atBands((hz) => cableHoleTransmissionLoss({ holeRadius: 0.01, cableRadius: 0.009, depth: 0.05 }, hz, air)),
};
