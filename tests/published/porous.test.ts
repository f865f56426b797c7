// Figures marked "as transcribed" were read in public transcriptions; the printed pages were not opened.
import {
  type Air,
  airProperties,
  delanyBazleyPorous,
  diffuseAbsorption,
  type Layer,
  mikiPorous,
  normalIncidenceAbsorption,
} from '@boothwright/acoustics';
import { describe, expect, test } from 'vitest';

const air: Air = {
  ...airProperties({ temperature: 20, relativeHumidity: 0.5 }),
  density: 1.205,
  soundSpeed: 343,
  impedance: 1.205 * 343,
};

/** Impedance over rho c and wavenumber over omega/c. */
const relative = (medium: ReturnType<typeof mikiPorous>, hz: number) => {
  const k = (2 * Math.PI * hz) / air.soundSpeed;
  return [
    medium.characteristicImpedance.re / air.impedance,
    medium.characteristicImpedance.im / air.impedance,
    medium.wavenumber.re / k,
    medium.wavenumber.im / k,
  ];
};

test('Delany and Bazley 1970 at X = rho f/sigma = 0.1, as given in Bies 2017 App. D, Mechel 2008 G.11 and Hopkins 2007, as transcribed', () => {
  const hz = 1000;
  const found = relative(delanyBazleyPorous((air.density * hz) / 0.1, hz, air), hz);
  const expected = [1.3240679696882804, -0.46937424158816093, 1.4901611144874722, -0.7438096426114194];
  found.forEach((value, i) => {
    expect(value).toBeCloseTo(expected[i]!, 10);
  });
});

test('Miki, J. Acoust. Soc. Jpn (E) 11 (1990) 19, Eqs. (30)-(34), at f/sigma = 0.1, as transcribed', () => {
  const hz = 1000;
  const found = relative(mikiPorous(hz / 0.1, hz, air), hz);
  const expected = [1.2999839642782076, -0.4585469168252603, 1.4522999064714557, -0.6639264682149806];
  found.forEach((value, i) => {
    expect(value).toBeCloseTo(expected[i]!, 10);
  });
});

describe('rigid-backed layers at normal incidence with Miki (computed independently from Zs = -j Zc cot(k d); no published band table was found)', () => {
  const hz = [125, 250, 500, 1000, 2000, 4000];
  test.each([
    [10_000, 0.05, 0, [0.0658, 0.1921, 0.4854, 0.883, 0.9816, 0.9711]],
    [10_000, 0.1, 0, [0.2625, 0.621, 0.9366, 0.9474, 0.982, 0.9906]],
    [20_000, 0.05, 0, [0.0853, 0.2625, 0.621, 0.9366, 0.9474, 0.982]],
    [10_000, 0.05, 0.05, [0.1749, 0.4942, 0.9083, 0.9655, 0.8865, 0.9978]],
  ])('%d Pa s/m2, %d m, gap %d m', (flowResistivity, thickness, gap, expected) => {
    const layers: Layer[] = [
      { kind: 'air-gap', thickness: gap },
      { kind: 'porous', thickness, flowResistivity },
    ];
    const found = normalIncidenceAbsorption(layers, hz, { air, backing: 'rigid' });
    // The gap carries heat to its walls here, which the comparison leaves out: a few thousandths.
    found.forEach((value, i) => {
      expect(Math.abs(value - expected[i]!)).toBeLessThan(gap > 0 ? 3e-3 : 6e-5);
    });
  });
});

test('standing-wave ratio 3 means |r| = 0.5 and alpha = 0.75 (ISO 10534-1:1996, Eqs. (9), (13), (14), as transcribed)', () => {
  // A cloth of 3 rho c before a quarter-wave gap: r = (3 - 1)/(3 + 1).
  const layers: Layer[] = [
    { kind: 'air-gap', thickness: air.soundSpeed / 500 / 4 },
    { kind: 'screen', flowResistance: 3 * air.impedance },
  ];
  expect(normalIncidenceAbsorption(layers, [500], { air, backing: 'rigid' })[0]).toBeCloseTo(0.75, 2);
});

test.each([
  [1, 1],
  [2, 0.89],
  [3, 0.75],
  [4, 0.64],
  [5, 0.56],
])(
  'a resistance of %d rho c at resonance absorbs %d at normal incidence (Maa, JASA 104 (1998) 2861, Table I, as transcribed)',
  (r, printed) => {
    const layers: Layer[] = [
      { kind: 'air-gap', thickness: air.soundSpeed / 500 / 4 },
      { kind: 'screen', flowResistance: r * air.impedance },
    ];
    expect(Math.abs(normalIncidenceAbsorption(layers, [500], { air, backing: 'rigid' })[0]! - printed)).toBeLessThan(
      0.006,
    );
  },
);

test('no locally reacting plane absorbs more than 0.951 of a diffuse field (Mechel: Formulas of Acoustics, 2nd ed. 2008, Sect. D.5, as transcribed)', () => {
  // Dense fibre refracts so strongly that it is nearly locally reacting: |k_p| > 4 k.
  let most = 0;
  for (const flowResistivity of [60_000, 100_000]) {
    for (const thickness of [0.02, 0.05, 0.1, 0.3]) {
      for (const hz of [63, 125, 250, 500]) {
        const medium = mikiPorous(flowResistivity, hz, air);
        const k = (2 * Math.PI * hz) / air.soundSpeed;
        if (Math.hypot(medium.wavenumber.re, medium.wavenumber.im) < 4 * k) continue;
        most = Math.max(most, diffuseAbsorption([{ kind: 'porous', thickness, flowResistivity }], hz, air, 'rigid'));
      }
    }
  }
  expect(most).toBeGreaterThan(0.5);
  expect(most).toBeLessThan(0.951);
});
