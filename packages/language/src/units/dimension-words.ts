import type { DimensionName } from './dimension.js';

/** How messages name a dimension, and a value that has it. */
export const DIMENSION_WORDS: Readonly<Record<DimensionName, { readonly noun: string; readonly example: string }>> = {
  length: { noun: 'a length', example: '12.5 mm' },
  area: { noun: 'an area', example: '2 m2' },
  volume: { noun: 'a volume', example: '3 m3' },
  mass: { noun: 'a mass', example: '40 kg' },
  'mass-per-area': { noun: 'a mass per area', example: '4.9 kg/m2' },
  density: { noun: 'a density', example: '860 kg/m3' },
  pressure: { noun: 'a force per area', example: '1.5 kPa' },
  resistivity: { noun: 'a flow resistivity', example: '12 kPa.s/m2' },
  'flow-resistance': { noun: 'a flow resistance', example: '200 Pa.s/m' },
  time: { noun: 'a time', example: '0.5 s' },
  frequency: { noun: 'a frequency', example: '125 Hz' },
  flow: { noun: 'a flow of air', example: '10 L/s' },
  speed: { noun: 'a speed', example: '1.5 m/s' },
  power: { noun: 'a power', example: '25 W' },
  share: { noun: 'a share', example: '80 %' },
  concentration: { noun: 'a share of the air in ppm', example: '600 ppm' },
  count: { noun: 'a number', example: '3' },
  money: { noun: 'a sum of money', example: '24.50 EUR' },
  level: { noun: 'a level', example: '35 dBA' },
  temperature: { noun: 'a temperature', example: '20 degC' },
  'temperature-difference': { noun: 'a difference of temperatures', example: '4 K' },
  stiffness: { noun: 'a force per length', example: '200 N/mm' },
  angle: { noun: 'an angle', example: '30 deg' },
  'clock-time': { noun: 'a time of day', example: '13:00' },
};

export function suchAs(dimension: DimensionName): string {
  const words = DIMENSION_WORDS[dimension];
  return `${words.noun} such as \`${words.example}\``;
}
