import { describe, expect, it } from 'vitest';
import { sectionInTitle } from '../../src/build/item-covers.js';
import { onlyBooth, onlyVerdict } from '../fixtures/assessed.js';
import { specOf } from '../fixtures/from-text.js';

describe('the cross-section in a title', () => {
  const section = (title: string) => sectionInTitle({ title } as Parameters<typeof sectionInTitle>[0]);

  it('is read in millimetres and centimetres, the shorter side first', () => {
    expect(section('45 x 70 mm softwood 2.4 m')).toEqual([0.045, 0.07]);
    expect(section('softwood 70mm x 45mm')).toEqual([0.045, 0.07]);
    expect(section('stud 4.5 × 7 cm')?.map((side) => side.toFixed(4))).toEqual(['0.0450', '0.0700']);
  });

  it('leaves out the length where three sizes stand together', () => {
    expect(section('45 x 70 x 2400 mm')).toEqual([0.045, 0.07]);
  });

  it('is none without two sizes in millimetres or centimetres', () => {
    expect(section('12 mm plywood sheet 1.22 x 2.44 m')).toBeNull();
    expect(section('softwood 45 mm')).toBeNull();
    expect(section('')).toBeNull();
  });
});

describe('timber of another section than the list names', () => {
  const list = 'item studs "45 x 70 mm softwood 2.4 m" for softwood 60 at 5.20 EUR; reserve 10 %';
  const built = (depth: number, requirement: string) =>
    specOf(`use catalog
assembly shell { softwood-plywood 12 mm; frame 45 mm x ${depth} mm every 600 mm; gypsum-board 12.5 mm }
site "room" { room 4 m x 3.6 m x 2.5 m }
booth small { inside 1.2 m x 1.4 m x 2.0 m; walls shell; panels { width 600 mm } }
budget { ${list} }
${requirement}
`);

  it('is priced where the section is that of the title', () => {
    const { build } = onlyBooth(built(70, ''));
    expect(build.cost?.unpriced).toEqual([]);
    expect(build.shopping.stock.find(({ material }) => material === 'softwood')?.cost).not.toBeNull();
    expect(onlyVerdict(built(70, 'require cost <= 400 EUR')).verdict).toBe('met');
  });

  it('is not priced, keeps no limit and can only miss one', () => {
    const { build } = onlyBooth(built(120, ''));
    expect(build.cost?.unpriced).toEqual(['softwood 45 x 120 mm']);
    expect(build.shopping.stock.find(({ material }) => material === 'softwood')?.cost).toBeNull();
    const open = onlyVerdict(built(120, 'require cost <= 400 EUR'));
    expect(open).toMatchObject({ verdict: 'not-assessed', atLeast: true });
    expect(open.explanation).toMatch(/need \d+ lengths of softwood 45 x 120 mm, which no item is for/);
    const missed = onlyVerdict(built(120, 'require cost <= 300 EUR'));
    expect(missed).toMatchObject({ verdict: 'missed', atLeast: true });
    // 60 lengths at 5.20 with a tenth more; without what no part uses nothing is left.
    expect(missed.value?.value).toBeCloseTo(343.2, 9);
    expect(missed.explanation).toContain('No part uses 45 x 70 mm softwood 2.4 m: without that the total is 0.00 EUR');
  });
});
