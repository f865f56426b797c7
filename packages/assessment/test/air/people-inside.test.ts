import type { Effort } from '@boothwright/language';
import { describe, expect, it } from 'vitest';
import { peopleInside } from '../../src/air/people-inside.js';
import { onlyBooth, onlyVerdict } from '../fixtures/assessed.js';
import { smallBooth } from '../fixtures/booth-text.js';

const at = (line: string) => {
  const { session } = smallBooth({ session: line });
  if (session === undefined) throw new Error('no session');
  return peopleInside(session);
};
const litresAnHour = (line: string) => at(line).breath * 3.6e6;

describe('peopleInside(session)', () => {
  it('leaves ordinary speech at 20 L/h, 90 W dry and 50 W moist, a quarter either way', () => {
    const person = at('effort normal');
    expect(person.breath * 3.6e6).toBeCloseTo(20, 9);
    expect([person.dryHeat, person.moistHeat]).toEqual([90, 50]);
    expect([person.range.low, person.range.high]).toEqual([0.75, 1.25]);
  });

  it('raises breath in proportion to the activity, and half of the further heat leaves dry', () => {
    // 2.0 over 1.4 met: 20 L/h x 1.4286; of 140 W the further 60 W.
    const person = at('effort shout');
    expect(person.breath * 3.6e6).toBeCloseTo(28.571, 3);
    expect(person.dryHeat).toBeCloseTo(120, 9);
    expect(person.moistHeat).toBeCloseTo(80, 9);
    const efforts: Effort[] = ['casual', 'normal', 'raised', 'loud', 'shout'];
    const rates = efforts.map((effort) => litresAnHour(`effort ${effort}`));
    expect(rates).toEqual(rates.toSorted((a, b) => a - b));
  });

  it('leaves what the text states alone, and a louder voice less certain', () => {
    const stated = at('effort shout; co2-rate 20 L/h; body-heat 100 W');
    expect(stated.breath * 3.6e6).toBeCloseTo(20, 9);
    expect(stated.activity).toBeNull();
    expect(stated.dryHeat).toBe(100);
    expect(stated.moistHeat).toBeGreaterThan(50);
    // From 1.4 to 3 met, and a quarter between people.
    const { low, high } = at('effort shout').range;
    expect(low).toBeCloseTo(1 - Math.hypot(0.25, 0.3), 9);
    expect(high).toBeCloseTo(1 + Math.hypot(0.25, 0.5), 9);
  });

  it('keeps whoever sits in the room at the ordinary rate', () => {
    expect(at('effort shout').breathInRoom * 3.6e6).toBeCloseTo(20, 9);
  });
});

describe('a loud session', () => {
  const lines = (effort: string) => ({ session: effort, requirements: 'require co2 <= 1200 ppm' });

  it('needs more air, wears a wider range and says what it is taken for', () => {
    const rise = (effort: string) => {
      const { air } = onlyBooth(smallBooth(lines(effort)));
      return (air?.fanOn?.endPpm as number) - 600;
    };
    expect(rise('effort shout') / rise('effort normal')).toBeCloseTo(2 / 1.4, 9);
    const [normal, shout] = ['effort normal', 'effort shout'].map((effort) => onlyVerdict(smallBooth(lines(effort))));
    expect(normal?.verdict).toBe('met');
    expect(shout?.verdict).toBe('missed');
    const width = (verdict: typeof normal) => (verdict?.value?.high as number) - (verdict?.value?.low as number);
    expect(width(shout)).toBeGreaterThan(2 * width(normal));
    expect(shout?.value?.basis).toContain('effort shout');
  });

  it('makes the booth warmer and damper', () => {
    const [normal, shout] = ['effort normal', 'effort shout'].map((effort) => onlyBooth(smallBooth(lines(effort))).air);
    expect(shout?.heat?.peopleW).toBeCloseTo(120, 9);
    expect(normal?.heat?.peopleW).toBeCloseTo(90, 9);
    expect((shout?.moisture?.generationKgPerS as number) / (normal?.moisture?.generationKgPerS as number)).toBeCloseTo(
      1.6,
      9,
    );
  });
});
