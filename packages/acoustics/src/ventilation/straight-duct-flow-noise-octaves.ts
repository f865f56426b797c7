import { exactDuctOctaves } from './duct-tables.js';
import { straightDuctFlowNoise } from './straight-duct-flow-noise.js';

/** `straightDuctFlowNoise` in the 8 octaves 63 Hz to 8 kHz, at their exact centres; units and source as there. */
export function straightDuctFlowNoiseOctaves(speed: number, area: number): number[] {
  return exactDuctOctaves.map((hz) => straightDuctFlowNoise(hz, speed, area));
}
