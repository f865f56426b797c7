import { describe, expect, it } from 'vitest';
import { onlyBooth, onlyVerdict } from '../fixtures/assessed.js';
import { booth, given, quietFan, requirement, session, shell, spec, vent } from '../fixtures/spec-builder.js';

const vents = [vent('in', { fan: quietFan }), vent('out')];
const asked = (kelvin: number) =>
  requirement({ kind: 'temperature-rise', text: `require temperature-rise <= ${kelvin} K`, limit: given(kelvin) });
const specOf = (kelvin: number, changes: Parameters<typeof session>[0] = {}, boothChanges = {}) =>
  spec({
    booths: [booth(shell, { vents, ...boothChanges })],
    session: session(changes),
    requirements: [asked(kelvin)],
  });

describe('judgeTemperatureRise(requirement, assessed)', () => {
  it('judges the end of the session with the fan as the session says', () => {
    const rise = (setting: string) =>
      onlyBooth(specOf(4)).air?.heat?.bySetting.find((each) => each.setting === setting)?.endRiseK as number;
    const off = given<'off' | 'low' | 'high'>('off');
    expect(onlyVerdict(specOf(4)).value?.value).toBe(rise('high'));
    expect(onlyVerdict(specOf(4, { fanSpeed: off })).value?.value).toBe(rise('off'));
    expect(rise('off')).toBeGreaterThan(rise('high'));
  });

  it('is met or missed at the limit, with the watts and the flow behind it', () => {
    expect(onlyVerdict(specOf(30)).verdict).toBe('met');
    const missed = onlyVerdict(specOf(1, { heat: given(80) }));
    expect(missed.verdict).toBe('missed');
    expect(missed.unit).toBe('K');
    expect(missed.explanation).toContain('170 W of dry heat');
    expect(missed.explanation).toContain('10.0 L/s');
  });

  it('has no answer without a session', () => {
    const { session: _, ...rest } = specOf(4);
    expect(onlyVerdict({ ...rest, session: undefined }).verdict).toBe('not-assessed');
  });

  it('has no answer where the curve of the fan never meets its path', () => {
    const curve = [
      { flow: given(0.02), pressure: given(0.5) },
      { flow: given(0.04), pressure: given(0) },
    ];
    const verdict = onlyVerdict(specOf(4, {}, { vents: [vent('in', { fan: { ...quietFan, curve } }), vent('out')] }));
    expect(verdict.verdict).toBe('not-assessed');
    expect(verdict.explanation).toContain('no operating point');
  });
});
