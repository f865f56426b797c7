import type { Microphone } from '@boothwright/language';
import { describe, expect, it } from 'vitest';
import { findingsById } from '../fixtures/assessed.js';
import { booth, given, noise, roomTone, shell, site, slab, spec } from '../fixtures/spec-builder.js';

const id = 'dba-passes-dbfs-fails';
const rumble = (level: number) => site({ sources: [noise('tram', [level, level - 15, 10, 5, 0, 0, 0])] });

describe(id, () => {
  it('fires when low sound alone spoils the recording', () => {
    const [finding] = findingsById(spec({ site: rumble(60), requirements: [roomTone(-60, 'FS')] }), id);
    expect(finding?.figures.dBFS).toBeGreaterThan(-60);
    expect(finding?.figures.aWeightedDbFS).toBeLessThanOrEqual(-60);
    expect(finding?.figures.bandHz).toBeLessThanOrEqual(125);
    expect(finding?.figures.bandShare).toBeGreaterThan(0.5);
  });

  it('names the octaves that carry it and the filter that would pass', () => {
    const unfiltered = { ...(booth().microphone as Microphone), highPass: undefined };
    const [finding] = findingsById(
      spec({
        site: rumble(55),
        booths: [booth(shell, { microphone: unfiltered })],
        requirements: [roomTone(-52, 'FS')],
      }),
      id,
    );
    expect(finding?.explanation).toContain('of its energy in the octave of 63 Hz');
    expect(finding?.fix).toContain('no high-pass filter is set');
    const before = finding?.figures.dBFS as number;
    const after = finding?.figures.dBFSWith80HzFilter as number;
    // 80 Hz takes 8.7, 5.6 and 2.9 dB off the thirds of 50, 63 and 80 Hz.
    expect(before - after).toBeGreaterThan(2.9);
    expect(before - after).toBeLessThan(8.7);
    expect(finding?.fix).toContain(after <= -52 ? 'and pass' : 'Hz would read');
  });

  it('is silent when the recording passes', () => {
    expect(findingsById(spec({ site: rumble(35), requirements: [roomTone(-60, 'FS')] }), id)).toEqual([]);
  });

  it('is silent when the booth is loud in dBA as well', () => {
    const loud = site({ sources: [noise('street', [80, 80, 80, 80, 80, 80, 80])] });
    expect(findingsById(spec({ site: loud, requirements: [roomTone(-60, 'FS')] }), id)).toEqual([]);
  });

  it('is silent when the noise of the microphone fails it A-weighted as well', () => {
    const heard = (decibels: number) =>
      findingsById(
        spec({
          site: rumble(60),
          booths: [
            booth(shell, {
              microphone: { ...(booth().microphone as Microphone), selfNoise: given({ decibels, weighting: 'A' }) },
            }),
          ],
          requirements: [roomTone(-60, 'FS')],
        }),
        id,
      );
    // Normal speech at 0.2 m is near 73 dBA: -60 dBFS are 33 dBA at the capsule.
    expect(heard(28)).toHaveLength(1);
    expect(heard(36)).toEqual([]);
  });

  it('fires in an unrelated booth', () => {
    const cellar = { ...booth(slab), name: 'cellar' };
    const found = findingsById(
      spec({ walls: [slab], booths: [cellar], site: rumble(55), requirements: [roomTone(-62, 'FS')] }),
      id,
    );
    expect(found[0]?.message).toContain('cellar');
  });
});
