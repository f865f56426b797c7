import { describe, expect, it } from 'vitest';
import manifest from '../../../extension/package.json' with { type: 'json' };
import { defaultSettings, readSettings } from '../../src/common/settings.js';
import { shownComplaints } from '../../src/common/shown-settings.js';

describe('readSettings', () => {
  it('takes what is sent and leaves the rest as it is by default', () => {
    expect(readSettings({ inlayHints: { noise: false, layers: true } }).inlayHints).toEqual({
      ...defaultSettings.inlayHints,
      noise: false,
      layers: true,
    });
  });

  it('switches each lens by itself', () => {
    expect(readSettings({ codeLens: { variants: false } }).codeLens).toEqual({
      booths: true,
      variants: false,
      sinceCommit: true,
    });
  });

  it('takes the severities that can be followed', () => {
    const sent = { 'value-unusual': 'off', 'no-fresh-air': 'error', 'unknown-name': 'off', nothing: 'off', allow: 3 };
    expect(readSettings({ severities: sent }).severities).toEqual({ 'value-unusual': 'off', 'no-fresh-air': 'error' });
  });

  it('takes no notice of nonsense', () => {
    for (const nonsense of [
      undefined,
      null,
      3,
      'yes',
      [],
      { inlayHints: 7 },
      { inlayHints: { noise: 'no' } },
      { codeLens: 1 },
      { severities: 'off' },
      { severities: ['off'] },
      { severities: { 'value-unusual': null } },
    ]) {
      expect(readSettings(nonsense)).toEqual(defaultSettings);
    }
  });

  it('takes how figures are told, and leaves out what is wrong', () => {
    const show = { units: 'imperial', ratings: ['Rw', 'OITC'], currency: 'CHF' };
    expect(readSettings({ show }).show).toEqual(show);
    expect(shownComplaints(show)).toEqual([]);
    const wrong = { units: 'feet', ratings: ['STC', 'dB'], currency: 'XXX' };
    expect(readSettings({ show: wrong }).show).toEqual(defaultSettings.show);
    expect(shownComplaints(wrong)).toEqual([
      'boothwright.show.units: expected `metric` or `imperial`, not "feet"',
      'boothwright.show.ratings: expected a list of `STC`, `Rw`, `Rw+C`, `Rw+Ctr`, `OITC`, not ["STC","dB"]',
      'boothwright.show.currency: expected a code of ISO 4217 such as `EUR`, not "XXX"',
    ]);
    for (const ratings of [[], ['STC', 'STC'], 'STC', { STC: true }]) {
      expect(readSettings({ show: { ratings } }).show.ratings).toEqual(['STC']);
      expect(shownComplaints({ ratings })).toHaveLength(1);
    }
    expect(shownComplaints('imperial')).toHaveLength(1);
    expect(shownComplaints(undefined)).toEqual([]);
  });

  it("has the same defaults as the extension's manifest", () => {
    for (const section of ['inlayHints', 'codeLens', 'show'] as const) {
      const declared = Object.entries(manifest.contributes.configuration.properties)
        .filter(([name]) => name.startsWith(`boothwright.${section}.`))
        .map(([name, { default: byDefault }]) => [name.replace(`boothwright.${section}.`, ''), byDefault]);
      expect(Object.fromEntries(declared)).toEqual(defaultSettings[section]);
    }
  });
});
