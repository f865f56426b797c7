import { describe, expect, it } from 'vitest';
import { pressureText } from '../../src/numbers/air-words.js';
import { decimalsToTell, formatDifference, formatQuantity, formatRange } from '../../src/numbers/format-quantity.js';
import { rangedText } from '../../src/numbers/level-words.js';
import { type Shown, showing, shownAtFirst } from '../../src/numbers/shown.js';
import { tradeForm } from '../../src/numbers/trade-form.js';
import {
  airFlowText,
  airSpeedText,
  areaText,
  forceText,
  missingText,
  pricePerAreaText,
  roomLeftText,
  roomLengthText,
  springText,
  stockText,
  surfaceMassText,
  temperatureDifferenceText,
  temperatureText,
  thicknessText,
  volumeText,
} from '../../src/numbers/trade-units.js';

const imperial: Shown = { ...shownAtFirst, units: 'imperial' };
const both = (write: () => string) => [write(), showing(imperial, write)];

describe('figures in the units that were asked for', () => {
  it('converts by the definitions of the inch and the pound', () => {
    expect(both(() => thicknessText(0.0125))).toEqual(['12.5 mm', '0.492″']);
    expect(both(() => thicknessText(0.3048))).toEqual(['305 mm', '1′ 0″']);
    expect(both(() => roomLengthText(2.4384))).toEqual(['2.44 m', '8′ 0″']);
    expect(both(() => areaText(1))).toEqual(['1 m²', '10.8 ft²']);
    expect(both(() => areaText(0.01))).toEqual(['100 cm²', '15.5 in²']);
    expect(both(() => volumeText(1))).toEqual(['1 m³', '35.3 ft³']);
    expect(both(() => surfaceMassText(10))).toEqual(['10 kg/m²', '2.05 lb/ft²']);
    expect(both(() => airFlowText(0.01))).toEqual(['10.0 L/s', '21.2 cfm']);
    expect(both(() => airSpeedText(1))).toEqual(['1 m/s', '197 ft/min']);
    expect(both(() => springText(1e5))).toEqual(['100 N/mm', '571 lbf/in']);
    expect(both(() => forceText(1000))).toEqual(['1.00 kN', '225 lbf']);
    expect(both(() => pressureText(50))).toEqual(['50 Pa', '0.2 in of water']);
    expect(both(() => stockText(10, 'm2', ''))).toEqual(['10.0 m²', '108 ft²']);
    expect(both(() => stockText(7, 'pieces', '7'))).toEqual(['7', '7']);
  });

  it('shifts a temperature and only stretches a difference', () => {
    expect(both(() => temperatureText(20))).toEqual(['20.0 °C', '68.0 °F']);
    expect(both(() => temperatureDifferenceText(5))).toEqual(['5.0 K', '9.0 °F']);
    expect(both(() => formatDifference(2, 'K'))).toEqual(['2.0 K', '3.6 °F']);
  });

  it('never tells a gap larger, or what is missing smaller, than it is', () => {
    expect(both(() => roomLeftText(0.0269))).toEqual(['26 mm', '1″']);
    expect(both(() => roomLeftText(0.02699))).toEqual(['26 mm', '1 1/16″']);
    expect(both(() => missingText(0.0269))).toEqual(['27 mm', '1 1/16″']);
    expect(both(() => missingText(0.0271))).toEqual(['28 mm', '1 1/8″']);
  });

  it('converts both ends of a range, and tells value and limit apart in the unit that is shown', () => {
    expect(both(() => formatQuantity(430, 'kg'))).toEqual(['430 kg', '948 lb']);
    expect(both(() => formatRange(400, 460, 'kg'))).toEqual(['400 to 460', '882 to 1014']);
    expect(both(() => rangedText({ value: 3, low: 2, high: 4 } as never, 'K'))).toEqual([
      '3.0 K (2.0 to 4.0)',
      '5.4 °F (3.6 to 7.2)',
    ]);
    expect(both(() => formatQuantity(2600, 'Pa'))).toEqual(['2.6 kPa', '54 lb/ft²']);
    expect(both(() => String(decimalsToTell(400.2, 400, 'kg')))).toEqual(['1', '1']);
  });

  it('leaves levels, ratings, bands and times as they are', () => {
    for (const unit of ['dB', 'dBA', 'dBFS', 'NC', 'STC', 'Rw', 'Hz', 's', 'min', 'ppm', 'EUR']) {
      const [metric, other] = both(() => formatQuantity(40, unit));
      expect(other, unit).toBe(metric);
    }
  });

  it('converts a value with its tolerance, and an amount of money only from one area to another', () => {
    const board = { value: 0.0254, tolerance: 0.00254, origin: { kind: 'default' } } as never;
    expect(both(() => tradeForm(board, 'length'))).toEqual(['25.4 mm ± 2.5', '1 in ± 0.1']);
    expect(both(() => pricePerAreaText(10.76391, 'EUR'))).toEqual(['10.76 EUR/m²', '1.00 EUR/ft²']);
  });

  it('holds for what is written inside only, also when the writing fails', () => {
    expect(() =>
      showing(imperial, () => {
        throw new Error('no');
      }),
    ).toThrow('no');
    expect(thicknessText(0.0125)).toBe('12.5 mm');
    expect(showing(imperial, () => showing(shownAtFirst, () => thicknessText(0.0125)) + thicknessText(0.0125))).toBe(
      '12.5 mm0.492″',
    );
  });
});
