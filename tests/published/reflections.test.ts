// A plate of finite size as a mirror. The formula is that of J. H. Rindel (Nordic Acoustical Meeting 1986, from memory): not
// found was a page that prints a level for a stated plate. What can be held against print is its two halves, the Fresnel
// integrals and the light behind a straight edge; the whole is held against the integral over the plate that it shortens.
import { finiteReflector, fresnel, type ReflectorEdges } from '@boothwright/acoustics';
import { describe, expect, test } from 'vitest';

describe('Fresnel integrals: W. J. Thompson, Atlas for Computing Mathematical Functions (1997), as transcribed in public code', () => {
  // Up to 1.6 by the series, above by rational functions with an error below 0.002 each.
  test.each([
    [0, 0, 0, 1e-8],
    [0.5, 0.49234423, 0.06473243, 1e-7],
    [1, 0.7798934, 0.43825915, 1e-7],
    [1.5, 0.44526118, 0.69750496, 1e-7],
    [2, 0.48825341, 0.34341568, 0.002],
    [2.5, 0.45741301, 0.61918176, 0.002],
  ])('C and S of %f: %f and %f within %f', (x, c, s, most) => {
    const found = fresnel(x);
    expect(Math.abs(found[0] - c)).toBeLessThan(most);
    expect(Math.abs(found[1] - s)).toBeLessThan(most);
  });
});

const endless: ReflectorEdges = { from: -1e4, to: 1e4, cosine: 1 };

// J. Kielkopf, optics laboratory manual, University of Louisville, Eqs. (91), (92), as read on the page: intensity
// I = (I0/2)((C(w) + 1/2)^2 + (S(w) + 1/2)^2), x^2 = b lambda (a + b)/(2a) w^2 on a screen, a and b to source and screen. In the
// plane of the edge x shrinks by a/(a + b).
test.each([
  [-1, -13.86],
  [0, -6.02],
  [1.2, 1.37],
  [1.9, -1.07],
])('the straight edge of an optics manual at w = %f, worked by hand from its equations: %f dB', (w, byHand) => {
  const [a, b, wavelength] = [0.4, 0.7, 0.17];
  const x = w * Math.sqrt((b * wavelength * (a + b)) / (2 * a)) * (a / (a + b));
  const level = finiteReflector([{ from: -x, to: 1e4, cosine: 1 }, endless], [a, b], wavelength);
  expect(Math.abs(level - byHand)).toBeLessThan(0.05);
});

/**
 * Pressure that a hard plate sends to the microphone, over that of an endless one: the Kirchhoff integral over the plate,
 * p = (1/lambda) sum of exp(-jk(r1 + r2)) (cos1 + cos2)/(2 r1 r2) dS, with the true distances at every point. In dB.
 */
function byIntegral(
  plate: readonly [number, number],
  distance: readonly [number, number],
  slantDeg: number,
  hz: number,
) {
  const wavelength = 343 / hz;
  const k = (2 * Math.PI) / wavelength;
  const slant = (slantDeg * Math.PI) / 180;
  const end = (length: number, side: number) => [side * length * Math.sin(slant), 0, length * Math.cos(slant)];
  const [one, two] = [end(distance[0], -1), end(distance[1], 1)];
  const steps = 300;
  let re = 0;
  let im = 0;
  for (let i = 0; i < steps; i++) {
    const x = ((i + 0.5) / steps - 0.5) * plate[0];
    for (let j = 0; j < steps; j++) {
      const y = ((j + 0.5) / steps - 0.5) * plate[1];
      const r1 = Math.hypot(one[0]! - x, one[1]! - y, one[2]!);
      const r2 = Math.hypot(two[0]! - x, two[1]! - y, two[2]!);
      const part = (one[2]! / r1 + two[2]! / r2) / (2 * r1 * r2);
      re += part * Math.cos(k * (r1 + r2));
      im -= part * Math.sin(k * (r1 + r2));
    }
  }
  const area = (plate[0] * plate[1]) / steps ** 2;
  return 20 * Math.log10(((Math.hypot(re, im) * area) / wavelength) * (distance[0] + distance[1]));
}

describe('a plate before a mouth and a microphone against the integral over its face', () => {
  test.each([
    // A copy stand, a script on a music desk and a screen, at the distances of a booth.
    [[0.45, 0.32], [0.5, 0.45], 20],
    [[0.3, 0.21], [0.4, 0.35], 0],
    [[0.55, 0.32], [0.7, 0.6], 35],
  ] as const)('%o m at %o m, %i degrees: 500 Hz, 1 and 2 kHz, 0 to 1.2 dB above', (plate, distance, slantDeg) => {
    for (const hz of [500, 1000, 2000]) {
      const edges = [
        { from: -plate[0] / 2, to: plate[0] / 2, cosine: Math.cos((slantDeg * Math.PI) / 180) },
        { from: -plate[1] / 2, to: plate[1] / 2, cosine: 1 },
      ] as const;
      const found = finiteReflector(edges, distance, 343 / hz);
      // The formula takes the plate to be small against the distances, which makes it the louder one.
      const louder = found - byIntegral(plate, distance, slantDeg, hz);
      expect(louder).toBeGreaterThan(0);
      expect(louder).toBeLessThan(1.2);
    }
  });
});
