import type { HourSpan, NoiseSource } from '@boothwright/language';
import { describe, expect, it } from 'vitest';
import { assess, onlyBooth, onlyVerdict } from '../fixtures/assessed.js';
import { given, impact, noise, roomTone, session, site, spec } from '../fixtures/spec-builder.js';

const hours = (from: number, to: number) => given<readonly HourSpan[]>([{ from: from * 3600, to: to * 3600 }]);
const during = (source: NoiseSource, from: number, to: number): NoiseSource => ({ ...source, hours: hours(from, to) });
const quiet = noise('fridge', [30, 28, 24, 20, 16, 12, 8]);
const loud = [70, 66, 60, 55, 50, 45, 40] as const;
const trams = site({ sources: [quiet, during(noise('tram', loud), 5, 23)] });
const base = spec({ site: trams, requirements: [roomTone(15, 'NC')] });
const heard = (changes: Parameters<typeof spec>[0]) => onlyBooth(spec({ site: trams, ...changes })).noise;

describe('noise by the hour', () => {
  it('says which hours meet a requirement, in words', () => {
    const table = onlyBooth(base).noise.hours;
    expect(table?.stateOfHour).toHaveLength(24);
    expect(table?.requirements[0]).toMatchObject({
      hoursMet: 6,
      met: ['23:00 to 05:00'],
      words: '23:00 to 05:00 meets NC 15',
    });
    expect(table?.states.map(({ sources }) => sources)).toEqual([['fridge'], ['fridge', 'tram']]);
    expect(table?.states.map(({ verdicts }) => verdicts)).toEqual([['met'], ['missed']]);
  });

  it('leaves the requirement itself to the worst hour', () => {
    const always = spec({ site: site({ sources: [quiet, noise('tram', loud)] }), requirements: [roomTone(15, 'NC')] });
    expect(onlyVerdict(base).verdict).toBe('missed');
    expect(onlyVerdict(base).value?.value).toBe(onlyVerdict(always).value?.value);
    expect(onlyBooth(base).noise.total.dBA?.value).toBe(onlyBooth(always).noise.total.dBA?.value);
  });

  it('does not add two sources that never meet', () => {
    const apart = site({ sources: [during(noise('morning', loud), 5, 12), during(noise('evening', loud), 12, 23)] });
    const one = site({ sources: [noise('morning', loud)] });
    const level = (where: typeof apart) => onlyBooth(spec({ site: where })).noise.total.dBA?.value as number;
    expect(level(apart)).toBeCloseTo(level(one), 9);
    const both = site({ sources: [noise('morning', loud), noise('evening', loud)] });
    expect(level(both) - level(one)).toBeCloseTo(3.01, 2);
  });

  it('judges a requirement by the mix that meets it least, whatever its measure', () => {
    // Low sound by day that dBA forgives, high sound by night that NC misses less.
    const sources = [during(noise('rumble', [75, 50, 0, 0, 0, 0, 0]), 6, 18), during(noise('hiss', loud), 18, 6)];
    const each = (only: NoiseSource) =>
      onlyVerdict(spec({ site: site({ sources: [only] }), requirements: [roomTone(40, 'none')] })).margin as number;
    const verdict = onlyVerdict(spec({ site: site({ sources }), requirements: [roomTone(40, 'none')] }));
    expect(verdict.margin).toBeCloseTo(Math.min(...sources.map(each)), 9);
  });

  it('says whether the session lies in quiet hours', () => {
    const at = (hour: number, minutes = 90) =>
      heard({
        requirements: [roomTone(15, 'NC')],
        session: session({ starts: given(hour * 3600), length: given(minutes * 60) }),
      }).hours?.session;
    expect(at(23)?.verdicts).toEqual(['met']);
    expect(at(23)?.words).toBe('the session, 23:00 to 00:30, meets NC 15');
    expect(at(13)?.words).toBe('the session, 13:00 to 14:30, misses NC 15');
    expect(at(4)?.verdicts).toEqual(['missed']);
    expect(at(4, 60)?.verdicts).toEqual(['met']);
    expect(heard({ requirements: [roomTone(15, 'NC')] }).hours?.session).toBeNull();
  });

  it('names footfall in the hours in which it is there, and only then spoils a met verdict with it', () => {
    const sources = [quiet, during(impact('steps'), 6, 22)];
    const { hours: table } = onlyBooth(spec({ site: site({ sources }), requirements: [roomTone(30, 'A')] })).noise;
    expect(table?.states.map(({ notPredicted }) => notPredicted)).toEqual([[], ['steps']]);
  });

  it('does not take hours without a figure for quiet ones', () => {
    const gap = site({ sources: [during(noise('tram', loud), 5, 23)] });
    const at = (starts?: number) =>
      onlyVerdict(
        spec({
          site: gap,
          requirements: [roomTone(60, 'A')],
          session: session({
            length: given(3600),
            ...(starts === undefined ? {} : { starts: given(starts * 3600) }),
          }),
        }),
      );
    expect(at(1).verdict).toBe('not-assessed');
    expect(at(1).explanation).toContain('not silence');
    expect(at(12).verdict).toBe('met');
    expect(at().verdict).toBe('met');
    expect(at().value).toEqual(at(12).value);
    const table = onlyBooth(spec({ site: gap, requirements: [roomTone(60, 'A')] })).noise.hours;
    expect(table?.requirements[0]?.words).toBe('05:00 to 23:00 meets 60 dBA; not known for 23:00 to 05:00');
  });

  it('tells which sources sound in the hours of the total', () => {
    const own = (starts: number) =>
      heard({ session: session({ starts: given(starts * 3600), length: given(3600) }) }).bySource.map(
        ({ name, inTotal }) => [name, inTotal],
      );
    expect(own(12)).toEqual([
      ['fridge', true],
      ['tram', true],
    ]);
    expect(own(1)).toEqual([
      ['fridge', true],
      ['tram', false],
    ]);
  });

  it('has no table when no source has hours, and agrees in variants', () => {
    expect(onlyBooth(spec({ requirements: [roomTone(15, 'NC')] })).noise.hours).toBeNull();
    const quieter = spec({ site: site({ sources: [quiet] }), requirements: [roomTone(15, 'NC')] });
    expect(assess(quieter).requirements[0]?.verdict).toBe('met');
  });
});

describe('the hours of a session that says when it starts', () => {
  const within = (hour: number) =>
    spec({
      site: trams,
      requirements: [roomTone(15, 'NC')],
      session: session({ starts: given(hour * 3600), length: given(90 * 60) }),
    });

  it('decide the verdict and the level inside', () => {
    expect(onlyVerdict(within(1)).verdict).toBe('met');
    expect(onlyVerdict(within(13)).verdict).toBe('missed');
    const level = (text: typeof base) => onlyBooth(text).noise.total.dBA?.value as number;
    expect(level(within(13))).toBe(level(base));
    expect(level(within(1))).toBeLessThan(level(base) - 10);
  });

  it('count as a whole where the session only touches them', () => {
    // 22:30 to 24:00 touches the last hour of the trams.
    const touching = spec({
      site: trams,
      requirements: [roomTone(15, 'NC')],
      session: session({ starts: given(22.5 * 3600), length: given(90 * 60) }),
    });
    expect(onlyVerdict(touching).verdict).toBe('missed');
  });
});
