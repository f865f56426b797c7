import { apertureTransmissionLoss, slitTransmissionLoss, thirdOctaveBands } from '../../src/index.js';
import type { PredictionGroup } from './prediction.js';
import { air } from './reference-inputs.js';

const atBands = (loss: (hz: number) => number) => thirdOctaveBands.map(({ exact }) => loss(exact));

/** Holes and slits. */
export const openings: PredictionGroup = {
  'openings/slit-1-mm-through-50-mm': () =>
    atBands((hz) => slitTransmissionLoss({ gap: 0.001, depth: 0.05, position: 'mid' }, hz, air)),
  'openings/slit-0.2-mm-at-an-edge': () =>
    atBands((hz) => slitTransmissionLoss({ gap: 0.0002, depth: 0.05, position: 'edge' }, hz, air)),
  'openings/hole-20-mm-through-50-mm': () =>
    atBands((hz) => apertureTransmissionLoss({ radius: 0.01, depth: 0.05 }, hz, air)),
};
