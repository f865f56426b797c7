import { airProperties, wallTransmissionLosses } from '@boothwright/acoustics';
import { expect, it } from 'vitest';
import { constructionOf } from '../../src/assembly/construction.js';
import { transmissionLossOf } from '../../src/assembly/transmission-loss.js';
import { createMemo } from '../../src/memo/memo.js';
import { airGap, byMass, frame, gypsum, plywood, sheet, vinyl, wool } from '../fixtures/spec-builder.js';

const air = airProperties({ temperature: 20, relativeHumidity: 0.5 });
const size = { width: 4, height: 2.5 };

it('transmissionLossOf(layers, size) of a limp sheet rises by 6 dB when its mass doubles', () => {
  const memo = createMemo();
  const light = transmissionLossOf([byMass(vinyl, 5)], size, air, memo).total;
  const heavy = transmissionLossOf([byMass(vinyl, 10)], size, air, memo).total;
  // The rule holds where the mass is large against the air, well above the lowest bands.
  for (let band = 8; band < 21; band += 1) {
    expect((heavy[band] as number) - (light[band] as number)).toBeCloseTo(6, 0);
  }
});

it('transmissionLossOf(layers, size) is nothing for a build-up that is not there', () => {
  expect(transmissionLossOf([sheet(wool, 0)], size, air, createMemo()).total).toEqual(Array(21).fill(0));
});

it('transmissionLossOf(layers, size) widens the range by a stated tolerance', () => {
  const memo = createMemo();
  const plain = transmissionLossOf([byMass(vinyl, 20)], size, air, memo).halfWidth;
  const loose = transmissionLossOf([byMass(vinyl, 20, 10)], size, air, memo).halfWidth;
  // 20 +- 10 kg/m2 is 20 lg(30/10) / 2 = 4.8 dB either way, beside the 3 dB of the model.
  expect(loose[14]).toBeCloseTo(Math.hypot(plain[14] as number, 4.77), 1);
});

it('transmissionLossOf(layers, size) widens the range by what it promises beyond the practical ceiling', () => {
  const memo = createMemo();
  const wall = transmissionLossOf([byMass(vinyl, 20), sheet(wool, 0.1), byMass(vinyl, 20)], size, air, memo);
  const top = wall.total.at(-1) as number;
  expect(top).toBeGreaterThan(70);
  expect(wall.halfWidth.at(-1)).toBeGreaterThan(top - 55);
});

it('transmissionLossOf(layers, size) lets no range end below nothing: a wall does not amplify', () => {
  const { total, halfWidth, low } = transmissionLossOf([byMass(vinyl, 0.5)], size, air, createMemo());
  expect((total[0] as number) - (halfWidth[0] as number)).toBeLessThan(0);
  expect(low[0]).toBeCloseTo(Math.min(0, total[0] as number), 9);
  expect(low.at(-1)).toBeCloseTo((total.at(-1) as number) - (halfWidth.at(-1) as number), 9);
});

it('transmissionLossOf(layers, size) splits a framed wall into what goes straight and what goes through the studs', () => {
  const wall = transmissionLossOf(
    [sheet(plywood, 0.012), frame(0.07, 0.07), sheet(gypsum, 0.0125)],
    size,
    air,
    createMemo(),
  );
  const studs = wall.connections as readonly number[];
  const sum = wall.airborne.map(
    (loss, band) => -10 * Math.log10(10 ** (-loss / 10) + 10 ** (-(studs[band] as number) / 10)),
  );
  wall.total.forEach((loss, band) => {
    expect(loss).toBeCloseTo(sum[band] as number, 6);
  });
});

it('transmissionLossOf(layers, size) is computed once for the same physical inputs, whatever the names', () => {
  const memo = createMemo();
  transmissionLossOf([byMass(vinyl, 5)], size, air, memo);
  transmissionLossOf([byMass({ ...vinyl, name: 'other' }, 5)], size, air, memo);
  expect(memo.computed).toBe(1);
});

it('transmissionLossOf(layers, size) hears the bays that separate frames make of a cavity', () => {
  const memo = createMemo();
  const wall = (...between: Parameters<typeof transmissionLossOf>[0]) =>
    transmissionLossOf([sheet(gypsum, 0.0125), ...between, sheet(gypsum, 0.0125)], size, air, memo);
  const bays = wall(frame(0.07), airGap(0.02), frame(0.07));
  const open = wall(airGap(0.16));
  expect(bays.connections).toBeNull();
  // Nothing runs along a bay narrower than half a wavelength, so an oblique wave finds the stiffer air of the depth alone.
  const difference = bays.total.map((loss, band) => loss - (open.total[band] as number));
  expect(Math.max(...difference.map(Math.abs))).toBeGreaterThan(1);
});

it('transmissionLossOf(layers, size) of a part of a booth is near the converged curve, resonant gaps included', () => {
  const part = { width: 0.66, height: 1.9 };
  const boards = sheet(gypsum, 0.0125);
  for (const layers of [
    [sheet(plywood, 0.012), airGap(0.012), sheet(plywood, 0.018)],
    [boards, airGap(0.05), boards],
    [boards, airGap(0.05), boards, airGap(0.05), boards],
  ]) {
    const { total } = transmissionLossOf(layers, part, air, createMemo());
    const { layers: stack, connections, separateFrames } = constructionOf(layers);
    const [close] = wallTransmissionLosses(
      { layers: stack, connections, separateFrames },
      { air, bandTolerance: 0.0005 },
      [part],
    );
    total.forEach((loss, band) => {
      expect(Math.abs(loss - close!.total[band]!), `band ${band} of ${layers.length} layers`).toBeLessThan(0.5);
    });
  }
});
