import { describe, expect, it } from 'vitest';
import { thirdOctaveBands } from '../../src/bands/bands.js';
import { bandSamples, defaultSamplesPerBand } from '../../src/layered/band-samples.js';
import { bandTransmissionLoss } from '../../src/layered/band-transmission-loss.js';
import { diffuseTransmission } from '../../src/layered/diffuse-transmission-loss.js';
import { roomAir as air, board, stacks } from './stacks.js';

const field = { kind: 'finite', size: { width: 2, height: 1.2 } } as const;

describe('bandTransmissionLoss(layers, { air, field, samplesPerBand })', () => {
  it('changes by less than 0.5 dB in any band, and 0.05 dB on average, with eight times the default samples', () => {
    for (const layers of Object.values(stacks)) {
      const usual = bandTransmissionLoss(layers, { air, field });
      const fine = bandTransmissionLoss(layers, { air, field, samplesPerBand: 8 * defaultSamplesPerBand });
      const differences = usual.map((value, band) => Math.abs(value - fine[band]!));
      expect(Math.max(...differences)).toBeLessThan(0.5);
      expect(differences.reduce((a, b) => a + b) / differences.length).toBeLessThan(0.05);
    }
  });

  it('is the mean of the transmission coefficient over the band, not of the decibels', () => {
    const band = thirdOctaveBands[17]!;
    const samples = bandSamples(band, 3);
    const mean = samples.reduce((sum, hz) => sum + diffuseTransmission([board], hz, { air, field }).coefficient, 0) / 3;
    const found = bandTransmissionLoss([board], { air, field, samplesPerBand: 3 })[17];
    expect(found).toBeCloseTo(-10 * Math.log10(mean), 10);
  });

  it('has one finite value per band', () => {
    const found = bandTransmissionLoss(stacks['seven layers']!, { air, field });
    expect(found).toHaveLength(21);
    expect(found.every(Number.isFinite)).toBe(true);
  });
});

describe('bandSamples(band, count)', () => {
  it('lie inside the band in equal ratios around its middle', () => {
    const band = thirdOctaveBands[13]!;
    const samples = bandSamples(band, 4);
    expect(samples[1]! / samples[0]!).toBeCloseTo(samples[3]! / samples[2]!, 12);
    expect(Math.sqrt(samples[0]! * samples[3]!)).toBeCloseTo(band.exact, 9);
    expect(samples[0]!).toBeGreaterThan(band.lower);
    expect(samples[3]!).toBeLessThan(band.upper);
  });

  it('rejects a count that is no count', () => {
    expect(() => bandSamples(thirdOctaveBands[0]!, 0)).toThrow('number of samples per band is 0');
    expect(() => bandSamples(thirdOctaveBands[0]!, 2.5)).toThrow('number of samples per band is 2.5');
  });
});
