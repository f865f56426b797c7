import { describe, expect, it } from 'vitest';
import { findingsById as findingsOf } from '../fixtures/assessed.js';
import { specOf } from '../fixtures/from-text.js';

const id = 'cost-over-budget';

const findingsById = (source: string, name: string) => findingsOf(specOf(source), name);

const text = (items: string, limit: number, reserve = 0) => `use catalog
material board { kind panel; density 600 kg/m3; modulus 3 GPa; sheet 1.22 m x 2.44 m }
material felt { kind porous; density 60 kg/m3; resistivity 20 kPa.s/m2 }
assembly shell { board 18 mm }
booth box {
  inside 1.164 m x 1.164 m x 2.00 m
  walls shell
  roof shell
  floor shell
  panels { width 600 mm }
}
budget {
  ${items}
  reserve ${reserve} %
}
require cost <= ${limit} EUR
`;

describe(id, () => {
  it('ranks what no part needs and what is bought too much, with its share of the reserve', () => {
    const items =
      'item boards for board 18 mm 20 at 30 EUR\n  item cloth for felt 3 at 12 EUR\n  item lamp "a lamp" 1 at 400 EUR';
    const [finding] = findingsById(text(items, 700, 10), id);
    // 600 + 36 + 400 with a tenth: 1139.60, 439.60 over.
    expect(finding!.figures.over).toBeCloseTo(439.6, 6);
    const savings = Object.entries(finding!.figures).filter(([key]) => key !== 'over' && key !== 'saved');
    expect(savings.map(([key]) => key)).toEqual([
      expect.stringMatching(/^\d+ instead of 20 of boards$/),
      'leaving out cloth, which no part needs,',
    ]);
    const keep = Number(/^\d+/.exec(savings[0]![0])![0]);
    expect(savings[0]![1]).toBeCloseTo((20 - keep) * 30 * 1.1, 6);
    expect(savings[1]![1]).toBeCloseTo(36 * 1.1, 6);
    expect(finding!.figures.saved).toBeCloseTo(
      savings.reduce((sum, [, amount]) => sum + amount, 0),
      6,
    );
  });

  it('says that nothing is known to be spare where no item says what it is for', () => {
    const [finding] = findingsById(text('item boards 20 at 30 EUR', 500), id);
    expect(finding!.figures).toEqual({ over: 100, saved: 0 });
    expect(finding!.explanation).toContain('boards 600 EUR');
  });

  it('is silent at the limit and without one', () => {
    expect(findingsById(text('item boards 20 at 30 EUR', 600), id)).toEqual([]);
    expect(findingsById(text('item boards 20 at 30 EUR', 600).replace(/require.*\n/, ''), id)).toEqual([]);
  });
});
