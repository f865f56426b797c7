import { defaults, vocabulary } from '@boothwright/language';
import { describe, expect, it } from 'vitest';
import { checkText } from './check-text.js';

describe('the table of defaults', () => {
  it('has every default that the vocabulary names, each once', () => {
    const names = defaults.map((entry) => entry.name);
    expect(new Set(names).size).toBe(names.length);
    for (const block of vocabulary)
      for (const fact of block.facts)
        if (fact.default) expect(names, `${block.name} ${fact.keyword}`).toContain(fact.default);
  });

  it('says of each where it comes from', () => {
    for (const { name, source, evidence, text } of defaults) {
      expect(source.length, name).toBeGreaterThan(5);
      expect(text.length, name).toBeGreaterThan(0);
      expect(['common-practice', 'published', 'from-memory'], name).toContain(evidence);
    }
  });

  it('shows each value as it would be written', () => {
    const { site, session } = checkText(
      'site { reverberation 0.5 s; temperature 20 degC; humidity 50 % }\nsession { people 1; body 80 kg; length 60 min; heat 0 W; supply-air 600 ppm; co2-rate 20 L/h; voice -20 dBFS }',
    ).spec;
    const value = (name: string): unknown => defaults.find((entry) => entry.name === name)!.value;
    expect(site!.reverberation.value).toBe(value('room-reverberation'));
    expect(site!.temperature.value).toBe(value('air-temperature'));
    expect(site!.humidity.value).toBe(value('air-humidity'));
    expect(session!.length.value).toBe(value('session-length'));
    expect(session!.co2Rate.value).toBeCloseTo(value('co2-rate') as number, 15);
    expect(session!.voiceLevel.value.decibels).toBe(value('voice-level'));
  });
});
