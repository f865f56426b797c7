import { readFileSync } from 'node:fs';
import { checkSpec } from '@boothwright/language';
import { describe, expect, it } from 'vitest';
import { createAssessor } from '../src/index.js';

// The shipped examples, asked what their invented scenarios are meant to show.

const { assess } = createAssessor();
const folder = new URL('../../../shared/examples/', import.meta.url);

function resultOf(path: string) {
  const { spec } = checkSpec(path, {
    read: (name) => {
      try {
        return { kind: 'text', text: readFileSync(new URL(name, folder), 'utf8') };
      } catch {
        return { kind: 'missing' };
      }
    },
  });
  return assess(spec);
}

describe('the tram alcove', () => {
  const result = resultOf('tram-alcove/tram-alcove.booth');
  const verdict = (text: string) => result.requirements.find((entry) => entry.text.includes(text));
  const change = (variant: string, what: string) =>
    result.variants[variant]?.changes.find((entry) => entry.what === `alcove: ${what}`);

  it('presses harder on the floor than its limit', () => {
    expect(verdict('floor-load')?.verdict).toBe('missed');
    expect(verdict('floor-load')?.value?.low).toBeGreaterThan(1.5);
  });

  it('resonates in the band of the tram', () => {
    const finding = result.findings.find((entry) => entry.id === 'cavity-resonance-in-band');
    expect(finding?.message).toContain('tram');
    expect(finding?.figures.resonanceHz).toBeGreaterThan(80);
    expect(finding?.figures.resonanceHz).toBeLessThan(125);
  });

  it('fails in dBFS although it is quiet in dBA', () => {
    expect(verdict('dBFS')?.verdict).toBe('missed');
    expect(result.booths.alcove?.noise.total.dBA?.value).toBeLessThan(35);
    expect(result.findings.map((finding) => finding.id)).toContain('dba-passes-dbfs-fails');
  });

  it('is not worth a better threshold first: 3 mm under the door hardly change the noise inside', () => {
    const inside = change('open-threshold', 'noise inside');
    expect((inside?.variant as number) - (inside?.base as number)).toBeLessThan(1);
    const rating = change('open-threshold', 'STC of the whole booth');
    expect((rating?.base as number) - (rating?.variant as number)).toBeGreaterThan(2);
  });

  it('gains 8 dB of tram by working at night', () => {
    const tram = change('night', 'tram inside');
    expect((tram?.base as number) - (tram?.variant as number)).toBeCloseTo(8, 6);
  });

  it('finds what is planted in it: floor load, too little air, a resonance and openings that cap the walls', () => {
    expect(result.findings.map((finding) => finding.id).sort()).toEqual([
      'cavity-resonance-in-band',
      'dba-passes-dbfs-fails',
      'floor-load-over-limit',
      'leak-caps-wall',
      'more-air-needed',
    ]);
  });

  it('names the footsteps without predicting them', () => {
    expect(result.booths.alcove?.noise.notPredicted.map((entry) => entry.name)).toEqual(['footsteps']);
  });

  it('keeps the room-tone criterion missed by the worst octave, 63 or 125 Hz', () => {
    expect(verdict('NC 15')?.verdict).toBe('missed');
    expect(verdict('NC 15')?.explanation).toMatch(/at (63|125) Hz/);
  });
});

describe('the thin gap', () => {
  const result = resultOf('thin-gap-wall/thin-gap-wall.booth');

  it('resonates at 556 Hz, where its transmission loss has a dip that the glued sheet has not', () => {
    const [finding] = result.findings.filter((entry) => entry.id === 'cavity-resonance-in-band');
    // 1/(2 pi) sqrt(rho c^2 (1/4.9 + 1/3.2)/0.006 m) with 3.2 mm of hardboard at 1000 kg/m3.
    expect(finding?.figures.resonanceHz).toBeCloseTo(556, 0);
    expect(finding?.message).toContain('556 Hz');
    const { transmissionLossDb, withoutGapDb, bandHz } = finding?.figures ?? {};
    expect(withoutGapDb).toBeGreaterThan((transmissionLossDb as number) + 10);
    const loss = result.assemblies.panel?.transmissionLossDb ?? [];
    const dip = result.grid.nominalHz.indexOf(bandHz as number);
    expect(loss[dip]).toBeLessThan(loss[dip - 3] as number);
    expect(loss[dip]).toBeLessThan(loss[dip + 3] as number);
  });

  it('is worse than no gap at all, and the finding says both', () => {
    const [finding] = result.findings.filter((entry) => entry.id === 'cavity-resonance-in-band');
    expect(finding?.figures.withoutGapStc).toBeGreaterThan(finding?.figures.stc as number);
    const noGap = result.variants['no-gap']?.assemblies.panel?.ratings.stc;
    expect(finding?.figures.withoutGapStc).toBe(noGap);
  });

  it('pays off in the voice band when it is 50 mm deep and filled', () => {
    const mean = (variant: string) =>
      result.variants[variant]?.changes.find((entry) => entry.what.includes('mean transmission loss'));
    expect(mean('filled-gap')?.variant).toBeGreaterThan(mean('no-gap')?.variant as number);
  });
});
