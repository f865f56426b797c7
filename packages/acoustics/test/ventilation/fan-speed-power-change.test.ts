import { expect, test } from 'vitest';
import { fanSpeedPowerChange } from '../../src/ventilation/fan-speed-power-change.js';

test('fanSpeedPowerChange(ratio) is 15 dB for half the speed', () => {
  expect(fanSpeedPowerChange(0.5)).toBeCloseTo(-15.05, 2);
  expect(fanSpeedPowerChange(1)).toBe(0);
  expect(() => fanSpeedPowerChange(0)).toThrow('speed ratio of the fan is 0');
});
