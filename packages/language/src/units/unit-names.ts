import { isCurrency } from './currencies.js';

/** Single unit words and what mathjs calls them; compound units are products of these. */
export interface UnitWord {
  readonly math: string;
  readonly power: number;
}

/** Word as typed to the name in the private mathjs instance. */
const NAMES: Readonly<Record<string, string>> = {
  // length
  mm: 'mm',
  cm: 'cm',
  m: 'm',
  km: 'km',
  um: 'um',
  µm: 'um',
  μm: 'um',
  in: 'in',
  inch: 'in',
  inches: 'in',
  ft: 'ft',
  foot: 'ft',
  feet: 'ft',
  yd: 'yd',
  mil: 'mil',
  // volume
  L: 'L',
  l: 'L',
  litre: 'L',
  liter: 'L',
  mL: 'mL',
  ml: 'mL',
  // mass
  g: 'g',
  kg: 'kg',
  t: 'tonne',
  lb: 'lbm',
  lbs: 'lbm',
  oz: 'oz',
  // time
  s: 's',
  ms: 'ms',
  min: 'min',
  h: 'h',
  // frequency
  Hz: 'Hz',
  kHz: 'kHz',
  // force and pressure
  N: 'N',
  kN: 'kN',
  Pa: 'Pa',
  kPa: 'kPa',
  MPa: 'MPa',
  GPa: 'GPa',
  psi: 'psi',
  rayl: 'rayl',
  // flow
  cfm: 'cfm',
  // power
  W: 'W',
  kW: 'kW',
  mW: 'mW',
  // difference of temperatures
  K: 'K',
  // angle
  deg: 'degreeofarc',
  '°': 'degreeofarc',
  // parts
  ppm: 'partspermillion',
  // money
  EUR: 'EUR',
  USD: 'USD',
  GBP: 'GBP',
  CHF: 'CHF',
  SEK: 'SEK',
  NOK: 'NOK',
  DKK: 'DKK',
  PLN: 'PLN',
  CZK: 'CZK',
  HUF: 'HUF',
  CAD: 'CAD',
  AUD: 'AUD',
  NZD: 'NZD',
  JPY: 'JPY',
  INR: 'INR',
  BRL: 'BRL',
  ZAR: 'ZAR',
};

const LENGTHS = new Set([
  'mm',
  'cm',
  'm',
  'km',
  'um',
  'µm',
  'μm',
  'in',
  'inch',
  'inches',
  'ft',
  'foot',
  'feet',
  'yd',
  'mil',
]);

/** Levels are no quantities: they have their own type and are never multiplied or added. */
export const LEVEL_UNITS: Readonly<Record<string, 'A' | 'C' | 'Z' | 'FS' | 'NC' | 'none'>> = {
  dB: 'none',
  dBA: 'A',
  dBC: 'C',
  dBZ: 'Z',
  dBFS: 'FS',
  NC: 'NC',
};

export const TEMPERATURE_UNITS: Readonly<Record<string, (value: number) => number>> = {
  degC: (v) => v,
  '°C': (v) => v,
  degF: (v) => ((v - 32) * 5) / 9,
  '°F': (v) => ((v - 32) * 5) / 9,
};

/** Those that are offered; every other code of ISO 4217 is known as well. */
export const COMMON_CURRENCIES: readonly string[] = Object.keys(NAMES).filter(
  (name) => /^[A-Z]{3}$/.test(name) && name !== 'GPa',
);

/** All single words that can start a unit. */
export const UNIT_WORDS: readonly string[] = [
  ...Object.keys(NAMES),
  ...Object.keys(LEVEL_UNITS),
  ...Object.keys(TEMPERATURE_UNITS),
];

export function isLengthUnit(word: string): boolean {
  return LENGTHS.has(word);
}

const POWER = /^(.*?)([23²³])$/u;

/** `ft2` is the second power of `ft`; undefined when the word is no unit. */
export function unitWord(word: string): UnitWord | undefined {
  const whole = Object.hasOwn(NAMES, word) ? NAMES[word] : undefined;
  if (whole !== undefined) return { math: whole, power: 1 };
  if (isCurrency(word)) return { math: word, power: 1 };
  const match = POWER.exec(word);
  if (!match || !LENGTHS.has(match[1]!)) return undefined;
  return { math: NAMES[match[1]!]!, power: match[2] === '2' || match[2] === '²' ? 2 : 3 };
}

/** True when the word alone is a unit of any sort. */
export function isUnitWord(word: string): boolean {
  return unitWord(word) !== undefined || Object.hasOwn(LEVEL_UNITS, word) || Object.hasOwn(TEMPERATURE_UNITS, word);
}
