import { requireNumber } from '../errors/require-number.js';
import { overlap } from '../layered/finite-radiation-factor.js';
import type { PanelSize } from '../layered/layer.js';
import { besselJ0 } from '../math/bessel.js';
import type { Complex } from '../math/complex.js';
import { gaussLegendre } from '../math/gauss-legendre.js';

const rule = gaussLegendre(16);
/** Radians of phase that one application of the rule covers. */
const phasePerPiece = 24;
/** Pieces per range of the overlap at least, because its slope is not smooth at the ends of the ranges. */
const fewestPieces = 3;
/** k b cos^2(theta) beyond which the expansion for a large sample serves; b is the shorter side. */
const expansionFrom = 40;
const tableSteps = 32;
const mostTables = 2000;

/** Radiation impedance of one sample at one wavenumber by cos(theta). */
export type RadiationLookUp = (cosine: number) => Complex;

/**
 * Radiation impedance over rho c of a rectangular sample in a hard wall whose velocity follows a plane wave, averaged over
 * the directions of that wave in the plane of the sample.
 *
 * Equation: z_r = j k Integral_0^D exp(-j k r) J0(k r sin theta) g(r) dr, D the diagonal, g(r) the share of the sample that
 * overlaps with itself when shifted by r, averaged over the directions of shift. Units: k rad/m, sizes m, result none.
 * For an infinite sample it is 1/cos(theta); in a small one it stays finite at grazing incidence, and so absorption rises.
 * Source: S.-I. Thomasson, Acustica 44 (1980) 265 (from memory); the reduction of the fourfold integral is derived here. Its
 * real part is `finiteRadiationFactor`.
 * Valid for a sample flush in a large hard plane.
 * Errors: ArgumentError for a wavenumber or size that is not above 0, or a sine outside 0 to 1.
 */
export function sampleRadiationImpedance(k: number, sinTheta: number, size: PanelSize): Complex {
  requireNumber('wavenumber', k, { above: 0, unit: 'radians per metre' });
  requireNumber('sine of the angle', sinTheta, { atLeast: 0, atMost: 1 });
  requireNumber('width of the sample', size.width, { above: 0, unit: 'metres' });
  requireNumber('height of the sample', size.height, { above: 0, unit: 'metres' });
  return integrated(k, [sinTheta], size)[0]!;
}

const tables = new Map<string, RadiationLookUp>();

/**
 * The same for many angles at one wavenumber: four-point interpolation in cos(theta), and for a sample of many wavelengths
 * z_r = 1/q + j c1/(k q^3) - c2 (3 - q^2)/(k^2 q^5), c1 = 2 (a + b)/(pi a b), c2 = 1/(pi a b), the leading terms of the
 * integral. Tables are made once and kept; the store holds nothing but values of a pure function.
 */
export function sampleRadiationTable(k: number, size: PanelSize): RadiationLookUp {
  const short = Math.min(size.width, size.height);
  const long = Math.max(size.width, size.height);
  const key = `${k} ${short} ${long}`;
  const known = tables.get(key);
  if (known !== undefined) return known;
  const end = Math.min(1, Math.sqrt(expansionFrom / (k * short)));
  const step = end / tableSteps;
  const sines = Array.from({ length: tableSteps + 1 }, (_, i) => Math.sqrt(Math.max(0, 1 - (i * step) ** 2)));
  const values = integrated(k, sines, size);
  const c1 = (2 * (short + long)) / (Math.PI * short * long * k);
  const c2 = 1 / (Math.PI * short * long * k * k);
  const lookUp: RadiationLookUp = (cosine) => {
    if (cosine >= end && end < 1) {
      const cube = cosine ** 3;
      return { re: 1 / cosine - (c2 * (3 - cosine * cosine)) / (cube * cosine * cosine), im: c1 / cube };
    }
    const place = cosine / step;
    const index = Math.min(tableSteps - 2, Math.floor(place));
    const t = place - index;
    // Lagrange through the points -1, 0, 1, 2; the impedance is even in the cosine.
    const weights = [
      (-t * (t - 1) * (t - 2)) / 6,
      ((t + 1) * (t - 1) * (t - 2)) / 2,
      (-(t + 1) * t * (t - 2)) / 2,
      ((t + 1) * t * (t - 1)) / 6,
    ];
    let re = 0;
    let im = 0;
    weights.forEach((weight, i) => {
      const value = values[Math.abs(index - 1 + i)]!;
      re += weight * value.re;
      im += weight * value.im;
    });
    return { re, im };
  };
  if (tables.size >= mostTables) tables.delete(tables.keys().next().value!);
  tables.set(key, lookUp);
  return lookUp;
}

function integrated(k: number, sines: readonly number[], size: PanelSize): Complex[] {
  const short = Math.min(size.width, size.height);
  const long = Math.max(size.width, size.height);
  const phases: number[] = [];
  const weights: number[] = [];
  const addRange = (from: number, to: number) => {
    const count = Math.max(fewestPieces, Math.ceil(((to - from) * 2 * k) / phasePerPiece));
    const half = (to - from) / count / 2;
    for (let piece = 0; piece < count; piece++) {
      const middle = from + (2 * piece + 1) * half;
      for (let i = 0; i < rule.nodes.length; i++) {
        const r = middle + half * rule.nodes[i]!;
        phases.push(k * r);
        weights.push(k * half * rule.weights[i]! * overlap(r, short, long));
      }
    }
  };
  addRange(0, short);
  if (long > short) addRange(short, long);
  addRange(long, Math.sqrt(short * short + long * long));
  const sin = phases.map((phase, i) => weights[i]! * Math.sin(phase));
  const cos = phases.map((phase, i) => weights[i]! * Math.cos(phase));
  return sines.map((sine) => {
    let re = 0;
    let im = 0;
    for (let i = 0; i < phases.length; i++) {
      const bessel = besselJ0(sine * phases[i]!);
      re += sin[i]! * bessel;
      im += cos[i]! * bessel;
    }
    return { re, im };
  });
}
