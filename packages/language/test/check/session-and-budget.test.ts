import { describe, expect, it } from 'vitest';
import { checkText, problemIds, underlined } from '../check-text.js';

const sessionOf = (lines: string) => checkText(`session { ${lines} }\n`).spec.session!;
const assumed = (text: string): string[] =>
  checkText(text).values.flatMap(({ value: { origin } }) => (origin.kind === 'default' ? [origin.name] : []));

describe('a session', () => {
  it('is read with its fan, its start, its takes and its performer', () => {
    const text =
      'session { fan low; starts 13:00; take 12 min rest 5 min fan off; body-heat 110 W; body-moisture 70 W; stature 1.74 m; posture sits }\n';
    const { spec, problems } = checkText(text);
    expect(problems).toEqual([]);
    expect(spec.session).toMatchObject({
      fanSpeed: { value: 'low', origin: { kind: 'given' } },
      starts: { value: 13 * 3600, text: '13:00' },
      cycle: { take: { value: 720 }, rest: { value: 300 }, fan: { value: 'off' } },
      bodyHeat: { value: 110 },
      bodyMoisture: { value: 70 },
      stature: { value: 1.74 },
      posture: { value: 'sits' },
    });
  });

  it('starts the day at midnight, however it is written', () => {
    expect(sessionOf('starts 24:00').starts?.value).toBe(0);
    expect(sessionOf('starts 0:00').starts?.value).toBe(0);
  });

  it('is one stretch without takes, and runs its fans in takes unless it is said', () => {
    expect(sessionOf('').cycle).toBeUndefined();
    expect(sessionOf('take 10 min rest 5 min').cycle?.fan).toMatchObject({ value: 'on', origin: { name: 'take-fan' } });
  });

  it('tells assumed postures and fans only where something depends on them', () => {
    const names = /^(posture|fan-speed)$/;
    expect(assumed('session { }\n').filter((name) => names.test(name))).toEqual([]);
    expect(assumed('session { stature 1.8 m }\n').filter((name) => names.test(name))).toEqual(['posture']);
    const booth =
      'use catalog\nassembly a { osb 9 mm }\nbooth b { inside 1 m x 1 m x 2 m; walls a; roof a; floor a\nvent v on left { duct 100 mm; run 1 m; fan 10 L/s }\nvent w on right { duct 100 mm; run 1 m } }\n';
    expect(assumed(`${booth}session { }\n`).filter((name) => names.test(name))).toEqual(['fan-speed']);
    expect(sessionOf('')).toMatchObject({ fanSpeed: { value: 'high' }, posture: { value: 'stands' } });
  });

  it.each([
    ['people 0', 'value-implausible', '0'],
    ['take 70 min rest 5 min', 'take-beyond-session', '70 min'],
    ['length 20 min; take 30 min rest 5 min', 'take-beyond-session', '30 min'],
    ['take 0 min rest 5 min', 'value-implausible', '0 min'],
    ['take 12 min', 'unexpected', 'min'],
    ['starts 25:00', 'no-such-time', '25:00'],
    ['starts 1 pm', 'time-of-day', '1 pm'],
    ['stature 174 m', 'value-implausible', '174 m'],
    ['stature 0.5 m', 'value-unusual', '0.5 m'],
    ['fan medium', 'unknown-word', 'medium'],
  ])('`%s` is told', (line, id, place) => {
    const result = checkText(`session { ${line} }\n`);
    expect(result.problems.map((problem) => problem.id)).toEqual([id]);
    expect(underlined(result)).toBe(place);
  });

  it('can be changed by a variant fact by fact', () => {
    const { spec, problems } = checkText(
      'session { people 1; take 12 min rest 5 min }\nvariant quiet { session.fan = off; session.starts = 6:30; session.take.rest = 10 min; session.stature = 1.9 m }\n',
    );
    expect(problems).toEqual([]);
    expect(spec.variants[0]!.spec.session).toMatchObject({
      fanSpeed: { value: 'off' },
      starts: { value: 6.5 * 3600 },
      cycle: { take: { value: 720 }, rest: { value: 600 } },
      stature: { value: 1.9 },
    });
  });
});

