import {
  airAttenuation,
  eyringTime,
  receivedLevel,
  sabineTime,
  schroederFrequency,
  thirdOctaveBands,
} from '../../src/index.js';
import type { PredictionGroup } from './prediction.js';
import { air } from './reference-inputs.js';

/** The air, and rooms filled with it. */
export const rooms: PredictionGroup = {
  'air/sound-speed': () => air.soundSpeed,
  'air/density': () => air.density,
  'air/impedance': () => air.impedance,
  'air/attenuation': () => thirdOctaveBands.map(({ exact }) => airAttenuation(exact, air)),
  'rooms/sabine-50-m3-10-m2': () => sabineTime(50, 10, 0.005, air),
  'rooms/eyring-50-m3-a-third': () => eyringTime(50, 85, 1 / 3, 0.005, air),
  'rooms/schroeder-50-m3-half-a-second': () => schroederFrequency(50, 0.5),
  'rooms/received-level': () => receivedLevel(80, 45, 6, 9),
};
