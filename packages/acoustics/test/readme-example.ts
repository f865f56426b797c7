import {
  airProperties,
  type Field,
  type Layer,
  massAirMassFrequency,
  soundTransmissionClass,
  surfaceMass,
  wallTransmissionLoss,
  weightedSoundReduction,
} from '@boothwright/acoustics';

const air = airProperties({ temperature: 20, relativeHumidity: 0.5 });
const board: Layer = {
  kind: 'plate',
  thickness: 0.0125,
  density: 700,
  youngsModulus: 2.5e9,
  poissonRatio: 0.2,
  lossFactor: 0.02,
};
const fibre: Layer = { kind: 'porous', thickness: 0.09, flowResistivity: 8000 };
const layers = [board, fibre, board];
const field: Field = { kind: 'finite', size: { width: 1.2, height: 2.1 } };

const { total } = wallTransmissionLoss({ layers, connections: [] }, { air, field });
const stc = soundTransmissionClass(total);
const rw = weightedSoundReduction(total);

console.log(`surface mass ${surfaceMass(layers).toFixed(1)} kg/m2`);
console.log(`mass-air-mass resonance ${massAirMassFrequency(8.75, 8.75, 0.09, air).toFixed(0)} Hz`);
console.log(`STC ${stc.stc}, governed by the ${stc.governedBy} rule at ${stc.governingHz} Hz`);
console.log(`Rw (C; Ctr) ${rw.rw} (${rw.c}; ${rw.ctr}) dB`);
