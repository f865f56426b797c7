import { units } from '@boothwright/language';
import { describe, expect, it } from 'vitest';
import { dimensionName, resolveUnit } from '../../src/units/resolve-unit.js';

describe('every unit of the table', () => {
  it.each(units.map((entry) => [entry.unit, entry.dimension] as const))('%s measures %s', (unit, dimension) => {
    const resolved = resolveUnit(unit);
    if (dimension === 'share' || dimension === 'level' || dimension === 'temperature')
      expect(resolved?.kind).toBe(dimension);
    else expect(resolved?.kind === 'factor' && dimensionName(resolved.dimension)).toBe(dimension);
  });
});

describe('resolveUnit(text)', () => {
  const factor = (unit: string): number | undefined => {
    const resolved = resolveUnit(unit);
    return resolved?.kind === 'factor' ? resolved.factor : undefined;
  };

  it.each([
    // Exact by definition: the international yard and pound of 1959, and the standard acceleration of gravity for psi.
    ['in', 0.0254],
    ['ft', 0.3048],
    ['lb', 0.45359237],
    ['lb/ft2', 0.45359237 / 0.3048 ** 2],
    ['lb/ft3', 0.45359237 / 0.3048 ** 3],
    ['cfm', 0.3048 ** 3 / 60],
    ['psi', (0.45359237 * 9.80665) / 0.0254 ** 2],
    ['kPa.s/m2', 1000],
    ['kN/m2', 1000],
    ['L/h', 0.001 / 3600],
    ['m^3/h', 1 / 3600],
    ['m³/h', 1 / 3600],
    ['rayl/m', 1],
  ])('%s is %d in base units', (unit, value) => {
    expect(Math.abs(factor(unit)! / value - 1)).toBeLessThan(1e-9);
  });

  it('knows no unit that is none', () => {
    for (const unit of ['furlong', 'kg/sqm', 'm^9', '', 'constructor', '__proto__', 'toString/m'])
      expect(resolveUnit(unit)).toBeUndefined();
  });
});
