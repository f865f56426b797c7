import { describe, expect, test } from 'vitest';
import { noFigures } from '../../../src/report/figures.js';
import { assumptionsSection } from '../../../src/report/sections/assumptions.js';
import { behindSection } from '../../../src/report/sections/behind.js';
import { cautionsSection } from '../../../src/report/sections/cautions.js';
import { cuttingSection } from '../../../src/report/sections/cutting.js';
import { drawingsSection } from '../../../src/report/sections/drawings.js';
import { figuresSection } from '../../../src/report/sections/figures.js';
import { landlordSection } from '../../../src/report/sections/landlord.js';
import { leavesOutSection } from '../../../src/report/sections/leaves-out.js';
import { movingSection } from '../../../src/report/sections/moving.js';
import { shoppingSection } from '../../../src/report/sections/shopping.js';
import { variantsSection } from '../../../src/report/sections/variants.js';
import { verdictSection } from '../../../src/report/sections/verdict.js';
import { sampleInput, sectionText } from '../report-sample.js';

const empty = {
  ...sampleInput,
  result: { ...sampleInput.result, booths: {}, requirements: [], variants: {}, cautions: [] },
};

describe('sections of a report', () => {
  test.each([
    ['verdict', verdictSection],
    ['landlord', landlordSection],
    ['shopping', shoppingSection],
    ['cutting', cuttingSection],
    ['moving', movingSection],
    ['cautions', cautionsSection],
    ['assumptions', assumptionsSection],
    ['leaves-out', leavesOutSection],
    ['variants', variantsSection],
  ])('%s holds the figures of the result and nothing else', async (name, section) => {
    await expect(sectionText(section(sampleInput))).toMatchFileSnapshot(`__snapshots__/${name}.md`);
  });

  test('behind draws pictures, and every one has a table of its figures at the end', async () => {
    const figures = noFigures();
    const behind = behindSection(sampleInput, figures);
    const drawn = behind?.blocks.filter(({ kind }) => kind === 'figure') ?? [];
    expect(drawn.length).toBeGreaterThan(4);
    expect(figures.tables).toHaveLength(drawn.length);
    await expect(sectionText(behind)).toMatchFileSnapshot('__snapshots__/behind.md');
    await expect(sectionText(figuresSection(figures))).toMatchFileSnapshot('__snapshots__/figures.md');
  });

  test('drawings are there for what the text declares, each with its table', () => {
    const figures = noFigures();
    const drawings = drawingsSection(sampleInput, figures);
    const drawn = drawings?.blocks.filter(({ kind }) => kind === 'drawing') ?? [];
    expect(drawn).toHaveLength(1);
    expect(figures.tables.map(({ caption }) => caption)).toEqual([expect.stringContaining('shell')]);
    expect(drawingsSection({ ...empty, spec: { ...empty.spec, assemblies: new Map() } }, noFigures())).toBeUndefined();
  });

  test('without a booth there is nothing to buy, cut or carry, and no hazard is called absent', () => {
    expect([
      shoppingSection(empty),
      cuttingSection(empty),
      movingSection(empty),
      landlordSection(empty),
      variantsSection(empty),
    ]).toEqual([undefined, undefined, undefined, undefined, undefined]);
    expect(sectionText(cautionsSection(empty))).toContain('That is no clearance');
  });

  test('movingSection says of every piece what it is, who lifts it, and where it does not go', () => {
    const text = sectionText(movingSection(sampleInput));
    expect(text).toContain('**Size**: 446 × 2042 × 94.5 mm');
    expect(text).toContain('**Carried by**: two people (common practice)');
    expect(text).toContain('**Doorway**: upright, 58 mm left');
    expect(text).toContain('**Doorway**: DOES NOT GO: too long by 20 mm');
    expect(text).toContain('**Mass**: more than 31.2 kg');
    expect(text).toContain('**Order**: step 1: back wall: stand it up');
  });

  test('variantsSection counts a finding as gone only when the variant has fewer of its kind', () => {
    const [base] = sampleInput.result.findings;
    const night = sampleInput.result.variants.night!;
    const moved = { ...base!, message: 'the two leaves resonate at 95 Hz', range: { ...base!.range, from: 77 } };
    const input = {
      ...sampleInput,
      result: { ...sampleInput.result, variants: { night: { ...night, findings: [moved] } } },
    };
    expect(sectionText(variantsSection(input))).not.toMatch(/New:|Gone:/);
    expect(sectionText(variantsSection(sampleInput))).toContain('Gone: the two leaves of `shell`');
  });
});
