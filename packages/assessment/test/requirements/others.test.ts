import type { Level } from '@boothwright/language';
import { describe, expect, it } from 'vitest';
import { assess, onlyBooth, onlyVerdict } from '../fixtures/assessed.js';
import { smallBooth } from '../fixtures/booth-text.js';
import {
  assembly,
  booth,
  budget,
  door,
  given,
  gypsum,
  place,
  quietFan,
  requirement,
  session,
  sheet,
  shell,
  site,
  spec,
  vent,
} from '../fixtures/spec-builder.js';

const airy = booth(shell, { vents: [vent('intake', { fan: quietFan }), vent('exhaust')] });

describe('require co2', () => {
  const co2 = (limit: number) => requirement({ kind: 'co2', text: `require co2 <= ${limit} ppm`, limit: given(limit) });

  it('is judged with the fan on where there is one', () => {
    const verdict = onlyVerdict(spec({ booths: [airy], requirements: [co2(1200)] }));
    expect(verdict.verdict).toBe('met');
    expect(verdict.value?.value).toBeCloseTo(600 + 1e6 * (20e-3 / 3600 / 0.01), 0);
    expect(verdict.explanation).toContain('fan off');
  });

  it('is judged with still air where there is none', () => {
    const verdict = onlyVerdict(spec({ requirements: [co2(1200)] }));
    expect(verdict.verdict).toBe('missed');
    expect(verdict.limitedBy).toBe('no-fan');
  });

  it('counts no flow of a fan whose air has no way out: missed as a closed box, else open', () => {
    const blown = booth(shell, { vents: [vent('intake', { fan: quietFan })] });
    const missed = onlyVerdict(spec({ booths: [blown], requirements: [co2(1200)] }));
    expect(missed.verdict).toBe('missed');
    expect(missed.explanation).toContain('no second vent');
    // 20 L/h into 3.105 m3 for 90 min from 600 ppm end at 10 262 ppm.
    expect(missed.value?.value).toBeCloseTo(600 + (1e6 * 20e-3 * 1.5) / 3.105, 3);
    const open = onlyVerdict(spec({ booths: [blown], requirements: [co2(20_000)] }));
    expect(open.verdict).toBe('not-assessed');
    expect(open.explanation).toContain('no second vent');
  });

  it('is not assessed without a session', () => {
    expect(onlyVerdict(spec({ session: undefined, requirements: [co2(1200)] })).verdict).toBe('not-assessed');
  });
});

describe('require voice-outside', () => {
  const voice = (decibels: number) =>
    requirement({
      kind: 'voice-outside',
      where: undefined,
      text: 'require voice-outside',
      limit: given<Level>({ decibels, weighting: 'A' }),
    });

  it('compares the level in the room and names the path', () => {
    const verdict = onlyVerdict(spec({ requirements: [voice(80)] }));
    expect(verdict.verdict).toBe('met');
    expect(verdict.limitedBy).toContain(':');
    expect(onlyVerdict(spec({ requirements: [voice(5)] })).verdict).toBe('missed');
  });

  it('is not assessed without the size of the room', () => {
    const verdict = onlyVerdict(spec({ site: site({ room: undefined }), requirements: [voice(80)] }));
    expect(verdict.verdict).toBe('not-assessed');
    expect(verdict.explanation).toContain('the size of the room');
    expect(verdict.explanation).not.toContain('session');
  });

  it('asks for a session alone where only that is missing', () => {
    const { explanation } = onlyVerdict(spec({ session: undefined, requirements: [voice(80)] }));
    expect(explanation).toBe('The level outside needs a `session`.');
  });

  it('says of what the sound that leaves is made, over all bands', () => {
    const { explanation } = onlyVerdict(spec({ requirements: [voice(80)] }));
    expect(explanation).toMatch(/Of the A-weighted sound outside \d+ % leaves through .* third octave of/);
  });
});

describe('require mass, floor-load, height and panel-weight', () => {
  it('mass is that of the empty booth', () => {
    const limit = requirement({ kind: 'mass', text: 'require mass', limit: given(10_000) });
    const base = spec({ requirements: [limit] });
    expect(onlyVerdict(base).value?.value).toBe(onlyBooth(base).build.massKg);
  });

  it('floor load is in kPa and no check of the floor', () => {
    const limit = requirement({ kind: 'floor-load', text: 'require floor-load', limit: given(1500) });
    const verdict = onlyVerdict(spec({ requirements: [limit] }));
    expect(verdict.limit).toBe(1.5);
    expect(verdict.verdict).toBe('missed');
    expect(verdict.explanation).toContain('not a check');
  });

  it('height is met exactly at the limit', () => {
    const limit = requirement({ kind: 'height', text: 'require height', limit: given(2.2) });
    const outside = { width: given(1.4), depth: given(1.6), height: given(2.2) };
    expect(onlyVerdict(spec({ booths: [booth(shell, { outside })], requirements: [limit] })).verdict).toBe('met');
  });

  const panelWeight = (kg: number) =>
    requirement({ kind: 'panel-weight', text: 'require panel-weight', limit: given(kg) });
  const panels = { range: place(), width: given(0.6), split: undefined, fastened: undefined, roof: undefined };

  it('panel weight is not assessed without panels, and says what to write', () => {
    const verdict = onlyVerdict(spec({ requirements: [panelWeight(32)] }));
    expect(verdict.verdict).toBe('not-assessed');
    expect(verdict.explanation).toContain('does not say how the faces are cut into panels');
    expect(verdict.explanation).toContain('panels { width 600 mm }');
  });

  it('panel weight is that of the heaviest panel, by its number', () => {
    const base = spec({ booths: [booth(shell, { panels, doors: [] })], requirements: [panelWeight(20)] });
    const verdict = onlyVerdict(base);
    const { build } = onlyBooth(base);
    const heaviest = Math.max(...build.panels.map(({ massKg }) => massKg));
    expect(verdict.verdict).toBe('missed');
    expect(verdict.value?.value).toBe(heaviest);
    expect(verdict.limitedBy).toContain(`panel ${build.heaviestPanel}`);
  });

  it('the leaf of a door counts as a piece to carry', () => {
    const heavy = assembly('heavy', sheet(gypsum, 0.08));
    const base = spec({ booths: [booth(shell, { panels, doors: [door(heavy)] })], requirements: [panelWeight(40)] });
    const verdict = onlyVerdict(base);
    // 0.66 m x 1.9 m x 0.08 m x 700 kg/m3
    expect(verdict.value?.value).toBeCloseTo(0.66 * 1.9 * 0.08 * 700, 9);
    expect(verdict.limitedBy).toBe('the leaf of entry');
  });
});

