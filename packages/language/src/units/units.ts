import type { DimensionName } from './dimension.js';
import type { UnitEntry } from './unit-entry.js';
import { COMMON_CURRENCIES } from './unit-names.js';

function of(
  dimension: DimensionName,
  ...entries: readonly (readonly [unit: string, documentation: string, common?: true])[]
): UnitEntry[] {
  return entries.map(([unit, documentation, common]) => ({
    unit,
    dimension,
    documentation,
    ...(common ? { common } : {}),
  }));
}

/** Units that completion offers and the reference lists; every product of them is understood too. */
export const units: readonly UnitEntry[] = [
  ...of(
    'length',
    ['mm', 'millimetre', true],
    ['cm', 'centimetre'],
    ['m', 'metre', true],
    ['um', 'micrometre'],
    ['in', 'inch, 25.4 mm; also as `3/4 in` and `2-1/2 in`', true],
    ['ft', 'foot, 304.8 mm; also as `6 ft 2 in`', true],
    ['yd', 'yard, 914.4 mm'],
    ['mil', 'thousandth of an inch'],
  ),
  ...of(
    'area',
    ['m2', 'square metre', true],
    ['ft2', 'square foot'],
    ['cm2', 'square centimetre'],
    ['mm2', 'square millimetre'],
  ),
  ...of('volume', ['m3', 'cubic metre', true], ['L', 'litre'], ['ft3', 'cubic foot']),
  ...of(
    'mass',
    ['kg', 'kilogram', true],
    ['g', 'gram'],
    ['t', 'tonne, 1000 kg'],
    ['lb', 'pound, 0.45359237 kg', true],
    ['oz', 'ounce, 1/16 lb'],
  ),
  ...of(
    'mass-per-area',
    ['kg/m2', 'kilogram per square metre', true],
    ['g/m2', 'gram per square metre'],
    ['lb/ft2', 'pound per square foot, 4.882 kg/m2', true],
    ['oz/ft2', 'ounce per square foot'],
  ),
  ...of('density', ['kg/m3', 'kilogram per cubic metre', true], ['lb/ft3', 'pound per cubic foot, 16.018 kg/m3', true]),
  ...of(
    'pressure',
    ['Pa', 'pascal'],
    ['kPa', 'kilopascal, the same as kN/m2', true],
    ['MPa', 'megapascal'],
    ['GPa', 'gigapascal', true],
    ['kN/m2', 'kilonewton per square metre', true],
    ['psi', 'pound-force per square inch'],
  ),
  ...of(
    'resistivity',
    ['Pa.s/m2', 'pascal second per square metre'],
    ['kPa.s/m2', 'kilopascal second per square metre', true],
    ['rayl/m', 'the same as Pa.s/m2'],
  ),
  ...of('flow-resistance', ['Pa.s/m', 'pascal second per metre', true], ['rayl', 'the same as Pa.s/m']),
  ...of('time', ['s', 'second', true], ['ms', 'millisecond'], ['min', 'minute', true], ['h', 'hour', true]),
  ...of('frequency', ['Hz', 'hertz', true], ['kHz', 'kilohertz', true]),
  ...of(
    'flow',
    ['L/s', 'litre per second', true],
    ['L/h', 'litre per hour'],
    ['m3/h', 'cubic metre per hour', true],
    ['m3/s', 'cubic metre per second'],
    ['cfm', 'cubic foot per minute, 0.4719 L/s', true],
  ),
  ...of('speed', ['m/s', 'metre per second', true], ['ft/min', 'foot per minute']),
  ...of('power', ['W', 'watt', true], ['kW', 'kilowatt']),
  ...of('share', ['%', 'percent', true]),
  ...of('concentration', ['ppm', 'parts per million of the air, by volume', true]),
  ...of(
    'level',
    ['dB', 'decibel, unweighted', true],
    ['dBA', 'decibel, A-weighted', true],
    ['dBC', 'decibel, C-weighted'],
    ['dBZ', 'decibel, unweighted and said so'],
    ['dBFS', 'decibel below the full scale of a recording', true],
  ),
  ...of('temperature', ['degC', 'degree Celsius', true], ['degF', 'degree Fahrenheit']),
  ...of('temperature-difference', ['K', 'kelvin: a difference of one degree Celsius', true]),
  ...of(
    'stiffness',
    ['N/mm', 'newton per millimetre', true],
    ['N/m', 'newton per metre'],
    ['kN/m', 'the same as N/mm'],
  ),
  ...of('angle', ['deg', 'degree', true]),
  ...of(
    'money',
    ...COMMON_CURRENCIES.map((currency, i): [string, string, true?] =>
      i < 3 ? [currency, 'currency', true] : [currency, 'currency'],
    ),
  ),
];
