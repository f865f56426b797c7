import { describe, expect, test } from 'vitest';
import { ArgumentError } from '../../src/errors/argument-error.js';
import { microphonePattern } from '../../src/sources/microphone-pattern.js';
import { patternRejection } from '../../src/sources/pattern-rejection.js';
import { randomEnergyEfficiency } from '../../src/sources/random-energy-efficiency.js';

const names = ['omni', 'cardioid', 'supercardioid', 'hypercardioid', 'figure-eight'] as const;

describe.each(names)('microphonePattern(%s)', (name) => {
  const pattern = microphonePattern(name);

  test('is 1 on the axis', () => {
    expect(pattern.pressure + pattern.gradient).toBeCloseTo(1, 12);
  });

  test('takes in as much energy as the sum over the sphere says', () => {
    const steps = 2000;
    let sum = 0;
    for (let step = 0; step < steps; step++) {
      const cosine = -1 + (2 * (step + 0.5)) / steps;
      sum += (pattern.pressure + pattern.gradient * cosine) ** 2 / steps;
    }
    expect(randomEnergyEfficiency(pattern)).toBeCloseTo(sum, 6);
  });

  test('never gains on noise, and least in the most doubtful field', () => {
    const diffuse = patternRejection(pattern, 'diffuse');
    const few = patternRejection(pattern, 'few-modes');
    expect(patternRejection(pattern, 'closed-box')).toBe(0);
    expect(few).toBeGreaterThanOrEqual(0);
    expect(diffuse).toBeGreaterThanOrEqual(few);
  });
});

test('one standing wave along the axis leaves a cardioid 3 dB and a figure-eight nothing', () => {
  expect(patternRejection(microphonePattern('cardioid'), 'few-modes')).toBeCloseTo(10 * Math.log10(2), 9);
  expect(patternRejection(microphonePattern('figure-eight'), 'few-modes')).toBe(0);
  expect(patternRejection(microphonePattern('omni'), 'diffuse')).toBeCloseTo(0, 12);
});

test('the supercardioid has the largest ratio of front to back', () => {
  const half = (a: number, sign: number) => {
    let sum = 0;
    for (let step = 0; step < 1000; step++) sum += (a + (1 - a) * sign * ((step + 0.5) / 1000)) ** 2;
    return sum;
  };
  const ratio = (a: number) => half(a, 1) / half(a, -1);
  const { pressure } = microphonePattern('supercardioid');
  expect(ratio(pressure)).toBeGreaterThan(ratio(pressure + 0.01));
  expect(ratio(pressure)).toBeGreaterThan(ratio(pressure - 0.01));
});

test('unknown words are told', () => {
  expect(() => microphonePattern('shotgun' as 'omni')).toThrow(ArgumentError);
  expect(() => patternRejection(microphonePattern('omni'), 'hall' as 'diffuse')).toThrow('sound field is "hall"');
});
