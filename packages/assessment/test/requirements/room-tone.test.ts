import { frequencyWeighting } from '@boothwright/acoustics';
import { describe, expect, it } from 'vitest';
import { exactHz } from '../../src/bands/grid.js';
import { governingBand } from '../../src/noise/governing.js';
import { onlyBooth, onlyVerdict } from '../fixtures/assessed.js';
import {
  booth,
  door,
  given,
  impact,
  noise,
  quietFan,
  roomTone,
  shell,
  site,
  spec,
  streetLevels,
  unknownFan,
  vent,
} from '../fixtures/spec-builder.js';

const quiet = streetLevels.map((level) => level - 25);
const quietSite = site({ sources: [noise('street', quiet)] });

describe('require room-tone', () => {
  it('in dBA compares the A-weighted total and names source, path and band', () => {
    const base = spec();
    const level = onlyBooth(base).noise.total.dBA?.value as number;
    const missed = onlyVerdict({ ...base, requirements: [roomTone(20, 'A')] });
    expect(missed.verdict).toBe('missed');
    expect(missed.value?.value).toBe(level);
    expect(missed.margin).toBeCloseTo(20 - level, 9);
    expect(missed.limitedBy).toMatch(/^(face|door|vent)/);
    expect(missed.explanation).toContain('street');
    const met = onlyVerdict({ ...base, requirements: [roomTone(Math.ceil(level), 'A')] });
    expect(met.verdict).toBe('met');
    expect(met.withinRange).toBe(true);
  });

  it('in dB compares the unweighted total', () => {
    const base = spec();
    const verdict = onlyVerdict({ ...base, requirements: [roomTone(90, 'none')] });
    expect(verdict.verdict).toBe('met');
    expect(verdict.unit).toBe('dB');
    expect(verdict.withinRange).toBe(false);
    expect(verdict.value?.value).toBe(onlyBooth(base).noise.total.dBZ?.value);
  });

  it('in NC is judged octave by octave and names the worst', () => {
    const verdict = onlyVerdict(spec({ requirements: [roomTone(15, 'NC')] }));
    expect(verdict.verdict).toBe('missed');
    expect(verdict.explanation).toMatch(/at (63|125) Hz it is/);
    const margin = verdict.margin as number;
    const limit = Number(/NC 15 allows (\d+)/.exec(verdict.explanation)?.[1]);
    const level = Number(/it is ([\d.]+) dB/.exec(verdict.explanation)?.[1]);
    const excess = Number(/([\d.]+) dB too much in the worst octave/.exec(verdict.explanation)?.[1]);
    expect(excess).toBeCloseTo(level - limit, 1);
    // The margin is in points of the criterion, so that it is the limit less the value that stands beside it.
    expect(margin).toBeCloseTo(15 - (verdict.value?.value ?? Number.NaN), 6);
  });

  it('in NC is met by a spectrum below the lowest curve', () => {
    const verdict = onlyVerdict(spec({ site: quietSite, requirements: [roomTone(15, 'NC')] }));
    expect(verdict.verdict).toBe('met');
    expect(verdict.explanation).toContain('below NC 15');
  });

  it('in NC below 15 is missed when NC 15 is, and open otherwise; above 70 there is no curve', () => {
    const missed = onlyVerdict(spec({ requirements: [roomTone(10, 'NC')] }));
    expect(missed.verdict).toBe('missed');
    expect(missed.margin).toBeLessThan(0);
    expect(missed.explanation).toContain('passes NC 10 too');
    const open = onlyVerdict(spec({ site: quietSite, requirements: [roomTone(10, 'NC')] }));
    expect(open.verdict).toBe('not-assessed');
    expect(open.explanation).toContain('from NC 15 to NC 70');
    const high = onlyVerdict(spec({ requirements: [roomTone(75, 'NC')] }));
    expect(high.verdict).toBe('not-assessed');
    expect(high.explanation).toContain('NC 75');
  });

  it('in dBA names the way that brings most over all bands, not the one of the loudest', () => {
    // One loud low band, and a broad middle that brings more in sum.
    const levels = [82, 40, 68, 68, 68, 68, 68];
    const leaky = booth(shell, { doors: [door(shell, { thresholdGap: given(0.01) })] });
    const base = spec({ booths: [leaky], site: site({ sources: [noise('street', levels)] }) });
    const { paths, noise: inside } = onlyBooth(base);
    const sums = paths.map((_, path) =>
      (inside.bySource[0]?.shares[path] ?? []).reduce<number>(
        (sum, share, band) =>
          sum +
          (share ?? 0) *
            10 **
              (((inside.bySource[0]?.inside.byBand[band] ?? -999) + frequencyWeighting('A', exactHz[band] as number)) /
                10),
        0,
      ),
    );
    const faces = paths.reduce(
      (sum, path, index) => sum + (path.name === 'floor' || path.kind !== 'face' ? 0 : (sums[index] as number)),
      0,
    );
    const threshold = sums[paths.findIndex((path) => path.name.includes('threshold'))] as number;
    const total = sums.reduce((sum, each) => sum + each, 0);
    const verdict = onlyVerdict({ ...base, requirements: [roomTone(20, 'A')] });
    expect(threshold).toBeGreaterThan(faces);
    expect(verdict.limitedBy).toContain('threshold');
    expect(verdict.explanation).toContain(`${((100 * threshold) / total).toFixed(0)} %`);
    expect(verdict.explanation).toContain('third octave of');
    // The loudest third, A-weighted too, belongs to another way.
    const band = governingBand(inside.total.byBand, 'A') as number;
    const there = paths.map((_, path) => inside.bySource[0]?.shares[path]?.[band] ?? 0);
    expect(paths[there.indexOf(Math.max(...there))]?.kind).toBe('face');
    const unweighted = onlyVerdict({ ...base, requirements: [roomTone(20, 'none')] });
    expect(unweighted.limitedBy).not.toContain('threshold');
    expect(unweighted.explanation).toContain('The third octave that counts most');
  });

  it('in dBFS is judged on the unweighted room tone', () => {
    const base = spec();
    const verdict = onlyVerdict({ ...base, requirements: [roomTone(-60, 'FS')] });
    expect(verdict.value?.value).toBe(onlyBooth(base).noise.roomTone?.dBFS.value);
    expect(verdict.verdict).toBe('missed');
  });

  it('in dBFS is not assessed without a microphone or a session', () => {
    const deaf = spec({ booths: [booth(shell, { microphone: undefined })], requirements: [roomTone(-60, 'FS')] });
    expect(onlyVerdict(deaf).verdict).toBe('not-assessed');
    expect(onlyVerdict(deaf).explanation).toContain('mic');
    const silent = spec({ session: undefined, requirements: [roomTone(-60, 'FS')] });
    expect(onlyVerdict(silent).verdict).toBe('not-assessed');
  });

  it('is not assessed without any noise, without a booth, or in dBC', () => {
    const verdict = (changes: Parameters<typeof spec>[0]) =>
      onlyVerdict(spec({ requirements: [roomTone(20, 'A')], ...changes }));
    expect(verdict({ site: undefined }).verdict).toBe('not-assessed');
    expect(verdict({ site: site({ sources: [] }) }).verdict).toBe('not-assessed');
    expect(verdict({ booths: [] })).toMatchObject({ verdict: 'not-assessed', booth: null });
    expect(verdict({ requirements: [roomTone(20, 'C')] }).verdict).toBe('not-assessed');
  });

  it('is open when it would be met but the fan is unknown, and stays missed when it is missed', () => {
    const vents = [vent('intake', { fan: unknownFan }), vent('exhaust')];
    const booths = [booth(shell, { vents })];
    const open = onlyVerdict(spec({ booths, requirements: [roomTone(60, 'A')] }));
    expect(open.verdict).toBe('not-assessed');
    expect(open.value).not.toBeNull();
    expect(open.explanation).toContain('intake');
    expect(onlyVerdict(spec({ booths, requirements: [roomTone(10, 'A')] })).verdict).toBe('missed');
    const known = [booth(shell, { vents: [vent('intake', { fan: quietFan }), vent('exhaust')] })];
    expect(onlyVerdict(spec({ booths: known, requirements: [roomTone(60, 'A')] })).verdict).toBe('met');
  });

  it('is open when it would be met but an octave that counts is unknown', () => {
    const hum = site({ sources: [noise('hum', [null, 30, null, null, null, null, null])] });
    expect(onlyVerdict(spec({ site: hum, requirements: [roomTone(60, 'A')] })).verdict).toBe('not-assessed');
    const noLow = site({ sources: [noise('street', [null, ...quiet.slice(1)])] });
    expect(onlyVerdict(spec({ site: noLow, requirements: [roomTone(60, 'none')] })).verdict).toBe('not-assessed');
    const dBA = onlyVerdict(spec({ site: noLow, requirements: [roomTone(60, 'A')] }));
    expect(dBA.verdict).toBe('met');
    expect(dBA.explanation).toContain('lower bound');
  });

  it('says that footfall is not in a met verdict', () => {
    const steps = site({ sources: [noise('street', quiet), impact('steps')] });
    const verdict = onlyVerdict(spec({ site: steps, requirements: [roomTone(60, 'A')] }));
    expect(verdict.verdict).toBe('met');
    expect(verdict.explanation).toContain('steps');
  });
});
