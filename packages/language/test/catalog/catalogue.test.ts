import { CATALOGUE_FILE, catalogueText, format, type Material, parse, type Sourced } from '@boothwright/language';
import { describe, expect, it } from 'vitest';
import { checkText } from '../check-text.js';

const { spec, problems } = checkText('use catalog\n');
const materials = [...spec.materials.values()];

const FIGURES = [
  'density',
  'surfaceMass',
  'thickness',
  'modulus',
  'modulusAcross',
  'shearModulus',
  'poisson',
  'lossFactor',
  'resistivity',
  'flowResistance',
  'gauge',
  'absorption',
] as const;

function figuresOf(material: Material): readonly [name: string, figure: Sourced<unknown>][] {
  return FIGURES.flatMap((name) =>
    material[name] ? [[`${material.name}: ${name}`, material[name]] as [string, Sourced<unknown>]] : [],
  );
}

describe('the catalogue', () => {
  it('has no problem and about thirty materials', () => {
    expect(problems).toEqual([]);
    expect(materials.length).toBeGreaterThanOrEqual(30);
    expect(materials.every((material) => material.fromCatalogue && material.nameRange.file === CATALOGUE_FILE)).toBe(
      true,
    );
  });

  it('says of every figure how strongly it is backed and by what', () => {
    const figures = materials.flatMap(figuresOf);
    expect(figures.length).toBeGreaterThanOrEqual(100);
    for (const [name, { origin }] of figures) {
      expect(origin.kind, name).toBe('catalogue');
      if (origin.kind !== 'catalogue') continue;
      expect(origin.source.length, name).toBeGreaterThan(10);
      expect(['published', 'derived', 'common-practice', 'from-memory'], name).toContain(origin.evidence);
    }
  });

  it('names author, title and year of every published or derived figure', () => {
    for (const [name, { origin }] of materials.flatMap(figuresOf)) {
      if (origin.kind === 'catalogue' && (origin.evidence === 'published' || origin.evidence === 'derived'))
        expect(origin.source, name).toMatch(/[A-Z]\. [A-Z][A-Za-z'’]+.*\((19|20)\d\d\)/);
    }
  });

  it('has no prices: what a material costs is for the user to say', () => {
    expect(materials.filter((material) => material.price)).toEqual([]);
  });

  it('is laid out as the formatter would, so that a copied material stays as it is', () => {
    const formatted = format(catalogueText);
    expect(parse(formatted, 'a').problems).toEqual([]);
    expect(formatted).toBe(catalogueText);
  });
});

describe('figures of the catalogue that can be worked out again', () => {
  const material = (name: string): Material => spec.materials.get(name)!;

  it.each([
    // C. Hopkins, Sound Insulation (2007), Table A2: density, plate longitudinal wave speed, Poisson's ratio.
    ['birch-plywood', 710, 3850, 0.3],
    ['osb', 590, 2570, 0.3],
    ['softwood-board', 440, 5000, 0.3],
    ['gypsum-board-reinforced', 800, 2010, 0.3],
    ['brick', 1750, 2700, 0.2],
    ['concrete', 2200, 3800, 0.2],
    ['aerated-concrete', 600, 1900, 0.2],
  ])(
    'the modulus of %s is density x speed^2 x (1 - nu^2), to the rounding of three digits',
    (name, density, speed, poisson) => {
      const expected = density * speed ** 2 * (1 - poisson ** 2);
      expect(material(name).density!.value).toBe(density);
      expect(Math.abs(material(name).modulus!.value / expected - 1)).toBeLessThan(0.002);
    },
  );

  it.each([40, 60, 100])(
    'the resistivity of mineral wool of %d kg/m3 is 780 density^1.59 / 4.75^2, to the rounding of three digits',
    (density) => {
      const expected = (780 * density ** 1.59) / 4.75 ** 2;
      expect(Math.abs(material(`mineral-wool-${density}`).resistivity!.value / expected - 1)).toBeLessThan(0.002);
    },
  );

  it.each([
    ['felt', 26_000, 73_300],
    ['melamine-foam', 10_500, 17_500],
    ['polyurethane-foam', 4500, 12_900],
  ])(
    'the resistivity of %s is the geometric middle of the printed range, to the rounding of two digits',
    (name, low, high) => {
      expect(Math.abs(material(name).resistivity!.value / Math.sqrt(low * high) - 1)).toBeLessThan(0.01);
    },
  );

  it('polyester batting follows the remembered 26 density^1.404', () => {
    expect(Math.abs(material('polyester-batting').resistivity!.value / (26 * 20 ** 1.404) - 1)).toBeLessThan(0.01);
  });
});
