import { expect, test } from 'vitest';
import {
  assemblyHover,
  assemblyLabel,
  boothLabel,
  defaultLabel,
  layerLabel,
  openingLabel,
  requirementLabel,
  type Shown,
  sessionLabel,
  showing,
  sourceLabel,
} from '../../src/index.js';
import { nominalHz } from '../fixtures/sample-basics.js';
import { alcove } from '../fixtures/sample-booth.js';
import { requirements } from '../fixtures/sample-requirements.js';
import { shell } from '../fixtures/sample-shell.js';

test('labels say the number of the line in a few words and end without a full stop', () => {
  const labels = [
    assemblyLabel(shell),
    layerLabel(shell.layers[0]!),
    openingLabel('entry', alcove, nominalHz),
    sourceLabel('tram', alcove),
    sourceLabel('footsteps', alcove),
    boothLabel(alcove),
    sessionLabel(alcove.air!),
    defaultLabel('0.5 s'),
    ...requirements.map(requirementLabel),
  ];
  expect(labels).toEqual([
    'STC 29 · 19.2 kg/m² · f₀ 112 Hz',
    '6.24 kg/m²',
    '41 % of what comes in, 80 % at 2 kHz',
    '45 dBA outside, 26 dBA inside',
    'not predicted',
    '26 dBA inside · 431 kg · 2.6 kPa',
    '1155 ppm and 4.1 K warmer at the end, fan high',
    'assumed 0.5 s',
    'missed by 6 points: NC 21',
    'missed by 8 dB: -54 dBFS',
    'missed by 155 ppm: 1155 ppm',
    'missed by 1.1 kPa: 2.6 kPa',
    'met with 0.114 m to spare: 2.136 m',
    'missed by 0.4 dB: 35.4 dBA',
    'not assessed',
    'met with 30 EUR to spare: 1870 EUR',
  ]);
});

test('openingLabel(name, ...) has no answer for a name that is no opening', () => {
  expect(openingLabel('front', alcove, nominalHz)).toBeUndefined();
});

test('sourceLabel(name, ...) has no answer for a source that the booth does not hear', () => {
  expect(sourceLabel('harbour', alcove)).toBeUndefined();
});

test('labels and hovers tell the ratings and the units that were asked for', () => {
  const shown: Shown = { units: 'imperial', ratings: ['Rw', 'Rw+Ctr', 'OITC'] };
  const { rw, ctr } = shell.ratings;
  const label = showing(shown, () => assemblyLabel(shell));
  expect(label).toMatch(new RegExp(`^Rw ${rw} · Rw\\+Ctr ${rw + ctr} · OITC \\d+ · 3\\.94 lb/ft² · f₀ 112 Hz$`));
  const hover = showing(shown, () => assemblyHover('shell', shell, { nominalHz }));
  expect(hover).toMatch(/\*\*OITC \d+\*\* \(-?\d+ to \d+\)/);
  expect(hover).toContain('3.94 lb/ft²');
  expect(hover).not.toContain('kg/m²');
  expect(showing(shown, () => boothLabel(alcove))).toMatch(/ lb · \d+ lb\/ft²$/);
  expect(assemblyLabel(shell)).toBe('STC 29 · 19.2 kg/m² · f₀ 112 Hz');
});
