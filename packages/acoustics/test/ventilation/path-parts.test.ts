import { describe, expect, test } from 'vitest';
import { angledBendCoefficient } from '../../src/ventilation/angled-bend-coefficient.js';
import { doorwayExchange } from '../../src/ventilation/doorway-exchange.js';
import { grilleLossCoefficient } from '../../src/ventilation/grille-loss-coefficient.js';
import { joinedSteps, linearStep, takeStep } from '../../src/ventilation/linear-step.js';
import { steadyZoneConcentrations } from '../../src/ventilation/steady-zone-concentrations.js';
import { suddenContractionCoefficient } from '../../src/ventilation/sudden-contraction-coefficient.js';
import { zoneConcentrations } from '../../src/ventilation/zone-concentrations.js';

test('angledBendCoefficient(angle) is that of the square bend at a right angle, none straight on', () => {
  expect(angledBendCoefficient(90)).toBeCloseTo(1.2, 12);
  expect(angledBendCoefficient(0)).toBe(0);
  // Half way between the printed 0.34 and 0.55.
  expect(angledBendCoefficient(52.5)).toBeCloseTo(0.445, 9);
  // Turned back: (0.946 + 2.047)/(0.946/2 + 2.047/4) = 3.0393, times 1.2.
  expect(angledBendCoefficient(180)).toBeCloseTo(3.647, 3);
  expect(() => angledBendCoefficient(181)).toThrow('angle of the bend');
});

test('suddenContractionCoefficient(wide, narrow) goes from nothing to the flush inlet', () => {
  expect(suddenContractionCoefficient(1, 1)).toBe(0);
  expect(suddenContractionCoefficient(1e9, 1)).toBeCloseTo(0.5, 8);
  expect(() => suddenContractionCoefficient(1, 2)).toThrow('area of the wide duct');
});

test('grilleLossCoefficient(free) is nothing for an open face and rises steeply as it closes', () => {
  expect(grilleLossCoefficient(1)).toBe(0);
  // (0.7071 sqrt(0.5) + 0.5)^2/0.25 = 1/0.25.
  expect(grilleLossCoefficient(0.5)).toBeCloseTo(4, 12);
  expect(grilleLossCoefficient(0.25)).toBeGreaterThan(4 * grilleLossCoefficient(0.5));
  expect(() => grilleLossCoefficient(0)).toThrow('free share');
});

test('doorwayExchange({ ... }) is Bernoulli integrated over half the opening', () => {
  const door = { width: 0.66, height: 1.9, difference: 1, temperature: 20, dischargeCoefficient: 0.6 };
  // Speed at z above the middle: sqrt(2 g z dT/T); summed in a thousand strips up to half the height.
  const strips = 1000;
  const strip = 0.95 / strips;
  const sum = Array.from({ length: strips }, (_, index) =>
    Math.sqrt((2 * 9.81 * (index + 0.5) * strip) / 293.15),
  ).reduce((total, speed) => total + speed * strip, 0);
  expect(doorwayExchange(door)).toBeCloseTo(0.6 * 0.66 * sum, 5);
  expect(doorwayExchange({ ...door, difference: 4 })).toBeCloseTo(2 * doorwayExchange(door), 12);
});

describe('linearStep(zones, unit, advance)', () => {
  const zones = {
    volumes: [30, 3.1],
    between: [
      [0, 0.01],
      [0.01, 0],
    ],
    fromOutside: [0.006, 0],
  };
  const load = { outside: 420, generation: [0, 5.6e-6] };
  const minute = linearStep(2, 1000, (state) => zoneConcentrations(zones, load, state, 60));

  test('gets, step by step, where the exact solution gets at once', () => {
    let state: readonly number[] = [600, 600];
    for (let step = 0; step < 90; step++) state = takeStep(minute, state);
    const exact = zoneConcentrations(zones, load, [600, 600], 5400);
    expect(state[0]).toBeCloseTo(exact[0] as number, 6);
    expect(state[1]).toBeCloseTo(exact[1] as number, 6);
  });

  test('leaves the steady state as it is', () => {
    const steady = steadyZoneConcentrations(zones, load) as number[];
    const after = takeStep(minute, steady);
    after.forEach((value, zone) => {
      expect(value).toBeCloseTo(steady[zone] as number, 6);
    });
  });

  test('joins steps of different loads in their order', () => {
    const empty = linearStep(2, 1000, (state) =>
      zoneConcentrations(zones, { ...load, generation: [0, 0] }, state, 300),
    );
    const both = takeStep(joinedSteps([minute, empty]), [600, 900]);
    const one = takeStep(empty, takeStep(minute, [600, 900]));
    expect(both[0]).toBeCloseTo(one[0] as number, 9);
    expect(both[1]).toBeCloseTo(one[1] as number, 9);
  });
});