describe('a budget', () => {
  const budgetOf = (lines: string) => checkText(`use catalog\nlet t = 18 mm\nlet n = 4\nbudget { ${lines} }\n`);

  it.each([
    ['item a 7 at 38.00 EUR', undefined, undefined, 7],
    ['item a for osb 7 at 38.00 EUR', 'osb', undefined, 7],
    ['item a "boards" for osb 18 mm 7 at 38.00 EUR', 'osb', 0.018, 7],
    ['item a for osb 3/4 in 7 at 38.00 EUR', 'osb', 0.75 * 0.0254, 7],
    ['item a for osb t 7 at 38.00 EUR', 'osb', 0.018, 7],
    ['item a for osb n at 38.00 EUR', 'osb', undefined, 4],
    ['item a for osb t n at 38.00 EUR', 'osb', 0.018, 4],
    ['item a for osb 2 * n at 38.00 EUR', 'osb', undefined, 8],
  ])('knows what `%s` buys', (line, material, thickness, quantity) => {
    const { spec, problems } = budgetOf(line);
    expect(problems).toEqual([]);
    const item = spec.budget!.items[0]!;
    expect(item.covers?.material.name).toBe(material);
    expect(item.covers?.thickness?.value).toBe(thickness);
    expect(item.quantity.value).toBe(quantity);
  });

  it('has the cut of its saw', () => {
    expect(budgetOf('kerf 2 mm').spec.budget!.kerf.value).toBe(0.002);
    expect(budgetOf('').spec.budget!.kerf).toMatchObject({ value: 0.003, origin: { name: 'saw-kerf' } });
    expect(budgetOf('kerf 80 mm').problems.map(({ id }) => id)).toEqual(['value-implausible']);
  });

  it('tells a material that is not there and keeps the item', () => {
    const result = budgetOf('item a for obs 18 mm 7 at 38.00 EUR');
    expect(result.problems).toMatchObject([{ id: 'unknown-name', hint: 'did you mean `osb`?' }]);
    expect(underlined(result)).toBe('obs');
    expect(result.spec.budget!.items).toMatchObject([{ name: 'a', covers: undefined, quantity: { value: 7 } }]);
  });

  it('has items for seals and fittings, which are no materials', () => {
    const { spec, problems } = budgetOf(
      'item a for compression-gasket 44 at 1 EUR; item b for duct 125 mm 6 at 5 EUR; item c for fan 1 at 80 EUR',
    );
    expect(problems).toEqual([]);
    expect(spec.budget!.items).toMatchObject([
      { covers: undefined, fitting: { word: 'compression-gasket', diameter: undefined } },
      { covers: undefined, fitting: { word: 'duct', diameter: { value: 0.125 } } },
      { covers: undefined, fitting: { word: 'fan' } },
    ]);
  });

  it('reads a material of that name first', () => {
    const text = 'material duct { kind covering; surface-mass 1 kg/m2 }\nbudget { item a for duct 1 at 1 EUR }\n';
    const [item] = checkText(text).spec.budget!.items;
    expect(item).toMatchObject({ covers: { material: { name: 'duct' } } });
    expect(item).not.toHaveProperty('fitting');
  });

  it('tells a fitting that is nearly named, and a size that only a duct has', () => {
    expect(budgetOf('item a for gaskets 4 at 1 EUR').problems).toMatchObject([
      { id: 'unknown-name', hint: 'write `for compression-gasket` or `for door-gasket`' },
    ]);
    expect(budgetOf('item a for selant 4 at 1 EUR').problems).toMatchObject([{ hint: 'write `for sealant`' }]);
    expect(budgetOf('item a for sealant 5 mm 4 at 1 EUR').problems).toMatchObject([{ id: 'fitting-with-size' }]);
  });

  it('leaves out the item in another currency, says so, and keeps the others', () => {
    const { spec, problems } = budgetOf('item a 1 at 10 EUR; item b 1 at 10 USD; item c 2 at 5 EUR');
    expect(problems).toMatchObject([
      { id: 'currencies-mixed', message: expect.stringContaining('`b` is left out of the sum') },
    ]);
    expect(spec.budget!.items.map(({ name }) => name)).toEqual(['a', 'c']);
  });

  it('keeps the other items when one has no price', () => {
    const { spec, problems } = budgetOf('item a 1 at 10 EUR; item b 3; item c 2 at 5 EUR');
    expect(problems).toHaveLength(1);
    expect(problems[0]!.message).toBe('expected `at` after `3`');
    expect(spec.budget!.items.map(({ name }) => name)).toEqual(['a', 'c']);
  });

  it('lets a variant change a part of an item', () => {
    const { spec, problems } = checkText(
      'use catalog\nbudget { item a "boards" for osb 18 mm 7 at 38.00 EUR }\nvariant v { budget.a.quantity = 9; budget.a.thickness = 12 mm }\n',
    );
    expect(problems).toEqual([]);
    expect(spec.variants[0]!.spec.budget!.items[0]).toMatchObject({
      title: 'boards',
      quantity: { value: 9 },
      covers: { material: { name: 'osb' }, thickness: { value: 0.012 } },
    });
  });
});