describe('require cost', () => {
  const cost = (limit: number, currency = 'EUR') =>
    requirement({ kind: 'cost', text: 'require cost', limit: given(limit), currency });

  it('is the total of the list with its reserve', () => {
    const verdict = onlyVerdict(spec({ budget: budget([10, 100]), requirements: [cost(1099)] }));
    expect(verdict.value?.value).toBeCloseTo(1100, 9);
    expect(verdict.verdict).toBe('missed');
    expect(verdict.explanation).toContain('nothing else checks that the list is complete');
  });

  it('counts what the list buys too few of at its own price, in verdict, result and variant', () => {
    const list = (sheets: number) =>
      `item ply for softwood-plywood 12 mm ${sheets} at 38.00 EUR; item rest 1 at 100.00 EUR; reserve 10 %`;
    const cut = (sheets: number) =>
      smallBooth({ booth: 'panels { width 600 mm }', budget: list(sheets), requirements: 'require cost <= 200 EUR' });
    const { build } = onlyBooth(cut(1));
    const needed = build.shopping.checks[0]?.needed as number;
    expect(needed).toBeGreaterThan(3);
    const verdict = onlyVerdict(cut(1));
    expect(build.cost?.missing).toBeCloseTo((needed - 1) * 38, 9);
    expect(verdict.value?.value).toBeCloseTo((needed * 38 + 100) * 1.1, 9);
    expect(verdict.verdict).toBe('missed');
    // What the list buys too many of is going to be paid for as well.
    expect(onlyVerdict(cut(needed + 2)).value?.value).toBeCloseTo(((needed + 2) * 38 + 100) * 1.1, 9);
  });

  it('is not assessed where the parts that the list is held against cannot be counted', () => {
    const text = smallBooth({
      budget: 'item ply for softwood-plywood 12 mm 20 at 1.00 EUR',
      requirements: 'require cost <= 200 EUR',
    });
    const [small] = text.booths;
    const far = { ...small!, microphone: { ...small!.microphone!, distance: given(200) } };
    const verdict = onlyVerdict({ ...text, booths: [far] });
    expect(verdict.verdict).toBe('not-assessed');
    expect(verdict.explanation).toContain('small could not be counted: the distance of the microphone is 200 m');
  });

  it('is not assessed without a list or across currencies', () => {
    expect(onlyVerdict(spec({ requirements: [cost(1)] })).verdict).toBe('not-assessed');
    const mixed = budget([1, 1, 'EUR'], [1, 1, 'USD']);
    expect(onlyVerdict(spec({ budget: mixed, requirements: [cost(100)] })).verdict).toBe('not-assessed');
    expect(onlyVerdict(spec({ budget: budget([1, 1]), requirements: [cost(100, 'USD')] })).verdict).toBe(
      'not-assessed',
    );
  });
});

describe('require stc and rw', () => {
  it('compares the rating of the assembly, with or without a booth', () => {
    const limit = requirement({
      kind: 'rating',
      text: 'require stc of shell',
      rating: 'stc',
      assembly: shell,
      limit: given(20),
    });
    const base = spec({ booths: [], requirements: [limit] });
    expect(onlyVerdict(base)).toMatchObject({ verdict: 'met', unit: 'STC', booth: null });
    expect(onlyVerdict(base).value?.value).toBe(assess(base).assemblies.shell?.ratings.stc);
  });
});

describe('judgeRequirements(context)', () => {
  it('gives one verdict per booth, and keeps the order of the text', () => {
    const mass = requirement({ kind: 'mass', text: 'require mass', limit: given(100) });
    const height = requirement({ kind: 'height', text: 'require height', limit: given(3) });
    const second = { ...booth(), name: 'second' };
    const results = assess(spec({ booths: [booth(), second], requirements: [mass, height] })).requirements;
    expect(results.map((result) => [result.kind, result.booth])).toEqual([
      ['mass', 'alcove'],
      ['mass', 'second'],
      ['height', 'alcove'],
      ['height', 'second'],
    ]);
  });

  it('writes a sentence for every verdict', () => {
    const limit = requirement({ kind: 'co2', text: 'require co2', limit: given(1000) });
    const { explanation } = onlyVerdict(spec({ session: session(), requirements: [limit] }));
    expect(explanation.endsWith('.')).toBe(true);
    expect(explanation).toMatch(/\d/);
  });
});
