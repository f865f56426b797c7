import type { Booth } from '@boothwright/language';
import { describe, expect, it } from 'vitest';
import { buildResult } from '../../src/build/build-result.js';
import { costOfChange } from '../../src/build/cost-of-change.js';
import { withBuildUp } from '../../src/findings/with-build-up.js';
import { createMemo } from '../../src/memo/memo.js';
import { specOf } from '../fixtures/from-text.js';

const text = (price = 'price 30 EUR per sheet') => `use catalog
material board { kind panel; density 600 kg/m3; modulus 3 GPa; sheet 1.25 m x 2.50 m; ${price} }
material other { kind panel; density 600 kg/m3; modulus 3 GPa }
assembly shell { board 18 mm; board 18 mm }
assembly spare { other 12 mm }
booth box {
  inside 1.20 m x 1.30 m x 2.00 m
  walls shell
  roof shell
  floor shell
  panels { width 600 mm }
}
`;

function priced(price?: string) {
  const { booths, assemblies } = specOf(text(price));
  const booth = booths[0] as Booth;
  const { stock } = buildResult(booth, undefined, undefined, undefined, createMemo()).shopping;
  const layers = assemblies.get('shell')?.layers ?? [];
  return { booth, stock, layers, spare: assemblies.get('spare')?.layers ?? [] };
}

describe('costOfChange(before, after, stock)', () => {
  it('takes what a net square metre costs now, waste included, for what is added', () => {
    const { booth, stock, layers } = priced();
    const thicker = withBuildUp(booth, 'shell', [...layers, ...layers.slice(0, 1)]);
    const cost = costOfChange(booth, thicker, stock);
    // Sizes of the faces grow with the third board; without that it would be half as much again.
    expect(cost?.money?.currency).toBe('EUR');
    expect(cost?.money?.amount).toBeGreaterThan((stock[0]?.cost?.amount ?? 0) / 2);
    expect(cost?.money?.amount).toBeLessThan((stock[0]?.cost?.amount ?? 0) * 0.6);
  });

  it('is a saving for what goes', () => {
    const { booth, stock, layers } = priced();
    const amount = costOfChange(booth, withBuildUp(booth, 'shell', layers.slice(0, 1)), stock)?.money?.amount;
    expect(amount).toBeLessThan(0);
  });

  it('is unknown, and names what has no price, and null where no part changes', () => {
    const { booth, stock, layers, spare } = priced();
    expect(costOfChange(booth, withBuildUp(booth, 'shell', [...layers, ...spare]), stock)).toMatchObject({
      money: null,
      withoutPrice: ['other 12 mm'],
    });
    const without = priced('');
    const one = withBuildUp(without.booth, 'shell', without.layers.slice(0, 1));
    expect(costOfChange(without.booth, one, without.stock)).toEqual({ money: null, withoutPrice: ['board 18 mm'] });
    expect(costOfChange(booth, { ...booth, contents: { ...booth.contents, value: 99 } }, stock)).toBeNull();
  });
});
