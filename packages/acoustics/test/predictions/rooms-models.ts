import {
  absorberAbsorption,
  arauPuchadesTime,
  asLevelDifference,
  criticalDistance,
  fitzroyTime,
  kuttruffTime,
  levelInRoom,
  millingtonSetteTime,
  modalCount,
  noiseIsolationClass,
  noiseReductionCoefficient,
  outdoorIndoorTransmissionClass,
  roomConstant,
  weightedLevelDifference,
} from '../../src/index.js';
import type { PredictionGroup } from './prediction.js';
import { air, risingLoss } from './reference-inputs.js';

const hard = [
  { area: 20, absorption: 0.05 },
  { area: 20, absorption: 0.1 },
];
const soft = [
  { area: 20, absorption: 0.6 },
  { area: 20, absorption: 0.1 },
];
const pairs = [hard, hard, soft] as const;
const fibre = { kind: 'porous', model: 'miki', thickness: 0.05, flowResistivity: 10_000 } as const;

/** Reverberation by other models, levels in rooms, absorbers, and further single numbers. */
export const roomsModels: PredictionGroup = {
  'rooms/kuttruff': () => kuttruffTime(50, 85, 0.3, 0.4, 0.005, air),
  'rooms/fitzroy': () => fitzroyTime(60, pairs, 0.005, air),
  'rooms/arau-puchades': () => arauPuchadesTime(60, pairs, 0.005, air),
  'rooms/millington-sette': () => millingtonSetteTime(60, [...hard, ...soft], 0.005, air),
  'rooms/room-constant': () => roomConstant(85, 0.2),
  'rooms/critical-distance': () => criticalDistance(1, 20),
  'rooms/level-in-room': () => levelInRoom(80, 1, 1, 20, air),
  'rooms/modal-count': () => modalCount([4, 3, 2.5], 200, air),
  'absorption/fibre-on-hard-wall': () =>
    absorberAbsorption([fibre], { air, backing: 'rigid', incidence: { kind: 'diffuse' } }),
  'ratings/oitc': () => outdoorIndoorTransmissionClass(risingLoss).oitc,
  'ratings/nic': () => noiseIsolationClass(asLevelDifference(risingLoss)).nic,
  'ratings/weighted-level-difference': () => weightedLevelDifference(asLevelDifference(risingLoss)).weighted,
  'ratings/nrc': () => noiseReductionCoefficient([0.3, 0.6, 0.8, 0.9]).value,
};
