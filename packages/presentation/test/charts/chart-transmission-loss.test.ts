import { describe, expect, test } from 'vitest';
import { chartTransmissionLoss } from '../../src/charts/chart-transmission-loss.js';
import { nominalHz } from '../fixtures/sample-basics.js';
import { shell } from '../fixtures/sample-shell.js';
import { readSvg } from './read-svg.js';

const contour = { label: 'STC 29', valuesDb: nominalHz.map((hz) => (hz < 125 || hz > 4000 ? null : 29)) };
const chart = {
  title: 'Transmission loss of shell',
  description: 'shell: STC 29',
  nominalHz,
  lossDb: shell.transmissionLossDb,
  rangeDb: shell.transmissionLossRangeDb,
  contour,
};

describe('chartTransmissionLoss(chart)', () => {
  test('carries the exact figures of every line, with the bands they belong to', () => {
    const { series, hz } = readSvg(chartTransmissionLoss(chart));
    expect(hz).toBe('50,63,80,100,125,160,200,250,315,400,500,630,800,1000,1250,1600,2000,2500,3150,4000,5000');
    expect(series).toEqual({
      range: '4,4,4,4,4,4,2.5,2.5,2.5,2.5,2.5,2.5,2.5,2.5,2.5,2.5,2.5,2.5,2.5,2.5,2.5',
      contour: ',,,,29,29,29,29,29,29,29,29,29,29,29,29,29,29,29,29,',
      loss: '14,13,12,11,10,12,16,21,25,29,32,35,38,40,42,44,45,44,42,45,48',
    });
  });

  test('spaces thirds evenly on the logarithmic axis and puts 10 dB at equal heights', () => {
    const path =
      readSvg(chartTransmissionLoss({ ...chart, lossDb: nominalHz.map((_, band) => band * 2) })).path('loss') ?? '';
    const points = path
      .slice(1)
      .split('L')
      .map((point) => point.split(',').map(Number));
    expect(points).toHaveLength(21);
    // Ten octaves of a factor of ten in three bands each: 100 Hz to 1 kHz is as wide as 50 Hz to 500 Hz.
    expect(points[13]![0]! - points[3]![0]!).toBeCloseTo(points[10]![0]! - points[0]![0]!, 0);
    expect(points[5]![1]! - points[10]![1]!).toBeCloseTo(points[0]![1]! - points[5]![1]!, 0);
  });

  test('labels the nominal octave centres', () => {
    expect(readSvg(chartTransmissionLoss(chart)).texts).toEqual(
      expect.arrayContaining(['63', '125', '250', '500', '1k', '2k', '4k', 'Hz', 'transmission loss, dB', 'STC 29']),
    );
  });

  test('says title and description, is an image, and needs no style sheet', () => {
    const svg = chartTransmissionLoss({ ...chart, title: 'a < b & "c"' });
    const { title, description, root, names, attributeNames } = readSvg(svg);
    expect(title).toBe('a &lt; b &amp; &quot;c&quot;');
    expect(description).toBe('shell: STC 29');
    expect(root).toContain(' role="img"');
    expect(names).toEqual(['desc', 'g', 'path', 'svg', 'text', 'title']);
    expect(attributeNames).not.toContain('style');
    expect(svg).not.toMatch(/NaN|undefined|Infinity|currentColor|\bon[a-z]+=|href/);
  });

  test('stays below 4 kB with range and contour', () => {
    expect(chartTransmissionLoss(chart).length).toBeLessThan(4096);
  });

  test('draws a second curve to compare with', () => {
    const other = { label: 'base', lossDb: shell.transmissionLossDb.map((loss) => loss - 5) };
    expect(readSvg(chartTransmissionLoss({ ...chart, other })).series.other).toMatch(/^9,8,7,/);
  });
});
