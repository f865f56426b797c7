import {
  co2Concentration,
  co2TimeTo,
  ductBendLoss,
  endReflectionLoss,
  flowForCo2,
  linedRectangularDuctLoss,
  linedRoundDuctLoss,
  steadyCo2,
} from '../../src/index.js';
import type { PredictionGroup } from './prediction.js';
import { air } from './reference-inputs.js';

const balance = { supply: 450, start: 450, generation: 5e-6, flow: 0.005, volume: 4 };

/** Ducts and fresh air. */
export const ventilation: PredictionGroup = {
  'ventilation/co2-after-an-hour': () => co2Concentration({ ...balance, seconds: 3600 }),
  'ventilation/co2-time-to-1000-ppm': () => co2TimeTo({ ...balance, threshold: 1000 }),
  'ventilation/co2-steady': () => steadyCo2(balance),
  'ventilation/flow-for-1000-ppm': () => flowForCo2({ supply: 450, generation: 5e-6, limit: 1000 }),
  'ventilation/lined-rectangular-duct': () =>
    linedRectangularDuctLoss({ width: 0.15, height: 0.2, length: 1, lining: 0.025 }).loss,
  'ventilation/lined-round-duct': () => linedRoundDuctLoss({ diameter: 0.2, length: 1, lining: 0.025 }).loss,
  'ventilation/lined-square-bend': () => ductBendLoss({ width: 0.2, lined: true, form: 'square' }, air).loss,
  'ventilation/end-reflection': () => endReflectionLoss({ area: 0.03, termination: 'flush' }, air).loss,
};