describe('what a material is sold as', () => {
  const material = (lines: string) =>
    checkText(`material stuff { kind limp; density 2000 kg/m3\n${lines}\nsource data-sheet "a shop" }\n`);

  it('is its sheet and its length, from where its figures are', () => {
    const { spec, problems } = material('sheet 4 ft x 8 ft; stock 2.4 m from practice "a yard"');
    expect(problems).toEqual([]);
    expect(spec.materials.get('stuff')).toMatchObject({
      sheet: {
        width: { value: 4 * 0.3048, origin: { evidence: 'data-sheet', source: 'a shop' } },
        height: { value: 8 * 0.3048 },
      },
      stockLength: { value: 2.4, origin: { evidence: 'common-practice', source: 'a yard' } },
    });
  });

  it('cannot be nothing or a street long', () => {
    expect(material('sheet 0 m x 2.4 m').problems.map(({ id }) => id)).toEqual(['value-implausible']);
    expect(material('stock 400 m').problems.map(({ id }) => id)).toEqual(['value-implausible']);
    expect(material('sheet 1.2 m').problems.map(({ id }) => id)).toEqual(['size-incomplete']);
  });
});

describe('requirements on warmth and decay', () => {
  it('are read', () => {
    const { spec, problems } = checkText('require temperature-rise <= 4 K\nrequire decay-ratio <= 2 at 125 Hz\n');
    expect(problems).toEqual([]);
    expect(spec.requirements).toMatchObject([
      { kind: 'temperature-rise', limit: { value: 4 } },
      { kind: 'decay-ratio', limit: { value: 2 }, atHz: { value: 125 } },
    ]);
  });

  it.each([
    ['require temperature-rise <= 4 degC', 'unit-of-wrong-dimension', '4 degC'],
    ['require temperature-rise <= 4', 'unit-missing', '4'],
    ['require decay-ratio <= 2', 'unexpected', '2'],
    ['require decay-ratio <= 2 at 130 Hz', 'no-such-band', '130 Hz'],
    ['require decay-ratio <= 2 s at 125 Hz', 'unit-of-wrong-dimension', '2 s'],
  ])('`%s` is told', (line, id, place) => {
    const result = checkText(`${line}\n`);
    expect(result.problems.map((problem) => problem.id)).toEqual([id]);
    expect(underlined(result)).toBe(place);
  });

  it('do not count an inch for a place', () => {
    expect(
      problemIds(
        'site { neighbour yard outdoors { loss octave 125 Hz 20 dB } }\nrequire voice-outside <= 27 dBA in yard\n',
      ),
    ).toEqual([]);
  });
});

it.each([
  ['0:00', 0],
  ['24:00', 0],
  ['6:05', 6 * 3600 + 300],
  ['06:05', 6 * 3600 + 300],
  ['23:59', 86_340],
])('a session that starts %s starts %d s after midnight', (time, seconds) => {
  const { spec, problems } = checkText(`session { starts ${time} }`);
  expect(problems).toEqual([]);
  expect(spec.session!.starts!.value).toBe(seconds);
});
