export {
  type Air,
  type AirConditions,
  airProperties,
  saturationPressure,
  standardPressure,
} from './air/air-properties.js';
export { type Band, octaveBands, thirdOctaveBands } from './bands/bands.js';
