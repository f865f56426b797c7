import { type Advice, didYouMeanAdvice } from '../text/advice.js';

/** Units as people say them in full or by the wrong letters, and how the language writes them. */
const SPELT_OUT: Readonly<Record<string, string>> = {
  meter: 'm',
  meters: 'm',
  metre: 'm',
  metres: 'm',
  mtr: 'm',
  millimeter: 'mm',
  millimeters: 'mm',
  millimetre: 'mm',
  millimetres: 'mm',
  mms: 'mm',
  centimeter: 'cm',
  centimeters: 'cm',
  centimetre: 'cm',
  centimetres: 'cm',
  ins: 'in',
  kilo: 'kg',
  kilos: 'kg',
  kilogram: 'kg',
  kilograms: 'kg',
  kgs: 'kg',
  lbs: 'lb',
  pound: 'lb',
  pounds: 'lb',
  gram: 'g',
  grams: 'g',
  tonne: 't',
  tonnes: 't',
  sec: 's',
  secs: 's',
  second: 's',
  seconds: 's',
  mins: 'min',
  minute: 'min',
  minutes: 'min',
  hr: 'h',
  hrs: 'h',
  hour: 'h',
  hours: 'h',
  hertz: 'Hz',
  hz: 'Hz',
  khz: 'kHz',
  watt: 'W',
  watts: 'W',
  pascal: 'Pa',
  pascals: 'Pa',
  decibel: 'dB',
  decibels: 'dB',
  percent: '%',
  pct: '%',
  C: 'degC',
  celsius: 'degC',
  F: 'degF',
  fahrenheit: 'degF',
  kelvin: 'K',
  degree: 'deg',
  degrees: 'deg',
  lps: 'L/s',
  cmh: 'm3/h',
  CFM: 'cfm',
  psf: 'lb/ft2',
  pcf: 'lb/ft3',
  sqm: 'm2',
  sqft: 'ft2',
  qm: 'm2',
  euro: 'EUR',
  euros: 'EUR',
  eur: 'EUR',
  dollar: 'USD',
  dollars: 'USD',
  quid: 'GBP',
};

/** Decibels in small letters can be two levels that differ by many decibels: the writer has to say which. */
export function whichDecibels(word: string): Advice | undefined {
  if (word === 'dB' || word.toLowerCase() !== 'db') return undefined;
  return {
    hint: 'write `dBA` for a reading with the A weighting, as most meters show it, or `dB` for one without',
    instead: ['dBA', 'dB'],
  };
}

/** `did you mean …` for a unit that is spelt out; undefined for any other word. */
export function speltOutUnit(word: string): Advice | undefined {
  if (!Object.hasOwn(SPELT_OUT, word)) return undefined;
  return didYouMeanAdvice(SPELT_OUT[word]!);
}
