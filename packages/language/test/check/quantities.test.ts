import { describe, expect, it } from 'vitest';
import { checkText } from '../check-text.js';

/** The thickness of an air gap written so, in metres. */
function gap(written: string, more = ''): { value: number; tolerance?: number; text?: string } {
  const { spec, problems } = checkText(`use catalog\n${more}\nassembly a {\n  osb 9 mm\n  air ${written}\n}\n`);
  expect(problems).toEqual([]);
  const layer = spec.assemblies.get('a')!.layers[1]!;
  if (layer.kind !== 'air') throw new Error('no gap');
  return layer.thickness;
}

describe('lengths', () => {
  it.each([
    ['50 mm', 0.05],
    ['50mm', 0.05],
    ['3/4 in', 0.01905],
    ['2-1/2 in', 0.0635],
    ['2 ft 1-1/2 in', 0.6477],
    ['6 ft 2 in / 100', 0.018796],
    ['0.5 in + 1 cm', 0.0227],
    ['(10 mm + 5 mm) * 3', 0.045],
    ['30 mm - 10 mm / 4', 0.0275],
    ['2 - 1/2 in', Number.NaN],
  ])('%s', (written, metres) => {
    if (Number.isNaN(metres)) {
      expect(checkText(`assembly a { air ${written} }`).problems.map((p) => p.id)).toEqual(['unit-of-wrong-dimension']);
    } else expect(gap(written).value).toBeCloseTo(metres, 12);
  });

  it('keep what was typed', () => {
    expect(gap('2-1/2 in').text).toBe('2-1/2 in');
    expect(gap('wide   * 2', 'let wide = 5 mm').text).toBe('wide * 2');
  });

  it('come out of areas and volumes when they divide to one', () => {
    expect(gap('2 m2 / 40 m').value).toBeCloseTo(0.05, 12);
    expect(gap('3 L / 1 m2').value).toBeCloseTo(0.003, 12);
    expect(gap('4.9 kg/m2 / (2450 kg/m3)').value).toBeCloseTo(0.002, 12);
  });
});

describe('tolerances', () => {
  it('are kept in the unit of the value', () => {
    expect(gap('50 mm ± 2 mm').tolerance).toBeCloseTo(0.002, 12);
    expect(gap('50 mm +/- 10 %').tolerance).toBeCloseTo(0.005, 12);
    expect(gap('50 mm').tolerance).toBeUndefined();
  });

  it('pass through names and combine by the root of the sum of squares', () => {
    expect(gap('g', 'let g = 50 mm ± 3 mm').tolerance).toBeCloseTo(0.003, 12);
    expect(gap('30 mm ± 3 mm + 20 mm ± 4 mm').tolerance).toBeCloseTo(0.005, 12);
    expect(gap('g * 2', 'let g = 50 mm ± 3 mm').tolerance).toBeCloseTo(0.006, 12);
    expect(gap('g * k', 'let g = 50 mm ± 3 %\nlet k = 2 ± 4 %').tolerance).toBeCloseTo(0.1 * 0.05, 12);
  });
});

describe('other units', () => {
  const material = (
    fact: string,
  ): NonNullable<
    ReturnType<typeof checkText>['spec']['materials'] extends ReadonlyMap<string, infer M> ? M : never
  > => {
    const { spec, problems } = checkText(
      `material m { kind porous; density 40 kg/m3; resistivity 9 kPa.s/m2; ${fact} }`,
    );
    expect(problems).toEqual([]);
    return spec.materials.get('m')!;
  };
  it('come out in SI', () => {
    expect(material('surface-mass 1 lb/ft2').surfaceMass!.value).toBeCloseTo(4.882427636, 8);
    expect(material('modulus 2.1 GPa').modulus!.value).toBe(2.1e9);
    expect(material('flow-resistance 200 rayl').flowResistance!.value).toBe(200);
    expect(material('absorption octave 125 Hz 0.1, 1 kHz 0.5').absorption!.value.values.map((v) => v.hz)).toEqual([
      125, 1000,
    ]);
    expect(material('price 7.50 EUR per m2').price!.value).toEqual({ amount: 7.5, currency: 'EUR', per: 'm2' });
  });

  it('of a session come out in seconds, ppm and cubic metres per second', () => {
    const { session } = checkText(
      'session { length 90 min; supply-air 600 ppm; co2-rate 20 L/h; heat 0.1 kW; voice -20 dBFS }',
    ).spec;
    expect(session!.length.value).toBe(5400);
    expect(session!.supplyAir.value).toBe(600);
    expect(session!.co2Rate.value).toBeCloseTo(20 / 3.6e6, 15);
    expect(session!.heat.value).toBe(100);
    expect(session!.voiceLevel.value).toEqual({ decibels: -20, weighting: 'FS' });
  });

  it('of a site come out in degrees Celsius and shares', () => {
    const { site } = checkText('site { temperature 68 degF; humidity 45 %; noise a 64 dBA like pink }').spec;
    expect(site!.temperature.value).toBeCloseTo(20, 12);
    expect(site!.humidity.value).toBe(0.45);
  });

  it('35 cfm are 16.518 L/s', () => {
    const { spec } = checkText(
      'use catalog\nassembly a { osb 9 mm }\nbooth b { inside 1 m x 1 m x 2 m; walls a; roof a; floor a; vent v on left { duct 4 in; run 1 m; fan 35 cfm }; vent w on left { duct 4 in; run 1 m } }',
    );
    expect(spec.booths[0]!.vents[0]!.fan!.flow.value).toBeCloseTo(0.016518160512, 12);
  });
});

describe('values by name', () => {
  it('may be used above the line that declares them', () => {
    const { spec, problems } = checkText(
      'use catalog\nassembly a { osb late }\nlet late = twice / 2\nlet twice = 18 mm\n',
    );
    expect(problems).toEqual([]);
    expect(spec.assemblies.get('a')!.layers[0]).toMatchObject({ thickness: { value: expect.closeTo(0.009, 12) } });
  });

  it('may be called like a unit without changing what the unit means', () => {
    expect(gap('2 mm', 'let mm = 3 kg').value).toBe(0.002);
    expect(gap('20 mm / m', 'let m = 4').value).toBeCloseTo(0.005, 12);
  });
});
